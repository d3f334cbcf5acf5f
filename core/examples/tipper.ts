import { putRight, type Example } from "./example.ts";

/** Two batteries in series: twelve volts are only in the middle of them, and that is not a place to take them from. */
export const tipper: Example = {
  name: "tipper",
  title: "Tipper sheet motor and radio",
  about:
    "A 24 V tipper with a sheet motor and a 12 V radio. The radio hangs on one battery of the two, the relay is the 12 V one from the van, and the fuse lets go as the motor starts.",
  document: {
    format: "groundstrap",
    version: 1,
    sheet: {
      title: "Tipper sheet motor and radio",
      vehicle: "Three-axle tipper, 24 V",
      revision: "A",
      date: "2026-05-11",
      drawnBy: "Yard fitter",
      notes:
        "Batteries in the box behind the cab, sheet motor on the headboard. The lower battery carries the charge sensor.",
    },
    system: { nominalV: 24, ambientC: 30, sizes: "mm2" },
    parts: [
      {
        id: "b2",
        kind: "battery",
        label: "Upper battery",
        at: [2, 13],
        props: { capacityAh: 170, internalMilliohm: 4 },
      },
      {
        id: "b1",
        kind: "battery",
        label: "Lower battery",
        at: [2, 20],
        props: { capacityAh: 170, internalMilliohm: 4, sensor: true },
      },
      {
        id: "f1",
        kind: "fuse",
        label: "Sheet motor",
        at: [2, 10],
        turn: 270,
        props: { ratingA: 30, holderA: 40 },
      },
      {
        id: "v1",
        kind: "factory-feed",
        label: "Ignition",
        at: [11, 8],
        props: { restV: 25.2, runningV: 27.6, fuseA: 10, spareA: 5, monitored: "no", pulsed: "no" },
      },
      { id: "s1", kind: "switch", label: "Sheet", at: [19, 8], props: { ratedA: 16, momentary: true } },
      {
        id: "k1",
        kind: "relay",
        label: "Sheet relay",
        at: [27, 3],
        props: { contact: "make", makeRatedA: 70, milliohm: 2, suppression: "resistor" },
      },
      {
        id: "m1",
        kind: "motor",
        label: "Sheet motor",
        at: [41, 5],
        props: { watts: 400, minV: 18, startOhm: 0.45, startS: 0.5 },
      },
      {
        id: "f2",
        kind: "fuse",
        label: "Radio fuse",
        at: [13, 18],
        props: { ratingA: 5, holderA: 15 },
      },
      {
        id: "r1",
        kind: "load",
        label: "Radio",
        at: [41, 18],
        props: { model: "constant-power", watts: 30, ratedV: 12, minV: 10.8, maxV: 15.6 },
      },
      { id: "g1", kind: "chassis", label: "Cab floor", at: [34, 11] },
      { id: "g2", kind: "chassis", label: "Headboard", at: [46, 8] },
    ],
    wires: [
      { id: "w1", from: "b1.+", to: "b2.-", size: "50 mm2", metres: 0.3, colour: "RD", label: "B1" },
      { id: "w2", from: "b2.+", to: "f1.1", size: "6 mm2", metres: 0.15, colour: "RD", label: "S1" },
      { id: "w3", from: "f1.2", to: "k1.30", size: "6 mm2", metres: 2, colour: "RD", label: "S2" },
      { id: "w4", from: "k1.87", to: "m1.+", size: "6 mm2", metres: 3.5, colour: "RDWH", label: "S3" },
      { id: "w5", from: "m1.-", to: "g2.g", size: "6 mm2", metres: 0.4, colour: "BN", label: "S4" },
      { id: "w6", from: "v1.out", to: "s1.1", size: "1 mm2", metres: 0.4, colour: "BK", label: "T1" },
      { id: "w7", from: "s1.2", to: "k1.86", size: "1 mm2", metres: 1.2, colour: "BKWH", label: "T2" },
      { id: "w8", from: "k1.85", to: "g1.g", size: "1 mm2", metres: 0.3, colour: "BN", label: "T3" },
      { id: "w9", from: "b1.+", to: "f2.1", size: "1.5 mm2", metres: 0.15, colour: "RD", label: "R1" },
      { id: "w10", from: "f2.2", to: "r1.+", size: "1.5 mm2", metres: 4, colour: "RDYE", label: "R2" },
      { id: "w11", from: "r1.-", to: "b1.-", size: "1.5 mm2", metres: 4, colour: "BN", label: "R3" },
    ],
    situations: [
      { id: "sheeting", name: "Pulling the sheet, engine running", set: { engine: "running", v1: "on", s1: "on" } },
      { id: "waiting", name: "Waiting at the quarry, ignition on", set: { v1: "on" } },
    ],
  },
};

export const tipperPutRight = putRight(
  tipper,
  "A converter makes the radio's 12 V from both batteries, the relay has a 24 V coil, and a slower fuse lets the motor start.",
  [
    { op: "remove-part", id: "f2" },
    {
      op: "add-part",
      part: {
        id: "u1",
        kind: "converter",
        label: "24 to 12 V",
        at: [24, 18],
        props: { outV: 13.2, maxA: 10 },
      },
    },
    { op: "add-part", part: { id: "g3", kind: "chassis", label: "Cab floor", at: [21, 22] } },
    {
      op: "add-wire",
      wire: { id: "w12", from: "v1.out", to: "u1.in+", size: "1.5 mm2", metres: 0.6, colour: "BKYE", label: "R4" },
    },
    {
      op: "add-wire",
      wire: { id: "w13", from: "u1.in-", to: "g3.g", size: "1.5 mm2", metres: 0.3, colour: "BN", label: "R5" },
    },
    {
      op: "add-wire",
      wire: { id: "w14", from: "u1.out+", to: "r1.+", size: "1.5 mm2", metres: 0.8, colour: "RDYE", label: "R6" },
    },
    { op: "set-wire", id: "w11", change: { to: "u1.out-", metres: 0.8 } },
    { op: "set-props", id: "k1", change: { coilOhm: 255, pullInV: 16, dropOutV: 3 } },
    { op: "set-props", id: "f1", change: { body: "maxi-blade" } },
  ],
);
