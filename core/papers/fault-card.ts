import { headingBlock, tableBlock, type Block, type Row } from "./layout/index.ts";
import { ladders, lossRows, workingSituations, type LossRow } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { voltsText } from "./testing/test-step.ts";

/** For whoever finds it not working. */
export const faultCard: Paper = {
  kind: "fault-card",
  title: "Fault card",
  about:
    "From symptom to first test; the volts to expect along each circuit; what each fuse, ground and wire takes with it.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => faultPages(source, options)[0]!,
  pages: faultPages,
};

/** The order in which the trade looks. Common practice; never pierce insulation to get at a wire. */
const SYMPTOMS: readonly (readonly [symptom: string, first: string, then: string])[] = [
  [
    "Dead",
    "volts at the load's plus, to battery negative",
    "none: go back towards the fuse. There: its ground, then the load itself",
  ],
  [
    "Weak or dim",
    "drop on the plus side under load, then on the ground side",
    "the part with the most drop; a dirty stud more often than a thin wire",
  ],
  [
    "Fuse blows",
    "unplug the load, ohms from the fuse's load side to ground",
    "open connectors one by one until the short is gone",
  ],
  ["Wrong lamps glow", "the ground first, with everything on", "then two feeds that meet: pull one fuse at a time"],
  [
    "Relay clicks, load dead",
    "volts at 30, then at 87 while it is pulled in",
    "30 dead: its fuse. 87 dead: the contact. Both live: wire and ground",
  ],
  [
    "Relay does not click",
    "volts across 85 and 86 with the switch on",
    "none: trigger wire, then the coil's ground. There: the relay",
  ],
  ["Stays on", "pull the relay", "off now: welded contact or wrong pin. Still on: another feed"],
  ["Battery goes flat", "amps in the negative lead, key out, vehicle asleep", "pull fuses one by one until it falls"],
];

function faultPages(source: PaperSource, options: PaperOptions): string[] {
  const losses = lossRows(source);
  return printed(faultCard.title, source.document, options, (widthMm) => [
    headingBlock("From symptom to first test", widthMm),
    symptomTable(widthMm),
    ...ladderBlocks(source, widthMm),
    headingBlock("What goes with it", widthMm),
    lossTable("Fuse out", losses.devices, widthMm),
    lossTable(options.words === "earth" ? "Earth lost" : "Ground lost", losses.grounds, widthMm),
    lossTable("Wire off", losses.wires, widthMm),
  ]);
}

function symptomTable(widthMm: number): Block {
  const rows = SYMPTOMS.map((cells): Row => ({ cells }));
  const columns = [{ head: "Symptom" }, { head: "Test first", grow: 1 }, { head: "Then", grow: 1 }];
  return tableBlock({ columns, rows }, widthMm);
}

function ladderBlocks(source: PaperSource, widthMm: number): Block[] {
  const columns = [
    { head: "Red lead on", grow: 1 },
    { head: "After", grow: 1 },
    { head: "Volts to battery negative", align: "end" as const },
  ];
  return workingSituations(source).flatMap((situation) => {
    const rows = ladders(source, situation).flatMap(({ name, rungs }): Row[] => [
      { band: name },
      ...rungs.map(({ spot, after, volts }): Row => ({
        cells: [spot, after, volts === null ? "not known" : voltsText(volts)],
      })),
    ]);
    if (rows.length === 0) return [];
    return [
      headingBlock(`Ladder: ${situation.name} (${situation.set})`, widthMm),
      tableBlock({ columns, rows }, widthMm),
    ];
  });
}

function lossTable(head: string, losses: readonly LossRow[], widthMm: number): Block {
  const rows = losses.map(({ lost, off }): Row => ({ cells: [lost, off] }));
  const columns = [
    { head, leastMm: 50 },
    { head: "Stops working", grow: 1 },
  ];
  return tableBlock(
    { columns, rows, none: `${head}: nothing that is on in a declared situation stops working.` },
    widthMm,
  );
}
