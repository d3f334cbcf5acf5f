import { expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import { circuit } from "../support/circuit.ts";

/** A relay that switches a bus, and switched lamps behind it. */
function switchedBus(lamps: number) {
  const branches = Array.from({ length: lamps }, (_, at) => `hub.${at + 2} > s${at}:switch > la${at}:lamp 5W > bat.-`);
  return circuit([
    "k1:relay",
    "bat:battery > f1:fuse 30A > k1.30/87 > hub:bus posts=24",
    "ff1:feed 5A > k1.86/85 > bat.-",
    ...branches,
  ]);
}

test("twenty lamps behind one relay are looked at one by one, not all together", () => {
  const { report } = analyse(switchedBus(20));
  // Twenty lamps together would be 2^22. One by one: the relay's feed and the engine, and with each lamp its switch.
  expect(report.summary.combinations).toBeLessThan(200);
  expect(report.summary.unproved).toEqual([]);
  expect(report.terminals["la7.+"]).toMatchObject({ hot: "switched", via: "direct", when: "ff1 is on and s7 is on" });
  expect(report.terminals["hub.3"]).toMatchObject({ hot: "switched", when: "ff1 is on" });
});

test("a second source behind the bus drives it, and so does not hang from it", () => {
  const document = circuit([
    "k1:relay",
    "bat:battery > f1:fuse 30A > k1.30/87 > hub:bus posts=12",
    "ff1:feed 5A > k1.86/85 > bat.-",
    ...Array.from({ length: 6 }, (_, at) => `hub.${at + 2} > s${at}:switch > la${at}:lamp 5W > bat.-`),
    "house:battery > f2:fuse 20A > s9:switch > hub.9",
    "house.- > bat.-",
  ]);
  const { report } = analyse(document);
  expect(report.terminals["hub.3"]).toMatchObject({ hot: "switched", when: "ff1 is on, or s9 is on" });
  expect(report.terminals["la2.+"]).toMatchObject({ hot: "switched" });
});

test("a relay fed from the bus moves contacts elsewhere only with the bus alive", () => {
  const document = circuit([
    "k1:relay",
    "k2:relay contact=changeover",
    "bat:battery > f1:fuse 30A > k1.30/87 > hub:bus posts=12",
    "ff1:feed 5A > k1.86/85 > bat.-",
    ...Array.from({ length: 5 }, (_, at) => `hub.${at + 2} > s${at}:switch > la${at}:lamp 5W > bat.-`),
    "hub.8 > s8:switch > k2.86/85 > bat.-",
    "bat.+ > f3:fuse 10A > k2.30/87 > la9:lamp 21W > bat.-",
  ]);
  const { report } = analyse(document);
  expect(report.terminals["la9.+"]).toMatchObject({ hot: "switched", when: "ff1 is on and s8 is on" });
  expect(report.terminals["k2.87a"]).toMatchObject({ hot: "at-rest", when: "ff1 is off, or s8 is off" });
});
