import type { Document } from "../../../core/document/index.ts";

/** Two awning lamps of a market trailer over a changeover relay whose 87a is bare; one length and one colour nobody gave. */
export const awningLamps: Document = {
  format: "groundstrap",
  version: 1,
  sheet: {
    title: "Awning lamps",
    vehicle: "Market trailer, white",
    drawnBy: "T. Example",
    revision: "B",
    date: "2026-01-31",
    notes: "Lamps are switched from the counter.",
  },
  system: { nominalV: 12, alternatorA: 90, baseLoadA: 30 },
  parts: [
    { id: "bat", kind: "battery", label: "Starter battery", at: [2, 10], props: { capacityAh: 70 } },
    { id: "f1", kind: "fuse", label: "Lamps", at: [8, 4], props: { ratingA: 15, body: "blade" } },
    { id: "k1", kind: "relay", label: "Lamp relay", at: [18, 6], props: { contact: "changeover" } },
    { id: "s1", kind: "switch", label: "Counter", at: [12, 12], props: { ratedA: 10 } },
    {
      id: "la1",
      kind: "lamp",
      label: "Awning left",
      at: [28, 4],
      props: { type: "led", watts: 36, minV: 9, maxV: 32 },
    },
    {
      id: "la2",
      kind: "lamp",
      label: "Awning right",
      at: [28, 10],
      props: { type: "led", watts: 36, minV: 9, maxV: 32 },
    },
    { id: "gs", kind: "ground-strip", label: "Rear strip", at: [34, 14], props: { posts: 4, ratedA: 100 } },
    { id: "g1", kind: "chassis", label: "Frame stud left", at: [6, 16], props: { surface: "clean" } },
  ],
  wires: [
    { id: "w1", from: "bat.+", to: "f1.1", size: "12 AWG", metres: 0.15, colour: "RD" },
    { id: "w2", from: "f1.2", to: "k1.30", size: "12 AWG", metres: 4.5, colour: "RD" },
    { id: "w3", from: "f1.2", to: "s1.1", size: "16 AWG", metres: 1.2, colour: "RDWH", label: "L3" },
    { id: "w4", from: "s1.2", to: "k1.86", size: "16 AWG", metres: 3.4, colour: "WH" },
    { id: "w5", from: "k1.85", to: "gs.1", size: "16 AWG", metres: 0.8, colour: "BK" },
    { id: "w6", from: "k1.87", to: "la1.+", size: "14 AWG", metres: 2.2, colour: "YE" },
    { id: "w7", from: "k1.87", to: "la2.+", size: "14 AWG", metres: 3.6 },
    { id: "w8", from: "la1.-", to: "gs.2", size: "1.5 mm2", metres: 2.2, colour: "BK" },
    { id: "w9", from: "la2.-", to: "gs.3", size: "1.5 mm2", colour: "BK" },
    { id: "w10", from: "gs.4", to: "g1.g", size: "10 AWG", metres: 1, colour: "BK" },
    { id: "w11", from: "bat.-", to: "g1.g", size: "4 AWG", metres: 0.6, colour: "BK" },
  ],
  situations: [{ id: "working", name: "Lamps switched on", set: { engine: "running", s1: "on" } }],
};
