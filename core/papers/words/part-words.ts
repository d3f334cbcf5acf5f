import { splitAddress, type Part } from "../../document/index.ts";
import type { Netlist, NetTerminal } from "../../netlist/index.ts";
import { formatNumber } from "../../units/index.ts";
import { unbroken } from "../layout/index.ts";

/** "F1 Lamps", as it stands beside the symbol: the id in capitals, then what the person calls it. */
export function partName({ id, label }: Part): string {
  const name = id.toUpperCase();
  if (label === undefined || label === "") return name;
  return new RegExp(`^${name}(?![A-Z0-9])`).test(label.toUpperCase()) ? label : `${name} ${label}`;
}

/** "K1 Lamps pin 87", or the part alone where it has one terminal. */
export function terminalName(terminal: NetTerminal): string {
  const name = partName(terminal.part.part);
  return terminal.part.terminals.length === 1 ? name : `${name}${unbroken(` · ${terminal.terminal.name}`)}`;
}

/** A terminal address or part id of a report in the drawing's words; the address itself where it names nothing. */
export function placeName(address: string, netlist: Netlist): string {
  const terminal = netlist.terminalAt.get(address);
  if (terminal) return terminalName(terminal);
  const part = netlist.partAt.get(splitAddress(address)[0]);
  return part ? partName(part.part) : address;
}

/** "10 A", to the milliamp; "? A" where nobody gave the rating. */
export function ampsWords(currentA: number | null): string {
  return unbroken(currentA === null ? "? A" : `${formatNumber(Math.round(currentA * 1000) / 1000)} A`);
}
