import { formatQuantity, type Unit } from "../../units/index.ts";
import type { Finding, Study } from "../rule.ts";

/**
 * A place as a person knows it. A part by its label with its id, "Awning relay (k1)", or its title, "relay k1"; a wire by what
 * is printed on it; a terminal by its mark, "terminal 87a of Awning relay (k1)".
 */
export function nameOf(study: Study, place: string): string {
  const { wireAt, partAt, terminalAt } = study.netlist;
  const wire = wireAt.get(place)?.wire;
  if (wire) return wire.label ? `wire ${wire.label} (${place})` : `wire ${place}`;
  const part = partAt.get(place);
  if (part) return part.part.label ? `${part.part.label} (${place})` : `${part.kind.title.toLowerCase()} ${place}`;
  const terminal = terminalAt.get(place);
  return terminal ? `terminal ${terminal.terminal.name} of ${nameOf(study, terminal.part.part.id)}` : place;
}

/** The place of a finding (its `at` of that number, the first unless said) in words, at the start of a sentence. */
export function placeName(finding: Finding, study: Study, at = 0): string {
  const name = nameOf(study, finding.at[at] ?? "");
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** Several places: "a", "a and b", "a, b and 3 more". */
export function listOf(study: Study, places: readonly string[]): string {
  const names = places.slice(0, places.length > 4 ? 3 : 4).map((place) => nameOf(study, place));
  if (places.length > 4) return `${names.join(", ")} and ${places.length - 3} more`;
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** A number of the finding with its unit: "8.31 A"; "unknown" where it is. */
export function amount({ measure }: Finding, name: string, unit: Unit): string {
  const value = measure[name];
  return formatQuantity(typeof value === "number" ? value : null, unit);
}

/** When the finding holds, to end a clause: 'with everything at rest', 'in "Lamps switched on"'. */
export function situationOf({ measure }: Finding, study: Study): string {
  const [rest] = study.situations;
  const situation = study.situations.find(({ id }) => id === measure["situation"]);
  return !situation || situation === rest ? "with everything at rest" : `in “${situation.name}”`;
}
