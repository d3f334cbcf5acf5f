import type { Document } from "../document/index.ts";
import { kindOf, settingsOf } from "../parts/index.ts";
import { FORBIDDEN_NAMES } from "./parse-json.ts";
import { quote, refuse, step } from "./refusal.ts";

/** Refuses ids that repeat or are forbidden, wire ends that name no terminal, and situations that set what is not there. */
export function checkReferences(document: Document): void {
  checkIds(document);
  checkWireEnds(document);
  checkSituations(document);
}

function checkIds({ parts, wires, notes = [] }: Document): void {
  const taken = new Set<string>();
  const check = (key: string, id: string) => {
    if (FORBIDDEN_NAMES.has(id)) throw refuse(key, quote(id), "another id: this name is reserved");
    if (taken.has(id)) throw refuse(key, quote(id), "an id that no other part, wire or note has");
    taken.add(id);
  };
  parts.forEach(({ id }, at) => check(`parts[${at}].id`, id));
  wires.forEach(({ id }, at) => check(`wires[${at}].id`, id));
  notes.forEach(({ id }, at) => check(`notes[${at}].id`, id));
}

function checkWireEnds({ parts, wires }: Document): void {
  const terminals = new Map<string, Set<string>>();
  for (const part of parts) {
    const kind = kindOf(part.kind);
    if (kind) terminals.set(part.id, new Set(kind.terminals(settingsOf(part)).map(({ name }) => name)));
  }
  const check = (key: string, address: string) => {
    const dot = address.indexOf(".");
    const names = terminals.get(dot < 0 ? address : address.slice(0, dot));
    if (!names) throw refuse(key, quote(address), 'a terminal of a part in the file, as "part.terminal"');
    if (dot >= 0 && names.has(address.slice(dot + 1))) return;
    throw refuse(key, quote(address), `a terminal of that part: ${[...names].slice(0, 12).join(", ")}`);
  };
  wires.forEach(({ from, to }, at) => {
    check(`wires[${at}].from`, from);
    check(`wires[${at}].to`, to);
  });
}

const ENGINE_POSITIONS: readonly string[] = ["off", "running"];

function checkSituations({ parts, situations = [] }: Document): void {
  const controls = new Map<string, readonly string[]>([["engine", ENGINE_POSITIONS]]);
  parts.forEach((part, at) => {
    const control = kindOf(part.kind)?.control?.(settingsOf(part));
    if (!control) return;
    if (part.id === "engine")
      throw refuse(`parts[${at}].id`, '"engine"', "another id: the vehicle's engine has that name among the controls");
    controls.set(part.id, control.positions);
  });
  const taken = new Set<string>();
  situations.forEach(({ id, set = {} }, at) => {
    if (FORBIDDEN_NAMES.has(id) || taken.has(id))
      throw refuse(`situations[${at}].id`, quote(id), "an id that no other situation has");
    taken.add(id);
    for (const [control, position] of Object.entries(set)) {
      const key = `situations[${at}].set.${step(control)}`;
      const positions = controls.get(control);
      if (id === "rest")
        throw refuse(key, quote(position), 'nothing: "rest" is everything at rest and sets no control');
      if (!positions) throw refuse(key, quote(position), `a control: ${[...controls.keys()].slice(0, 12).join(", ")}`);
      if (!positions.includes(position))
        throw refuse(key, quote(position), positions.map((one) => JSON.stringify(one)).join(" or "));
    }
  });
}
