import { putRight, type Example } from "./example.ts";

/** A winch asks for more than any fuse in reach: what counts is the cable, the contactor and a way to cut it off. */
export const recoveryBed: Example = {
  name: "recovery-bed",
  title: "Recovery bed winch",
  about:
    "A bed winch with its contactor beside the battery. The cable is thin for the pull, the contactor small for the start, and nothing cuts the main off by hand.",
  document: {
    format: "groundstrap",
    version: 1,
    sheet: {
      title: "Recovery bed winch",
      vehicle: "Recovery truck, tilting bed",
      revision: "A",
      date: "2026-01-19",
      drawnBy: "Recovery driver",
      notes: "Winch at the head of the bed, 8.5 m of cable each way. Pull with the engine running.",
    },
    system: { nominalV: 12, ambientC: 30 },
    parts: [
      { id: "b1", kind: "battery", label: "Battery", at: [2, 12], props: { capacityAh: 110, internalMilliohm: 4 } },
      { id: "f1", kind: "fuse", label: "Control fuse", at: [6, 9], props: { ratingA: 5, holderA: 20 } },
      { id: "s1", kind: "switch", label: "Winch in", at: [14, 9], props: { ratedA: 10, momentary: true } },
      {
        id: "k1",
        kind: "relay",
        label: "Winch contactor",
        at: [23, 4],
        props: { contact: "make", coilOhm: 12, makeRatedA: 150, milliohm: 0.4, suppression: "diode" },
      },
      {
        id: "m1",
        kind: "motor",
        label: "Winch",
        at: [39, 6],
        props: { watts: 960, minV: 9, startOhm: 0.05, startS: 0.3 },
      },
      { id: "g1", kind: "chassis", label: "Battery tray", at: [31, 12] },
    ],
    wires: [
      { id: "w1", from: "b1.+", to: "k1.30", size: "2/0 AWG", metres: 0.4, colour: "RD", label: "W1", main: "winch" },
      { id: "w2", from: "k1.87", to: "m1.+", size: "4 AWG", metres: 8.5, colour: "RD", label: "W2", main: "winch" },
      { id: "w3", from: "m1.-", to: "b1.-", size: "4 AWG", metres: 8.5, colour: "BK", label: "W3", main: "winch" },
      { id: "w4", from: "b1.+", to: "f1.1", size: "16 AWG", metres: 0.15, colour: "RD", label: "C1" },
      { id: "w5", from: "f1.2", to: "s1.1", size: "16 AWG", metres: 9, colour: "RDBK", label: "C2" },
      { id: "w6", from: "s1.2", to: "k1.86", size: "16 AWG", metres: 9, colour: "GN", label: "C3" },
      { id: "w7", from: "k1.85", to: "g1.g", size: "16 AWG", metres: 0.3, colour: "BK", label: "C4" },
    ],
    situations: [
      { id: "pulling", name: "Pulling a car up, engine running", set: { engine: "running", s1: "on" } },
      { id: "idle", name: "Driving, winch not in use", set: { engine: "running" } },
    ],
  },
};

export const recoveryBedPutRight = putRight(
  recoveryBed,
  "Cable for the pull, a contactor for the start, and an isolator that makes the bed dead by hand.",
  [
    { op: "set-wire", id: "w2", change: { size: "2/0 AWG" } },
    { op: "set-wire", id: "w3", change: { size: "2/0 AWG" } },
    { op: "set-props", id: "k1", change: { makeRatedA: 400 } },
    {
      op: "add-part",
      part: { id: "s2", kind: "switch", label: "Isolator", at: [12, 5], props: { ratedA: 400, milliohm: 0.2 } },
    },
    { op: "set-wire", id: "w1", change: { to: "s2.1", metres: 0.2 } },
    {
      op: "add-wire",
      wire: {
        id: "w8",
        from: "s2.2",
        to: "k1.30",
        size: "2/0 AWG",
        metres: 0.2,
        colour: "RD",
        label: "W4",
        main: "winch",
      },
    },
    {
      op: "set-situations",
      situations: [
        { id: "pulling", name: "Pulling a car up, engine running", set: { engine: "running", s2: "on", s1: "on" } },
        { id: "idle", name: "Driving, winch not in use", set: { engine: "running" } },
      ],
    },
  ],
);
