import type { Cover } from "../document/index.ts";
import type { Fixing, Terminal } from "./part-kind.ts";

type Where = {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly exit: Terminal["exit"];
  readonly about: string;
};

/** Insulated when wired, bare metal when not: the blade of a relay, a switch or a block, the stripped end of a lead. */
export const tab = (where: Where): Terminal => terminal(where, "tab", "covered", "bare");
export const lead = (where: Where): Terminal => terminal(where, "lead", "covered", "bare");
/** Open metal, wired or not, until someone covers it. */
export const bareStud = (where: Where): Terminal => terminal(where, "stud", "bare", "bare");
export const coveredStud = (where: Where): Terminal => terminal(where, "stud", "covered", "covered");

export function terminal(where: Where, fixing: Fixing, wired: Cover, unwired: Cover): Terminal {
  const { name, x, y, exit, about } = where;
  return { name, at: [x, y], exit, cover: { wired, unwired }, fixing, about };
}
