import type { Document } from "../../core/document/index.ts";
import { circuit } from "../support/circuit.ts";

/** The first switch closed. */
export const s1On = { situations: { working: { s1: "on" } } };
/** The factory feed on. */
export const feedOn = { situations: { working: { ff1: "on" } } };
/** Two batteries in series make 24 V. */
export const volts24 = { system: { nominalV: 24 } } as const;

/** For each rule drawings that break it. The rule's own test says where; the test of remedies puts each right. */
export const failing: Readonly<Record<string, readonly Document[]>> = {
  "no-fuse": [
    circuit("bat:battery > s1:switch > la1:lamp 55W > ground", s1On),
    circuit("bat:battery > f1:fuse 30A > s1:switch > b2:battery.+", s1On),
    circuit("bat:battery >(2 AWG, 2 m, main=winch)> m1:motor 300W startOhm=0.02 > ground"),
  ],
  "fuse-far": [
    circuit("bat:battery >(10 AWG, 0.4 m)> f1:fuse 10A > s1:switch > la1:lamp 55W > ground", s1On),
    circuit("bat:battery >(10 AWG, 1.2 m, sheathed)> f1:fuse 10A > s1:switch > la1:lamp 55W > ground", s1On),
  ],
  "fuse-over-wire": [
    circuit("bat:battery > f1:fuse 30A > s1:switch >(18 AWG, 1 m)> la1:lamp 55W > ground", s1On),
    circuit(
      'bat:battery > x1:block ways=[{"ratingA":20},{"ratingA":10}] >(18 AWG, 1 m)> s1:switch > la1:lamp 55W > ground',
      s1On,
    ),
  ],
  "hot-bare": [
    circuit(
      [
        "bat:battery > f1:fuse 10A > k1:relay contact=changeover > la1:lamp 55W > ground",
        "f1.2 > s1:switch > k1.86",
        "k1.85 > ground",
      ],
      s1On,
    ),
    circuit("bat:battery > f1:fuse 30A > x1:bus posts=4 > s1:switch > la1:lamp 55W > ground", s1On),
  ],
  "live-pins": [
    circuit("bat:battery > f1:fuse 10A > p1:plug fedSide=pins > s1:switch > la1:lamp 21W > ground", s1On),
    circuit("bat:battery > f1:fuse 10A > p1:plug.b1/a1 fedSide=pins > s1:switch > la1:lamp 21W > ground", s1On),
    circuit("bat:battery > f1:fuse 10A > p1:plug fedSide=null > s1:switch > la1:lamp 21W > ground", s1On),
  ],
  "wire-overload": [
    circuit("bat:battery > f1:fuse 15A > s1:switch >(20 AWG, 1 m)> la1:lamp 110W > ground", s1On),
    circuit("bat:battery > f1:fuse 15A > s1:switch >(16 AWG, 1 m, bundle=7)> la1:lamp 110W > ground", s1On),
  ],
  "fuse-loaded": [circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 110W > ground", s1On)],
  "fuse-blows": [
    circuit("bat:battery > f1:fuse 7.5A > s1:switch > la1:lamp 110W > ground", s1On),
    circuit("ff1:feed 3A spareA=10 monitored=no pulsed=no > la1:lamp 55W > ground", feedOn),
  ],
  "under-rated": [
    circuit("bat:battery > f1:fuse 30A holderA=20 > s1:switch > la1:lamp 110W > ground", s1On),
    circuit("bat:battery > f1:fuse 30A > s1:switch 10A > la1:lamp 55W > ground", s1On),
    circuit("bat:battery > f1:fuse 10A > s1:switch > d1:diode 3A > la1:lamp 55W > ground", s1On),
  ],
  "contact-overload": [
    circuit("bat:battery > f1:fuse 10A > s1:switch 5A > la1:lamp 80W > ground", s1On),
    circuit("bat:battery > f1:fuse 20A > s1:switch 20A > m1:motor 100W startOhm=0.3 startS=0.1 > ground", s1On),
    circuit(
      [
        "bat:battery > f1:fuse 40A > k1:relay.30/87 makeRatedA=10 > r1:load amps=20 model=constant-current > ground",
        "f1.2 > s1:switch > k1.86",
        "k1.85 > ground",
      ],
      s1On,
    ),
  ],
  "weak-fault": [
    circuit("bat:battery > f1:fuse 10A > s1:switch >(18 AWG, 30 m)> la1:lamp 21W > ground", s1On),
    circuit("bat:battery > f1:fuse 40A > s1:switch >(20 AWG, 0.5 m)> la1:lamp 21W > ground", s1On),
  ],
  "auto-reset": [
    circuit("bat:battery > q1:breaker 10A reset=auto > s1:switch > la1:lamp 55W > ground", {
      ...s1On,
      covers: { "q1.1": "covered", "q1.2": "covered" },
    }),
  ],
  "factory-feed-load": [
    circuit("ff1:feed 10A 4ohm spareA=1 monitored=no pulsed=no > la1:lamp 21W > ground", feedOn),
    circuit("ff1:feed 10A 4ohm monitored=yes pulsed=no > la1:lamp 5W > ground", feedOn),
    circuit("ff1:feed 10A 4ohm monitored=no pulsed=no > la1:lamp 5W > ground", feedOn),
  ],
  "pulsed-trigger": [
    circuit("ff1:feed 10A spareA=5 monitored=no pulsed=yes > la1:led 5W > ground", feedOn),
    circuit("ff1:feed 10A spareA=5 monitored=no > k1:relay.86/85 suppression=resistor > ground", feedOn),
  ],
  "diode-backwards": [
    circuit(
      [
        "ff1:feed 10A spareA=5 monitored=no pulsed=no > k1:relay.85/86 suppression=diode > ground",
        "bat:battery > f1:fuse 10A > k1.30/87 > la1:lamp 55W > ground",
      ],
      feedOn,
    ),
    circuit("bat:battery > f1:fuse 10A > s1:switch > d1:diode > ground", s1On),
  ],
  "coil-unsuppressed": [
    circuit(
      [
        "ff1:feed 10A spareA=5 monitored=yes pulsed=no > k1:relay.86/85 > ground",
        "bat:battery > f1:fuse 10A > k1.30/87 > la1:lamp 55W > ground",
      ],
      feedOn,
    ),
    circuit("ff1:feed 10A spareA=5 > k1:relay.86/85 > ground", feedOn),
  ],
  "wrong-voltage": [
    circuit("bat:battery > f1:fuse 10A > s1:switch > la1:led 10W 24V minV=18 > ground", s1On),
    circuit("bat:battery 25.2V runningV=27.6 > f1:fuse 10A > s1:switch > la1:led 10W 12V maxV=16 > ground", {
      ...volts24,
      ...s1On,
    }),
    circuit(
      "bat:battery > f1:fuse 10A > s1:switch >(16 AWG, 12 m)> r1:load amps=5 model=constant-current minV=12.2 > ground",
      s1On,
    ),
  ],
  "mid-tap": [
    circuit(
      [
        "b1:battery > b2:battery.-/+ > f1:fuse 10A > s1:switch > la1:lamp 55W 24V > ground",
        "b1.+ > f2:fuse 10A > s2:switch > la2:lamp 55W > ground",
      ],
      { ...volts24, ...s1On },
    ),
  ],
  "reverse-volts": [
    circuit("bat:battery > f1:fuse 10A > s1:switch > r1:load.-/+ 55W model=constant-power > ground", s1On),
    circuit("bat:battery > f1:fuse 10A > s1:switch > la1:led.-/+ 10W > ground", s1On),
  ],
  "relay-miswired": [
    circuit(["bat:battery > f1:fuse 10A > k1:relay.30/87 > la1:lamp 55W > ground", "f1.2 > s1:switch > k1.86"], s1On),
    circuit(
      [
        "bat:battery > f1:fuse 10A > k1:relay.30/87 > r1:load 55W > ground",
        "f1.2 > k1.86",
        "k1.85 > ground",
        "f1.2 > s1:switch > la2:lamp 5W > ground",
      ],
      s1On,
    ),
  ],
  "relay-chatter": [
    circuit(["bat:battery > f1:fuse 10A > k1:relay.30/87a contact=changeover > k1.86", "k1.85 > ground"], {
      covers: { "k1.87": "covered" },
    }),
  ],
  "coil-weak": [
    circuit(
      [
        "bat:battery > f1:fuse 5A > k1:relay.30/87 coilOhm=30 > la1:lamp 21W > ground",
        "f1.2 > s1:switch >(20 AWG, 500 m)> k1.86",
        "k1.85 > ground",
      ],
      s1On,
    ),
  ],
  backfeed: [
    circuit(
      [
        "ff1:feed 10A 3ohm spareA=2 monitored=no pulsed=no > j1:splice > k1:relay.86/85 suppression=resistor > ground",
        "bat:battery > f1:fuse 10A > s1:switch > j1",
        "f1.2 > k1.30",
        "k1.87 > la1:lamp 21W > ground",
      ],
      s1On,
    ),
  ],
  "on-at-rest": [
    circuit(
      [
        "bat:battery > f1:fuse 10A > k1:relay.30/87a contact=changeover > la1:lamp 55W > ground",
        "f1.2 > s1:switch > k1.86",
        "k1.85 > ground",
      ],
      { ...s1On, covers: { "k1.87": "covered" } },
    ),
    circuit("bat:battery > f1:fuse 10A > la1:lamp 55W > ground"),
  ],
  "never-off": [
    circuit("bat:battery > f1:fuse 10A > la1:lamp 55W > ground"),
    circuit(
      [
        "bat:battery > f1:fuse 10A > k1:relay.30/87 > r1:load 55W > ground",
        "f1.2 > k1.86",
        "k1.85 > ground",
        "f1.2 > s1:switch > la2:lamp 5W > ground",
      ],
      s1On,
    ),
  ],
  "lost-ground": [
    circuit(
      [
        "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:strip posts=4",
        "ff1:feed 5A 3ohm spareA=5 monitored=no pulsed=no > la2:lamp 5W > g1.3",
        "g1.2 > j1:splice > ground",
      ],
      s1On,
    ),
  ],
  "no-return": [
    circuit(["bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W", "f1.2 > s2:switch > la2:lamp 21W > ground"], s1On),
    circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:ground surface=painted", s1On),
    circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:ground surface=unknown", s1On),
  ],
  "two-feeds": [
    circuit(
      ["bat:battery > f1:fuse 10A > j1:splice > s1:switch > la1:lamp 21W > ground", "bat.+ > f2:fuse 10A > j1"],
      s1On,
    ),
  ],
  "drop-high": [
    circuit("bat:battery > f1:fuse 10A > s1:switch >(16 AWG, 12 m)> la1:lamp 55W > ground", s1On),
    circuit("bat:battery > f1:fuse 10A > s1:switch >(16 AWG, 25 m)> la1:lamp 55W > ground", s1On),
  ],
  "ground-drop": [circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 55W >(16 AWG, 5 m)> ground", s1On)],
  "return-small": [
    circuit(
      [
        "bat:battery > f1:fuse 20A > s1:switch > la1:lamp 110W > g1:strip posts=4",
        "bat.+ > f2:fuse 20A > s2:switch > la2:lamp 110W > g1.3",
        "g1.2 >(16 AWG, 0.5 m)> bat.-",
      ],
      { situations: { left: { s1: "on" }, right: { s2: "on" } } },
    ),
    circuit(
      [
        "bat:battery > f1:fuse 20A > s1:switch > la1:lamp 110W > g1:strip 10A posts=4",
        "bat.+ > f2:fuse 20A > s2:switch > la2:lamp 110W > g1.3",
        "g1.2 > bat.-",
      ],
      { situations: { left: { s1: "on" }, right: { s2: "on" } } },
    ),
  ],
  "start-surge": [
    circuit("bat:battery > f1:fuse 10A > s1:switch > m1:motor 60W startOhm=0.3 startS=0.5 > ground", s1On),
    circuit(
      "bat:battery > f1:fuse 40A > s1:switch >(12 AWG, 12 m)> m1:motor 60W startOhm=0.4 startS=0.1 minV=10.5 > ground",
      s1On,
    ),
    circuit("bat:battery > f1:fuse 10A > s1:switch > m1:motor 60W startOhm=0.7 > ground", s1On),
  ],
  "block-sum": [
    circuit(
      [
        'bat:battery > f1:fuse 30A > x1:block 15A ways=[{"ratingA":15},{"ratingA":15}] > s1:switch > la1:lamp 110W > ground',
        "x1.2 > s2:switch > la2:lamp 110W > ground",
      ],
      { situations: { both: { s1: "on", s2: "on" } } },
    ),
  ],
  "rest-drain": [circuit("bat:battery 60Ah > f1:fuse 5A > r1:load 1W > ground")],
  "barrel-misfit": [
    circuit(
      "bat:battery > f1:fuse 10A >(14 AWG, 1 m)> j1:splice barrel=blue >(14 AWG, 1 m)> s1:switch > la1:lamp 21W > ground",
      s1On,
    ),
    circuit(
      'bat:battery > f1:fuse 10A > s1:switch >(14 AWG, 1 m, ends={"to":{"barrel":"red"}})> la1:lamp 21W > ground',
      s1On,
    ),
  ],
  "stud-crowded": [
    circuit(
      [
        "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 5W > g1:ground",
        "s1.2 > la2:lamp 5W > g1",
        "s1.2 > la3:lamp 5W > g1",
      ],
      s1On,
    ),
  ],
  "plug-overload": [circuit("bat:battery > f1:fuse 15A > p1:plug 5A > s1:switch > la1:lamp 110W > ground", s1On)],
  "plug-function": [
    circuit(
      'bat:battery > f1:fuse 10A > p1:plug functions=[["tail","charge"]] > s1:switch > la1:lamp 21W > ground',
      s1On,
    ),
  ],
  "sensor-bypassed": [circuit("bat:battery sensor=true > f1:fuse 10A > s1:switch > la1:lamp 55W > bat.-", s1On)],
  "alternator-over": [
    circuit("bat:battery > f1:fuse 20A > s1:switch > la1:lamp 110W > ground", {
      system: { alternatorA: 60, baseLoadA: 45 },
      situations: { driving: { s1: "on", engine: "running" } },
    }),
  ],
  "piercing-tap": [
    circuit("bat:battery > f1:fuse 10A > j1:splice tap=piercing > s1:switch > la1:lamp 21W > ground", s1On),
  ],
  short: [
    circuit("bat:battery > f1:fuse 10A > s1:switch > bat.-", s1On),
    circuit(["b1:battery 0mohm >(10 AWG, 0 m)> b2:battery.+ 0mohm restV=12.2"]),
  ],
  "loose-end": [
    circuit(["bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > ground", "f1.2 > j1:splice"], s1On),
    circuit(
      ["bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:strip", "g1.3 > ground", "g1.2 > j1:splice"],
      s1On,
    ),
  ],
  "label-missing": [
    circuit("bat:battery > f1:fuse 10A >(label=7)> s1:switch >(label=7)> la1:lamp 21W > ground", s1On),
    circuit('bat:battery > f1:fuse 10A >(label="")> s1:switch > la1:lamp 21W > ground', s1On),
  ],
  unmeasured: [
    circuit("ff1:feed 5A spareA=5 monitored=no pulsed=no measured=false > la1:lamp 21W > ground", feedOn),
    circuit("bat:battery > f1:fuse 10A >(measured=false)> s1:switch > la1:lamp 21W > ground", s1On),
  ],
  "cant-check": [
    circuit("bat:battery > f1:fuse holderA=null > s1:switch ratedA=null >(? AWG, ? m)> la1:lamp > ground", s1On),
  ],
};
