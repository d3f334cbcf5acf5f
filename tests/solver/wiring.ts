/** Circuits in a few words for the solver's tests: named nodes, branches in the order they are added. */
import type { Branch, Circuit, Relay, Solution, State } from "../../core/circuit/index.ts";
import { solveDc } from "../../core/solver/index.ts";

export class Wiring {
  private readonly nodes = new Map<string, number>();
  readonly branches: Branch[] = [];
  readonly relays: Relay[] = [];
  private readonly open = new Set<number>();

  node(name: string): number {
    if (!this.nodes.has(name)) this.nodes.set(name, this.nodes.size);
    return this.nodes.get(name)!;
  }

  private add(branch: Branch): number {
    return this.branches.push(branch) - 1;
  }

  wire(a: string, b: string, ohm = 0.01): number {
    return this.add({ type: "resistor", a: this.node(a), b: this.node(b), ohm });
  }

  contact(a: string, b: string, ohm = 0.01, closed = true): number {
    const index = this.add({ type: "contact", a: this.node(a), b: this.node(b), ohm });
    if (!closed) this.open.add(index);
    return index;
  }

  source(a: string, b: string, volts: number, ohm = 0): number {
    return this.add({ type: "source", a: this.node(a), b: this.node(b), volts, ohm });
  }

  diode(a: string, b: string, forwardV = 0.7, ohm = 0.01): number {
    return this.add({ type: "diode", a: this.node(a), b: this.node(b), forwardV, ohm });
  }

  filament(a: string, b: string, watts: number, ratedV = 12.8): number {
    return this.add({ type: "filament", a: this.node(a), b: this.node(b), watts, ratedV });
  }

  power(
    a: string,
    b: string,
    watts: number,
    limits: { minV?: number; maxV?: number; eitherWay?: boolean } = {},
  ): number {
    const { minV = null, maxV = null, eitherWay = false } = limits;
    return this.add({ type: "power", a: this.node(a), b: this.node(b), watts, minV, maxV, eitherWay });
  }

  current(a: string, b: string, amps: number, eitherWay = false): number {
    return this.add({ type: "current", a: this.node(a), b: this.node(b), amps, eitherWay });
  }

  converter(a: string, b: string, outA: string, outB: string, volts: number, efficiency = 0.85): number {
    return this.add({
      type: "converter",
      a: this.node(a),
      b: this.node(b),
      outA: this.node(outA),
      outB: this.node(outB),
      volts,
      efficiency,
    });
  }

  relay(coil: number, pullInV: number, dropOutV: number, makes: number[], breaks: number[] = []): void {
    this.relays.push({ coil, pullInV, dropOutV, makes, breaks });
  }

  circuit(...zeros: string[]): Circuit {
    const references = zeros.map((name) => this.node(name));
    return { nodeCount: this.nodes.size, branches: this.branches, relays: this.relays, references };
  }

  state(open: readonly number[] = []): State {
    const closed = Uint8Array.from(this.branches, (_, index) => (this.open.has(index) || open.includes(index) ? 0 : 1));
    return { closed, sourceV: null };
  }

  solve(...zeros: string[]): Solution {
    return solveDc(this.circuit(...(zeros.length > 0 ? zeros : ["0"])), this.state());
  }

  volts(solution: Solution, name: string): number {
    return solution.nodeV[this.node(name)]!;
  }
}
