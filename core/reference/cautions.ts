import type { ReferenceTable } from "./reference-table.ts";

export interface Caution {
  readonly id: string;
  readonly text: string;
  readonly source: string;
  readonly fromMemory?: true;
  /** Belongs on every paper; the rest are for the help page. */
  readonly onPapers?: true;
}

/** Reminders, in our own words. The vehicle maker's procedure, local law and licensed practice come first. */
export const cautions: readonly Caution[] = [
  {
    id: "negative-first",
    text: "Take the battery's negative lead off first and put it back last: a spanner that slips to the frame then shorts nothing.",
    source: "battery suppliers' handling guides",
    onPapers: true,
  },
  {
    id: "fuse-last",
    text: "Fit the fuse last, when every other joint is made and checked. To work on the circuit again, pull it first.",
    source: "from memory",
    fromMemory: true,
    onPapers: true,
  },
  {
    id: "fuse-near-source",
    text: "Put the fuse as near the source as you can. Never run unfused cable through the body.",
    source: "TMC RP 111C; 33 CFR 183.455",
  },
  {
    id: "no-bigger-fuse",
    text: "Never cure a blown fuse with a bigger one. Find the fault.",
    source: "general workshop guidance",
  },
  {
    id: "eyes",
    text: "Wear eye protection near lead-acid batteries and keep water at hand to rinse eyes.",
    source: "29 CFR 1917.157; battery charging safety guides",
    onPapers: true,
  },
  {
    id: "hydrogen",
    text: "A charging battery gives off hydrogen, also with the engine running: no flame, no spark, no smoking, fresh air.",
    source: "battery charging safety guides",
    onPapers: true,
  },
  {
    id: "rings",
    text: "Take off rings, watches and bracelets: a battery can weld metal to skin.",
    source: "battery charger manuals",
  },
  {
    id: "acid",
    text: "Battery acid burns: rinse at once, and see a doctor for eyes. Wash your hands, there is lead on them.",
    source: "vehicle owner's manuals",
  },
  {
    id: "frozen-battery",
    text: "Never charge or jump-start a frozen battery.",
    source: "battery safety guide of a university",
  },
  {
    id: "jump-ground",
    text: "When jump-starting, switch loads off and clip the ground lead to metal away from the battery.",
    source: "29 CFR 1917.157",
  },
  {
    id: "airbags",
    text: "Keep off airbag and belt-tensioner circuits (often yellow or orange connectors): no tapping, probing or splicing. They stay charged for seconds to minutes after the battery is off.",
    source: "vehicle makers' service manuals (stated waits run from 10 s to 10 min)",
    onPapers: true,
  },
  {
    id: "airbag-meters",
    text: "Never put a test lamp or an ordinary ohmmeter on an airbag circuit.",
    source: "vehicle makers' service manuals",
  },
  {
    id: "vapour",
    text: "Keep switches, relays, breakers and fuse holders out of spaces with fuel or gas vapour, or use ignition-protected ones.",
    source: "33 CFR 183.410; California DOT equipment standard 3.1",
    onPapers: true,
  },
  {
    id: "engine-running",
    text: "Never take a battery or alternator lead off with the engine running, and never swap plus and minus.",
    source: "vehicle makers' workshop manuals",
  },
  {
    id: "memory-loss",
    text: "Taking the battery off clears radio codes and learned settings: note them first.",
    source: "vehicle makers' service manuals",
  },
  {
    id: "dc-switches",
    text: "Use switches rated for direct current; an AC rating does not count. Allow for the rush of lamps and motors.",
    source: "FAA AC 43.13-1B, chapter 11",
  },
  {
    id: "relay-drop-out",
    text: "A relay lets go when the voltage sags: no safety function may hang on one relay staying in.",
    source: "FAA AC 43.13-1B, chapter 11",
  },
  {
    id: "no-piercing",
    text: "No wire-piercing taps: crimped, sealed joints made with the proper tool.",
    source: "California DOT equipment quality standards 3.2",
  },
  {
    id: "road-lamps",
    text: "Lamps used on public roads are regulated; another type or wattage can end the vehicle's approval.",
    source: "public statement quoting a road authority",
  },
  {
    id: "high-voltage",
    text: "Orange cables and mains inverters are outside this plan: qualified persons only.",
    source: "from memory",
    fromMemory: true,
    onPapers: true,
  },
  {
    id: "plan-only",
    text: "A plan is not an inspection: follow the vehicle maker's instructions and local code, and have licensed people do what the law gives to them.",
    source: "common wording of public calculators",
    onPapers: true,
  },
];

export const cautionsTable: ReferenceTable = {
  id: "cautions",
  title: "Cautions",
  unit: "",
  source: "per line",
  edition: null,
  range: "reminders; the vehicle maker's procedure, local law and licensed practice come first",
  rows: cautions.map(({ text, source, fromMemory, id }) => ({
    of: id,
    value: text,
    source,
    ...(fromMemory ? { fromMemory } : {}),
  })),
};
