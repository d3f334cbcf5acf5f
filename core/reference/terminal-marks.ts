import type { ReferenceTable } from "./reference-table.ts";

const DIN_72552 = [
  { mark: "15", meaning: "positive switched by the key" },
  { mark: "30", meaning: "positive straight from the battery; on a relay the common contact" },
  { mark: "31", meaning: "return to battery negative, ground" },
  { mark: "31b", meaning: "return to ground through a switch" },
  { mark: "50", meaning: "starter control" },
  { mark: "75", meaning: "accessories, radio", fromMemory: true },
  { mark: "85", meaning: "relay coil, end towards ground" },
  { mark: "86", meaning: "relay coil, end towards the supply" },
  { mark: "87", meaning: "relay contact, made when the relay is pulled in" },
  { mark: "87a", meaning: "relay contact, made while the relay is at rest" },
  { mark: "87b", meaning: "second output, made when the relay is pulled in" },
] as const;

/** What a terminal mark means ("87a"), in words; `null` for marks we do not use. */
export function terminalMeaning(mark: string): string | null {
  return DIN_72552.find((row) => row.mark === mark)?.meaning ?? null;
}

export const terminalMarksTable: ReferenceTable = {
  id: "terminal-marks",
  title: "Terminal marks",
  unit: "",
  source: "DIN 72552, as listed in public copies",
  edition: "1971",
  range: "marks used by the parts here",
  rows: DIN_72552.map(({ mark, meaning, ...row }) => ({ of: mark, value: meaning, ...row })),
};
