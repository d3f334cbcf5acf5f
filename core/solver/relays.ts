/**
 * Relays: from all released, solve, then every relay moves at once, and again until none moves. A set of positions met before
 * means the relays chase one another for ever.
 */
import type { Relay } from "../circuit/index.ts";
import type { LinearOutcome } from "./diodes.ts";
import type { Model } from "./model.ts";

export type RelayOutcome = LinearOutcome | { readonly status: "chatter" };

/** A coil at its limit within this part of it has reached it: rounding must not decide. */
const SLACK = 1e-12;

/** Settles the relays into `pulledIn`; `settle` solves the model for the contacts as they stand. */
export function settleRelays(model: Model, pulledIn: Uint8Array, settle: () => LinearOutcome): RelayOutcome {
  const { relays } = model.circuit;
  const met = new Set<string>();
  pulledIn.fill(0);
  for (;;) {
    moveContacts(model, pulledIn);
    const outcome = settle();
    if (outcome.status !== "ok" || relays.length === 0) return outcome;
    met.add(pulledIn.join(""));
    const next = Uint8Array.from(relays, (relay, i) =>
      Number(isInNext(relay, pulledIn[i] === 1, Math.abs(model.volts(relay.coil)))),
    );
    if (next.every((position, i) => position === pulledIn[i])) return outcome;
    if (met.has(next.join(""))) return { status: "chatter" };
    pulledIn.set(next);
  }
}

function isInNext({ pullInV, dropOutV }: Relay, isIn: boolean, coilV: number): boolean {
  if (coilV >= pullInV * (1 - SLACK)) return true;
  return isIn && coilV >= dropOutV * (1 - SLACK);
}

/** Puts every contact a relay moves where these positions put it. A contact of several relays is closed if any closes it. */
export function moveContacts(model: Model, pulledIn: Uint8Array): void {
  const { relays } = model.circuit;
  const isClosed = new Map<number, boolean>();
  relays.forEach(({ makes, breaks }, i) => {
    for (const contact of makes) isClosed.set(contact, pulledIn[i] === 1 || isClosed.get(contact) === true);
    for (const contact of breaks) isClosed.set(contact, pulledIn[i] === 0 || isClosed.get(contact) === true);
  });
  for (const [contact, closed] of isClosed) model.set(contact, closed);
}
