/** Area of 14 AWG by the definition of the gauge (ASTM B258): 0.127 mm times 92 to the (36 - n)/39. */
const areaMm2 = (Math.PI / 4) * (0.127 * 92 ** ((36 - 14) / 39)) ** 2;
/** Ohms of a metre of annealed copper at 20 °C: 1/58 ohm mm²/m (IEC 60028), written as the circuit file's 1.7241e-8 ohm m. */
const metreOhm = 1.7241e-2 / areaMm2;

/** One metre of 14 AWG each, but for the first wire, which is 0.15 m. */
const fuseLeadOhm = 0.15 * metreOhm;
/** Figures the circuit file states for a part that says nothing. */
const batteryOhm = 0.006;
const fuseOhm = 0.0077;
const contactOhm = 0.005;
const coilOhm = 90;
const feedOhm = 0.02;

const lampW = 27;

/**
 * Two LED lamps of 27 W behind a 10 A fuse and a relay that a factory feed pulls in; every negative on one strip. The ids are
 * those the app gives when the parts are added in the order battery, fuse, relay, feed, two lamps, strip.
 */
export const twoLamps = {
  size: "14 AWG",
  // No wire starts where the one before it ended or started: pulling there would take that one's end along.
  wires: [
    ["b1.+", "f1.1"],
    ["k1.30", "f1.2"],
    ["k1.87", "e1.+"],
    ["e1.-", "g1.4"],
    ["e2.+", "k1.87"],
    ["e2.-", "g1.3"],
    ["k1.85", "g1.2"],
    ["v1.out", "k1.86"],
    ["g1.1", "b1.-"],
  ],
  answer,
} as const;

/**
 * Volts over and amps through each lamp with the relay pulled in, where battery and feed stand at `sourceV`. The lamps are alike, so each
 * has half the feed's current. They draw 27 W whatever the volts are, so the volts are found by starting at the source's and putting
 * the current back in until nothing changes. The coil's current comes back through the strip's wire as well.
 */
function answer(sourceV: number): { readonly lampV: number; readonly lampA: number } {
  let [lampV, coilA] = [sourceV, 0];
  for (let round = 0; round < 100; round += 1) {
    const lampA = lampW / lampV;
    const stripV = (2 * lampA + coilA) * metreOhm;
    const feedV = sourceV - 2 * lampA * (batteryOhm + fuseLeadOhm + fuseOhm + metreOhm + contactOhm);
    lampV = feedV - lampA * 2 * metreOhm - stripV;
    coilA = (sourceV - stripV) / (feedOhm + metreOhm + coilOhm + metreOhm);
  }
  return { lampV, lampA: lampW / lampV };
}
