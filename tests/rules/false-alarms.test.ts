import { expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { circuit } from "../support/circuit.ts";
import { snagsOf } from "../support/judged.ts";
import { feedOn, s1On, volts24 } from "./failing-circuits.ts";

/** Right as they are: practitioners would call a finding here a false alarm (common practice, no source). */
const lawful: Readonly<Record<string, Document>> = {
  "a lamp behind its fuse and switch, back through the chassis": circuit(
    "bat:battery 60Ah > f1:fuse 10A > s1:switch >(16 AWG, 3 m)> la1:lamp 55W >(16 AWG, 0.5 m)> ground",
    s1On,
  ),
  "87a used on purpose": circuit(
    [
      "bat:battery > f1:fuse 10A > s2:switch > k1:relay.30/87a contact=changeover > la1:lamp 21W > ground",
      "k1.87 > la2:lamp 21W > ground",
      "f1.2 > s1:switch > k1.86",
      "k1.85 > ground",
    ],
    { situations: { dipped: { s2: "on" }, main: { s1: "on", s2: "on" } } },
  ),
  "a relay triggered by a tapped feed, with all that is asked of it": circuit(
    [
      "ff1:feed 10A 12ohm spareA=1 monitored=no pulsed=no >(18 AWG, 3 m)> k1:relay.86/85 suppression=resistor > ground",
      "bat:battery > f1:fuse 15A > k1.30/87 >(14 AWG, 3 m)> la1:led 60W minV=9 maxV=32 >(14 AWG, 1 m)> ground",
    ],
    feedOn,
  ),
  "a link between two batteries with a fuse at each end": circuit(
    "b1:battery > f1:fuse 30A > s1:switch >(8 AWG, 3 m)> f2:fuse 30A > b2:battery.+",
    s1On,
  ),
  "a winch main with an isolator": circuit(
    "bat:battery 1mohm >(3/0 AWG, 1 m, main=winch)> s1:switch milliohm=0.1 >(3/0 AWG, 1 m, main=winch)> m1:motor 900W startOhm=0.1 minV=9 >(3/0 AWG, 1 m)> ground",
    { situations: { pulling: { s1: "on", engine: "running" } } },
  ),
  "a converter feeding 12 V gear on a 24 V truck, both sides grounded": circuit(
    [
      "b1:battery > b2:battery.-/+ > f1:fuse 5A > u1:converter 13V 10A > f2:fuse 5A > s1:switch > r1:load 20W 12V minV=11 maxV=15 > ground",
      "u1.in- > ground",
      "u1.out- > ground",
    ],
    { ...volts24, ...s1On },
  ),
  "two triggers kept apart by diodes": circuit(
    [
      "ff1:feed 10A 3ohm spareA=1 monitored=no pulsed=no > d1:diode > j1:splice > k1:relay.86/85 suppression=resistor > ground",
      "bat:battery > f1:fuse 5A > s1:switch > d2:diode > j1",
      "f1.2 > k1.30/87 > la1:lamp 21W > ground",
    ],
    { situations: { hand: { s1: "on" }, reverse: { ff1: "on" } } },
  ),
  "soldered and crimped joints": circuit(
    [
      "bat:battery > f1:fuse 10A >(16 AWG, 1 m)> j1:splice tap=solder >(16 AWG, 1 m)> s1:switch > la1:lamp 21W > ground",
      "j1 >(18 AWG, 1 m)> s2:switch > la2:lamp 5W > ground",
    ],
    { situations: { both: { s1: "on", s2: "on" } } },
  ),
  "one sized return for several loads": circuit(
    [
      "bat:battery > f1:fuse 15A > s1:switch > la1:lamp 55W > g1:strip posts=4",
      "bat.+ > f2:fuse 15A > s2:switch > la2:lamp 55W > g1.3",
      "g1.2 >(10 AWG, 1 m)> bat.-",
    ],
    { situations: { both: { s1: "on", s2: "on" } } },
  ),
};

test.each(Object.entries(lawful))("%s", (_name, document) => {
  expect(snagsOf(document).map(({ rule, level, at }) => [level, rule, ...at])).toEqual([]);
});
