import type { NetElement, NetPart } from "../../netlist/index.ts";
import type { Coil, Contact, Load, Protection } from "../../parts/index.ts";
import { formatNumber } from "../../units/index.ts";
import type { PaperSource } from "../paper.ts";
import { ampsWords, partName } from "../words/index.ts";
import { jointRows } from "./joint-rows.ts";
import { relaySort } from "./relay-rows.ts";

/** One line of a shopping order, in trade words: what is needed, never whose. */
export interface OrderRow {
  readonly quantity: number;
  readonly what: string;
  readonly rating: string;
  readonly where: string;
  /** What may be taken in its place. */
  readonly instead: string;
}

/** Parts alike counted together, then terminals and barrels; wire stands in the cut list. */
export function orderRows(source: PaperSource): OrderRow[] {
  const parts = source.netlist.parts.map((part) => partOrder(part, source));
  return [...merged(parts), ...merged(terminalOrders(source))];
}

function partOrder(part: NetPart, { netlist }: PaperSource): OrderRow {
  const { kind, settings } = part;
  const rating = kind.caption(settings, { nominalV: netlist.system.nominalV, seriesUpper: false });
  const { sort, instead } = substitute(part, netlist.system.nominalV);
  const what = sort === "" ? kind.title : `${kind.title}, ${sort}`;
  return { quantity: 1, what, rating, where: partName(part.part), instead };
}

/** The finer sort of a part and its substitute rule, by what it is made of. */
function substitute(part: NetPart, nominalV: number): { readonly sort: string; readonly instead: string } {
  const specs = part.elements.map(({ spec }) => spec);
  const coil = specs.find((spec): spec is Coil => spec.type === "coil");
  const facts = part.kind.facts?.(part.settings) ?? {};
  if (coil) return { sort: relaySort(part), instead: relayRule(part, coil, nominalV) };
  const protections = specs.filter((spec): spec is Protection => spec.type === "protection");
  if (protections.length > 0)
    return { sort: protections[0]!.gates ?? "", instead: protectionRule(protections, facts.ratedA ?? null) };
  const contacts = specs.filter((spec): spec is Contact => spec.type === "contact");
  if (contacts.length > 0) return { sort: "", instead: `any for direct current, ${leastAmps(contacts)}` };
  const load = part.elements.find(isUse);
  if (load) return { sort: "", instead: loadRule(load.spec, nominalV) };
  if (facts.battery || facts.feed) return { sort: "", instead: "usually in the vehicle already" };
  if (facts.surface !== undefined) return { sort: "", instead: "clean bare metal, a bolt or stud of its own" };
  if (facts.ratedA !== undefined) return { sort: "", instead: `same number of ways or more, ${atLeast(facts.ratedA)}` };
  const diode = specs.find((spec) => spec.type === "diode");
  return { sort: "", instead: diode ? `any silicon diode, ${atLeast(diode.ratedA)}` : "" };
}

function relayRule(part: NetPart, coil: Coil, nominalV: number): string {
  const ratings = part.elements.flatMap(({ spec }) =>
    spec.type === "contact" ? [`${atLeast(spec.ratedA)} on ${spec.b}`] : [],
  );
  const suppressed = coil.suppression === "none" ? "suppressed or not" : `${coil.suppression}-suppressed`;
  return `any ${part.terminals.length}-pin ${nominalV} V relay with the same pins, ${ratings.join(", ")} at 85 °C, ${suppressed}`;
}

function protectionRule(protections: readonly Protection[], ratedA: number | null): string {
  if (protections.length > 1)
    return `same number of ways or more${ratedA === null ? "" : `, ${atLeast(ratedA)} in all`}; fuses as the legend says`;
  return protections[0]!.recloses
    ? "same rating and same way of resetting"
    : "same rating and same body; its holder for that rating or more";
}

function loadRule(load: Load, nominalV: number): string {
  const watts =
    "watts" in load.draw && load.draw.watts !== null
      ? `${formatNumber(load.draw.watts)} W or less`
      : "same current or less";
  return `any for ${nominalV} V, ${watts}`;
}

function isUse(element: NetElement): element is NetElement<Load> {
  return element.spec.type === "load" && element.spec.role === "use";
}

function leastAmps(contacts: readonly Contact[]): string {
  const ratings = contacts.map(({ ratedA }) => ratedA);
  return atLeast(ratings.includes(null) ? null : Math.max(...ratings.map((rating) => rating ?? 0)));
}

function atLeast(ratedA: number | null): string {
  return ratedA === null ? "rating not stated" : `${ampsWords(ratedA)} or more`;
}

function terminalOrders(source: PaperSource): OrderRow[] {
  return jointRows(source).map(({ terminal, barrel, place }) => ({
    quantity: 1,
    what: `Terminal: ${terminal}`,
    rating: barrel,
    where: place,
    instead: "any for the same copper and the same stud or tab; buy some over for samples",
  }));
}

function merged(rows: readonly OrderRow[]): OrderRow[] {
  const groups = new Map<string, OrderRow>();
  for (const row of rows) {
    const key = JSON.stringify([row.what, row.rating, row.instead]);
    const known = groups.get(key);
    groups.set(key, known ? { ...known, quantity: known.quantity + 1, where: `${known.where}, ${row.where}` } : row);
  }
  return [...groups.values()];
}

/** One spare of each fuse that is fitted, to keep with the vehicle. */
export function spareFuses({ netlist }: PaperSource): OrderRow[] {
  const rows = netlist.elements.flatMap(({ spec, part }): OrderRow[] => {
    if (spec.type !== "protection" || spec.recloses || spec.ratingA === null) return [];
    const what = `Spare fuse${spec.gates === null ? "" : `, ${spec.gates}`}`;
    return [{ quantity: 1, what, rating: ampsWords(spec.ratingA), where: partName(part.part), instead: "none larger" }];
  });
  return merged(rows).map((row) => ({ ...row, quantity: 1 }));
}
