import { describe, expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import { circuit } from "../support/circuit.ts";

const numbers = (count: number) => Array.from({ length: count }, (_, at) => at + 1);

describe("twenty switches", () => {
  test("each with a circuit of its own: each lamp is live with its own switch", () => {
    const { report } = analyse(
      circuit([
        "bat:battery > f0:fuse 30A > bar:bus posts=24",
        ...numbers(20).map((n) =>
          `bar.${n} > s${n}:switch > l${n}:lamp 5W > g:strip.${n} posts=24`
            .replace("g:strip", n === 1 ? "g:strip" : "g")
            .replace(" posts=24", n === 1 ? " posts=24" : ""),
        ),
        "g.24 > bat.-",
      ]),
    );
    for (const n of numbers(20)) {
      expect(report.terminals[`l${n}.+`]).toMatchObject({ hot: "switched", via: "direct", when: `s${n} is on` });
    }
    expect(report.summary.unproved).toEqual([]);
  });

  test("behind one master switch: each lamp is live with both", () => {
    const { report } = analyse(
      circuit([
        "bat:battery > f0:fuse 30A > m:switch > bar:bus posts=24",
        ...numbers(20).map((n) => `bar.${n} > s${n}:switch > l${n}:lamp 5W > ground`),
      ]),
    );
    expect(report.terminals["bar.20"]).toMatchObject({ hot: "switched", when: "m is on" });
    for (const n of numbers(20)) {
      expect(report.terminals[`l${n}.+`]).toMatchObject({
        hot: "switched",
        via: "direct",
        when: `m is on and s${n} is on`,
      });
    }
    expect(report.summary.unproved).toEqual([]);
  });

  test("behind one relay, each with a relay of its own", () => {
    const { report } = analyse(
      circuit([
        "bat:battery > f0:fuse 30A > in:bus posts=4",
        "in.1 > m:switch > k0:relay.86/85 > ground",
        "in.2 > k0.30/87 > bar:bus posts=48",
        ...numbers(20).flatMap((n) => [
          `bar.${n} > s${n}:switch > k${n}:relay.86/85 > ground`,
          `bar.${n + 20} > k${n}.30/87 > l${n}:lamp 5W > ground`,
        ]),
      ]),
    );
    for (const n of numbers(20)) {
      expect(report.terminals[`l${n}.+`]).toMatchObject({
        hot: "switched",
        via: "direct",
        when: `m is on and s${n} is on`,
      });
    }
    expect(report.summary.unproved).toEqual([]);
  });

  test("all in one row, before a relay: too many positions to solve, so the report says so and the relay is free", () => {
    const { report } = analyse(
      circuit([
        `bat:battery > f0:fuse 30A > ${numbers(20)
          .map((n) => `s${n}:switch`)
          .join(" > ")} > k1:relay.86/85 > ground`,
        "f1:fuse 10A > k1.30/87 > l1:lamp 5W > ground",
        "bat.+ > f1.1",
      ]),
    );
    expect(report.summary.unproved).toHaveLength(1);
    expect(report.summary.unproved[0]).toContain("s20");
    expect(report.terminals["s20.2"]).toMatchObject({ hot: "switched", via: "direct" });
    expect(report.terminals["l1.+"]).toMatchObject({ hot: "switched", via: "direct" });
    expect(report.snags.some(({ rule }) => rule === "relay-miswired" || rule === "never-off")).toBe(false);
  });

  test("up to 2^16 positions of one group are all looked at", () => {
    const { report } = analyse(
      circuit([
        `bat:battery > f0:fuse 10A > ${numbers(15)
          .map((n) => `s${n}:switch`)
          .join(" > ")} > k1:relay.86/85 > ground`,
        "bat.+ > f1:fuse 10A > k1.30/87 > l1:lamp 5W > ground",
      ]),
    );
    expect(report.summary.unproved).toEqual([]);
    expect(report.terminals["l1.+"]).toMatchObject({
      hot: "switched",
      via: "direct",
      when: numbers(15)
        .map((n) => `s${n} is on`)
        .join(" and "),
    });
  });
});
