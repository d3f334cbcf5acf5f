import { putRight, type Example } from "./example.ts";

/** Small enough to understand at a glance, with one thing that must not be powered up. */
export const awningLamps: Example = {
  name: "awning-lamps",
  title: "Market trailer awning lamps",
  about:
    "Two lamps over a market stall, switched by the side-lamp wire of the vehicle that tows it. One pin of the relay is live.",
  document: {
    format: "groundstrap",
    version: 1,
    sheet: {
      title: "Market trailer awning lamps",
      vehicle: "Market trailer and van",
      revision: "A",
      date: "2026-03-14",
      drawnBy: "Stallholder",
    },
    system: { nominalV: 12, ambientC: 30 },
    parts: [
      { id: "bat", kind: "battery", label: "Battery", at: [3, 6], props: { capacityAh: 70 } },
      { id: "f1", kind: "fuse", label: "Awning lamps", at: [8, 3], props: { ratingA: 10, holderA: 20 } },
      {
        id: "k1",
        kind: "relay",
        label: "Awning relay",
        at: [18, 2],
        props: { contact: "changeover", suppression: "resistor" },
      },
      {
        id: "ff1",
        kind: "factory-feed",
        label: "Side lamps",
        at: [12, 10],
        props: { fuseA: 7.5, spareA: 1, existingOhm: 12, monitored: "no", pulsed: "no" },
      },
      {
        id: "la1",
        kind: "lamp",
        label: "Awning left",
        at: [32, 4],
        props: { type: "led", watts: 27, ratedV: 12, minV: 9, maxV: 32 },
      },
      {
        id: "la2",
        kind: "lamp",
        label: "Awning right",
        at: [32, 10],
        props: { type: "led", watts: 27, ratedV: 12, minV: 9, maxV: 32 },
      },
      { id: "g1", kind: "ground-strip", label: "Ground strip", at: [23, 15], props: { posts: 4, ratedA: 50 } },
    ],
    wires: [
      { id: "w1", from: "bat.+", to: "f1.1", size: "12 AWG", metres: 0.15, colour: "RD", label: "L1" },
      { id: "w2", from: "f1.2", to: "k1.30", size: "12 AWG", metres: 4, colour: "RD", label: "L2" },
      { id: "w3", from: "ff1.out", to: "k1.86", size: "18 AWG", metres: 3, colour: "BN", label: "L3" },
      { id: "w4", from: "k1.87", to: "la1.+", size: "14 AWG", metres: 1.5, colour: "RDWH", label: "L4" },
      {
        id: "w5",
        from: "la1.+",
        to: "la2.+",
        size: "14 AWG",
        metres: 2,
        colour: "RDWH",
        label: "L5",
        via: [
          [31, 4],
          [31, 10],
        ],
      },
      { id: "w6", from: "la1.-", to: "g1.4", size: "14 AWG", metres: 1.5, colour: "BK", label: "G1" },
      { id: "w7", from: "la2.-", to: "g1.3", size: "14 AWG", metres: 3, colour: "BK", label: "G2" },
      { id: "w8", from: "k1.85", to: "g1.2", size: "18 AWG", metres: 0.4, colour: "BK", label: "G3" },
      { id: "w9", from: "g1.1", to: "bat.-", size: "10 AWG", metres: 4, colour: "BK", label: "G4" },
    ],
    situations: [
      { id: "market", name: "Side lamps on, parked at the market", set: { ff1: "on" } },
      { id: "driving", name: "Side lamps on, engine running", set: { engine: "running", ff1: "on" } },
    ],
  },
};

export const awningLampsPutRight = putRight(
  awningLamps,
  "A relay without the pin 87a: nothing bare is live any more.",
  [{ op: "set-props", id: "k1", change: { contact: "make" } }],
);
