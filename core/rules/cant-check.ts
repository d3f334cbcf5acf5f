import type { NetPart, NetWire } from "../netlist/index.ts";
import { factsOf, type Element } from "../parts/index.ts";
import { formatWireSize } from "../units/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { isWired } from "./study/elements.ts";
import { nameOf, placeName } from "./study/words.ts";

export const cantCheck = defineRule({
  id: "cant-check",
  level: "cant-check",
  about: "A rating, a size or a length is missing; what hangs on it is not counted as passed.",
  source: "Unknown is not OK",
  check: (study) => [
    ...study.netlist.wires.flatMap((wire) => missingOf(wire)),
    ...study.netlist.parts.flatMap((part) => (isWired(part) ? missingIn(part) : [])),
  ],
  say(finding, study) {
    const missing = String(finding.measure["missing"]);
    if (missing === "capacity") {
      return `${placeName(finding, study)} is ${formatWireSize(String(finding.measure["size"]))}, which is in no capacity table chosen here: take a listed size, so that its limit is known.`;
    }
    return `Enter the ${missing} of ${nameOf(study, finding.at[0]!)}: until then what depends on it can't be checked.`;
  },
});

function missingOf({ wire, capacityA }: NetWire): Finding[] {
  const missing = [...(wire.size === undefined ? ["size"] : []), ...(wire.metres === undefined ? ["length"] : [])];
  if (missing.length > 0) return [asked([wire.id], missing)];
  if (wire.size === undefined || capacityA !== null) return [];
  return [{ at: [wire.id], measure: { missing: "capacity", size: wire.size }, remedies: [] }];
}

function asked(at: readonly string[], missing: readonly string[]): Finding {
  return { at, measure: { missing: missing.join(" and ") }, remedies: [] };
}

/** One finding for the part, and one for each way of a block: that is where a person enters them. */
function missingIn(part: NetPart): Finding[] {
  const { ratedA } = factsOf(part.part);
  const own = new Set<string>(ratedA === null ? ["rating"] : []);
  const ways: Finding[] = [];
  for (const { spec } of part.elements) {
    const missing = unknownOf(spec);
    if (missing === null) continue;
    if (spec.type === "protection" && spec.terminal !== "") ways.push(...wayOf(part, spec.terminal, missing));
    else own.add(missing);
  }
  if (part.settings["holderA"] === null) own.add("holder's rating");
  return [...(own.size > 0 ? [asked([part.part.id], [...own])] : []), ...ways];
}

/** A way with no wire on it is spare: nobody needs its rating yet. */
function wayOf({ part, terminals }: NetPart, name: string, missing: string): Finding[] {
  const terminal = terminals.find((each) => each.terminal.name === name);
  return terminal && terminal.wires.length > 0 ? [asked([terminal.address, part.id], [missing])] : [];
}

/** What nobody has said of an element, in words; `null` where all is known. */
function unknownOf(spec: Element): string | null {
  switch (spec.type) {
    case "protection":
      return spec.closed && spec.ratingA === null ? "rating" : null;
    case "source":
      return spec.fuseA === null ? "rating of its fuse" : null;
    case "contact":
      return spec.ratedA === null ? "rating" : null;
    case "diode":
      return spec.ratedA === null && spec.suppresses === undefined ? "rating" : null;
    case "converter":
      return spec.maxA === null ? "output limit" : null;
    case "load":
      if (spec.role === "existing") return null;
      if (drawUnknown(spec.draw)) return spec.draw.law === "resistor" ? "resistance or watts" : "watts or amps";
      return spec.start !== null && spec.start.ohm === null && spec.start.amps === null
        ? "standstill resistance"
        : null;
    case "bar":
    case "link":
    case "coil":
      return null;
  }
}

function drawUnknown(draw: Extract<Element, { type: "load" }>["draw"]): boolean {
  switch (draw.law) {
    case "resistor":
      return draw.ohm === null;
    case "current":
      return draw.amps === null;
    case "filament":
    case "power":
      return draw.watts === null;
  }
}
