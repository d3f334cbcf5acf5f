/** Largest resistance at 20 °C, milliohm per metre: ISO 6722 as printed up to 16 mm2, IEC 60228 class 5 above. */
const MM2_MILLIOHM: Readonly<Record<string, number>> = {
  "0.5": 37.1,
  "0.75": 24.7,
  "1": 18.5,
  "1.5": 12.7,
  "2.5": 7.6,
  "4": 4.71,
  "6": 3.14,
  "10": 1.82,
  "16": 1.16,
  "25": 0.78,
  "35": 0.554,
  "50": 0.386,
};

/** Ohms of a wire; 0.1 milliohm where size or length is unknown (reading 10). */
export function wireOhm(size: string | undefined, metres: number | undefined, conductorC: number): number {
  if (size === undefined || metres === undefined) return 1e-4;
  const factor = 1 + 0.00393 * (conductorC - 20);
  const [count = "", unit] = size.split(" ");
  if (unit === "mm2") return (MM2_MILLIOHM[count]! / 1000) * metres * factor;
  const gauge = count.endsWith("/0") ? 1 - Number(count.slice(0, -2)) : Number(count);
  const areaM2 = (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - gauge) / 39)) ** 2;
  return (1.7241e-8 / areaM2) * metres * factor;
}
