import type { Wire } from "../../document/index.ts";
import type { NetWire } from "../../netlist/index.ts";
import { awgAreaMm2, wireColourName } from "../../reference/index.ts";
import { unbroken } from "../layout/index.ts";
import { formatLength, formatNumber, formatWireSize, parseWireSize } from "../../units/index.ts";

/** Gauges on sale, thinnest first; 1/0 to 4/0 are 0 to -3. */
const GAUGES = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

/** "w3", or "w3 L1" where the wire carries a label of its own. */
export function wireName({ id, label }: Wire): string {
  return label === undefined || label === "" || label === id ? id : `${id} ${label}`;
}

/** "RDWH red with white tracer"; "not stated" where nobody said. */
export function colourWords(colour: string | undefined): string {
  if (colour === undefined || colour === "") return "not stated";
  const name = wireColourName(colour);
  return name === colour ? colour : `${colour} ${name}`;
}

/**
 * A wire's size in both systems: as drawn, and in the other one its copper area in mm² or the thinnest gauge with at least as
 * much copper. Unknown sizes say so; gauges and areas are not equal, so the second is never called the same.
 */
export function sizeWords(wire: NetWire): { readonly drawn: string; readonly other: string } {
  const { size } = wire.wire;
  if (size === undefined || wire.areaMm2 === null) return { drawn: size ?? "not stated", other: "" };
  const parsed = parseWireSize(size);
  const drawn = formatWireSize(size);
  if (parsed.ok && parsed.value.system === "mm2") return { drawn, other: gaugeOfAtLeast(wire.areaMm2) };
  return { drawn, other: `${formatNumber(wire.areaMm2)} mm²` };
}

/** "14 AWG (2.08 mm²)". */
export function bothSizes(wire: NetWire): string {
  const { drawn, other } = sizeWords(wire);
  return other === "" ? drawn : `${unbroken(drawn)} (${unbroken(other)})`;
}

/** "2.5 m (8 ft 2 in)", the reader's own unit first. */
export function bothLengths(lengthM: number | null | undefined, sizes: "awg" | "mm2"): string {
  return lengthM === null || lengthM === undefined ? "not stated" : lengthWords(lengthM, sizes);
}

/** "6 in" or "0.15 m": the reader's own unit alone. */
export function ownLength(lengthM: number, sizes: "awg" | "mm2"): string {
  return unbroken(formatLength(lengthM, sizes === "awg" ? "us" : "metric").split(" (")[0]!);
}

function lengthWords(lengthM: number, sizes: "awg" | "mm2"): string {
  const [own = "", other = ""] = formatLength(lengthM, sizes === "awg" ? "us" : "metric").split(" (");
  return `${unbroken(own)} (${unbroken(other)}`;
}

function gaugeOfAtLeast(areaMm2: number): string {
  const gauge = GAUGES.find((each) => awgAreaMm2(each) >= areaMm2 * (1 - 1e-9));
  if (gauge === undefined) return "";
  return `at least ${gauge > 0 ? gauge : `${1 - gauge}/0`} AWG`;
}
