import { formatNumber, parseNumber } from "./number.ts";
import { accepted, refused, type Typed } from "./typed.ts";

/** A conductor size. AWG gauges run 0, -1, -2, -3 for 1/0, 2/0, 3/0, 4/0, as in the gauge formula. */
export type WireSize =
  { readonly system: "awg"; readonly gauge: number } | { readonly system: "mm2"; readonly areaMm2: number };

const WANTED = 'a wire size, like "16 AWG", "1/0 AWG" or "1.5 mm2"';
const AWG = /^(?:awg\s*)?(?:#\s*)?(\d{1,2}|[1-4]\s*\/\s*0|0{1,4})\s*(?:awg|ga|gauge)?$/i;
const MM2 = /^([\d.,]+)\s*(?:mm2|mm²|mm\^2|sq\.?\s*mm|qmm)$/i;
const SMALLEST_AWG = 40;

/**
 * Reads a wire size as written in a file or typed: "16 AWG", "awg 16", "16", "1/0", "00", "1.5 mm2", "1,5 mm²". A bare number
 * is AWG, because the file's mm2 always carries its unit. Gauges 4/0 to 40; areas above 0 up to 1000 mm2.
 * No answer: refused, with what was wanted.
 */
export function parseWireSize(text: string): Typed<WireSize> {
  const typed = text.trim();
  const awg = AWG.exec(typed);
  if (awg) {
    const gauge = gaugeOf((awg[1] ?? "").replace(/\s/g, ""));
    return gauge <= SMALLEST_AWG ? accepted({ system: "awg", gauge }) : refused(text, WANTED);
  }
  const area = parseNumber(MM2.exec(typed)?.[1] ?? "");
  if (!area.ok || area.value <= 0 || area.value > 1000) return refused(text, WANTED);
  return accepted({ system: "mm2", areaMm2: area.value });
}

/** The size as a file says it: "16 AWG", "1/0 AWG", "1.5 mm2". */
export function wireSizeText(size: WireSize): string {
  if (size.system === "mm2") return `${formatNumber(size.areaMm2, 6)} mm2`;
  return size.gauge > 0 ? `${size.gauge} AWG` : `${1 - size.gauge}/0 AWG`;
}

/** The size as people read it: as in the file but with a raised 2. What is no size at all is shown as it stands. */
export function formatWireSize(text: string): string {
  const size = parseWireSize(text);
  return size.ok ? wireSizeText(size.value).replace("mm2", "mm²") : text;
}

function gaugeOf(written: string): number {
  const aught = /^([1-4])\/0$/.exec(written);
  if (aught) return 1 - Number(aught[1]);
  return /^0+$/.test(written) ? 1 - written.length : Number(written);
}
