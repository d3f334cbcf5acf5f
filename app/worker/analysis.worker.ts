import { analyse, type Analysis } from "../../core/analyse.ts";
import { EXAMPLES } from "../../core/examples/index.ts";
import type { Combination, Netlist } from "../../core/netlist/index.ts";
import { readSituation } from "../../core/readings/index.ts";
import { marksOf } from "./marks-of.ts";
import { answerConsultation } from "./answer-consultation.ts";
import type { Ask, Consult, Consulted, Positions, Present, Told } from "./protocol.ts";

const PRESENT = "present";

/** The document last analysed: flicking a control solves only its net again. */
let held: { readonly revision: number; readonly analysis: Analysis } | null = null;

self.onmessage = ({ data }: MessageEvent<Ask | Consult>) =>
  tell(data.type === "consult" ? consulted(data) : answer(data));
warmUp();
tell({ type: "ready" });

function answer(ask: Ask): Told {
  try {
    if (ask.type === "analyse") held = { revision: ask.revision, analysis: analyse(ask.document) };
    if (held === null || held.revision !== ask.revision)
      throw new Error(`asked about revision ${ask.revision}, which is not here`);
    const { report, study } = held.analysis;
    const present = presentOf(study.netlist, ask.positions);
    const marks = marksOf(ask.revision, study.netlist, report, present);
    return ask.type === "analyse"
      ? { type: "analysed", revision: ask.revision, report, present, marks }
      : { type: "present", revision: ask.revision, present, marks };
  } catch (error) {
    return { type: "failed", revision: ask.revision, reason: error instanceof Error ? error.message : String(error) };
  }
}

function consulted({ number, topic, asks, positions }: Consult): Consulted {
  if (held === null) return { type: "consulted", number };
  try {
    const { analysis } = held;
    const combination = standing(analysis.study.netlist, positions);
    return { type: "consulted", number, answer: answerConsultation(topic, asks, { analysis, combination }) };
  } catch {
    // A drawing in the middle of being drawn may ask what makes no sense; the panel then shows nothing.
    return { type: "consulted", number };
  }
}

function presentOf(netlist: Netlist, positions: Positions): Present {
  const { settled, residualA, terminals, wires, parts } = readSituation(
    netlist,
    standing(netlist, positions),
    PRESENT,
    "Now",
  );
  return { positions, settled, residualA, terminals, wires, parts };
}

/** Positions of controls that were just deleted or changed are left out: those controls are at rest. */
function standing(netlist: Netlist, positions: Positions): Combination {
  return Uint8Array.from(netlist.controls, ({ id, positions: known }) =>
    Math.max(0, known.indexOf(positions[id] ?? "")),
  );
}

/** The first solve in a fresh engine is many times slower than the next: do it before anybody waits for it. */
function warmUp(): void {
  const [example] = EXAMPLES;
  for (let round = 0; example && round < 3; round += 1) analyse(example.document);
}

function tell(told: Told | Consulted): void {
  self.postMessage(told);
}
