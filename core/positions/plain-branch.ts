import type { Solution } from "../circuit/index.ts";
import { nodesOf } from "./circuits.ts";
import type { Group } from "./groups.ts";
import type { Rails } from "./rails.ts";

/** Less than this is leakage. Amps. */
const NO_CURRENT_A = 1e-9;

/**
 * A group whose every combination can be told without solving it: contacts and loads alone, fed (or returned) at one place, its loads
 * all off at `rest`. No relay stands elsewhere for it, nothing can short or drive anything, and nothing in it is never off.
 */
export function isPlainBranch({ classOf, plus, minus }: Rails, { elements }: Group, rest: Solution): boolean {
  const feeds = new Set<number>();
  const returns = new Set<number>();
  for (const element of elements) {
    const { type } = element.spec;
    if (type === "load") {
      if (Math.abs(rest.branchA[element.branch]!) > NO_CURRENT_A) return false;
    } else if (type !== "contact" || element.coil >= 0) return false;
    else {
      for (const node of nodesOf(element)) {
        if (plus[classOf[node]!] === 1) feeds.add(node);
        if (minus[classOf[node]!] === 1) returns.add(node);
      }
    }
  }
  return rest.status === "ok" && (feeds.size === 0 || (feeds.size === 1 && returns.size === 0));
}
