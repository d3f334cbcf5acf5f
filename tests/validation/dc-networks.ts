/**
 * DC networks worked out in print, each with its source beside it. A netlist is one element a line: V (source, plus and minus
 * node, volts), I (current source, node it feeds, node it takes from, amps), R (two nodes, ohms) or D (diode, anode and cathode, forward volts), with a name. Node 0 is zero.
 */
export interface PublishedNetwork {
  readonly title: string;
  readonly netlist: string;
  /** What is printed: V of a node ("V 2") or across a resistor ("V R1"), I or P of an element, R seen by a source. */
  readonly printed: Readonly<Record<string, number>>;
  /** Half of the last digit printed, or what the book says of its own rounding; in the unit printed. */
  readonly tolerance: number;
  readonly source: string;
}

const LESSONS =
  "Lessons In Electric Circuits, Volume I (DC), chapter 10, ibiblio.org/kuphaldt/electricCircuits/DC/DC_10.html";
const SCHOOLPHYSICS = "schoolphysics.co.uk, Resistance networks (age 16-19, Current electricity)";

const UNBALANCED_BRIDGE = `
  R R1 1 2 150
  R R2 1 3 50
  R R3 3 2 100
  R R4 2 0 300
  R R5 3 0 250`;

/** Twelve equal resistors along the edges of a cube, corners numbered by their coordinates; `to` is the corner at zero. */
function cube(to: string): string {
  const corners = ["000", "001", "010", "011", "100", "101", "110", "111"];
  const edges = corners.flatMap((from) =>
    [0, 1, 2]
      .filter((axis) => from[axis] === "0")
      .map((axis) => [from, `${from.slice(0, axis)}1${from.slice(axis + 1)}`]),
  );
  const name = (corner: string | undefined): string | undefined => (corner === to ? "0" : corner);
  const lines = edges.map(([a, b], i) => `R R${i + 1} ${name(a)} ${name(b)} 1`);
  return ["V V1 000 0 1", ...lines].join("\n");
}

/** Sections of 2 ohm along (1 out, 1 back) with 1 ohm across at the end of each. */
function ladder(sections: number): string {
  const lines = ["V V1 n0 0 1"];
  for (let i = 1; i <= sections; i++) lines.push(`R Rs${i} n${i - 1} n${i} 2`, `R Rp${i} n${i} 0 1`);
  return lines.join("\n");
}

/** A 4-bit R-2R ladder of 1 and 2 kilohm on 10 V; bit 0 lies at the terminated end. */
function r2r(code: number): string {
  const lines = ["R Rend n0 0 2000", "V Vref ref 0 10"];
  for (let bit = 0; bit < 4; bit++) {
    lines.push(`R Rbit${bit} n${bit} ${(code >> bit) & 1 ? "ref" : "0"} 2000`);
    if (bit > 0) lines.push(`R Rrun${bit} n${bit - 1} n${bit} 1000`);
  }
  return lines.join("\n");
}

export const publishedNetworks: readonly PublishedNetwork[] = [
  {
    title: "unbalanced Wheatstone bridge on 24 V",
    netlist: `V V1 1 0 24 ${UNBALANCED_BRIDGE}`,
    printed: { "V 2": 17.66, "V 3": 19.31 },
    tolerance: 0.005,
    source: LESSONS,
  },
  {
    title: "currents of the same bridge",
    netlist: `V V1 1 0 24 ${UNBALANCED_BRIDGE}`,
    printed: {
      "I R1": 42.299e-3,
      "I R2": 93.793e-3,
      "I R3": 16.552e-3,
      "I R4": 58.851e-3,
      "I R5": 77.241e-3,
      "I V1": 136.092e-3,
    },
    tolerance: 5e-7,
    source: LESSONS,
  },
  {
    title: "the same bridge fed by a current source",
    netlist: `I I1 1 0 0.136092 ${UNBALANCED_BRIDGE}`,
    printed: { "V 1": 24, "V 2": 17.655, "V 3": 19.31 },
    tolerance: 1e-3,
    source: LESSONS,
  },
  {
    title: "unbalanced bridge on 10 V, solved by delta-wye",
    netlist: `
      V V1 1 0 10
      R R1 1 2 12
      R R2 1 3 18
      R R3 2 3 6
      R R4 2 0 18
      R R5 3 0 12`,
    printed: { "V R1": 4.706, "V R2": 5.294, "V R3": 0.5882, "V 2": 5.294, "V 3": 4.706 },
    tolerance: 5e-4,
    source: LESSONS,
  },
  {
    title: "two batteries on one load, the weaker being charged (Millman)",
    netlist: `
      V B1 a 0 28
      R R1 a n 4
      R R2 n 0 2
      V B2 b 0 7
      R R3 n b 1`,
    printed: { "V n": 8, "I R1": 5, "I R3": 1 },
    tolerance: 1e-12,
    source: LESSONS,
  },
  {
    title: "two sources and two unknown nodes",
    netlist: `
      V V1 11 0 10
      V V2 22 0 -4
      R R1 11 1 2
      R R2 1 0 4
      R R3 1 2 2.5
      R R4 2 0 5
      R R5 2 22 1`,
    printed: { "V 1": 3.809524, "V 2": -1.547619 },
    tolerance: 1e-6,
    source: LESSONS,
  },
  {
    title: "Thevenin equivalent with a matched load",
    netlist: `
      V Vth t 0 11.2
      R Rth t n 0.8
      R RL n 0 0.8`,
    printed: { "P RL": 39.2 },
    tolerance: 1e-12,
    source: LESSONS,
  },
  {
    title: "cube of 1 ohm resistors across a body diagonal",
    netlist: cube("111"),
    printed: { "R V1": 5 / 6 },
    tolerance: 1e-12,
    source: SCHOOLPHYSICS,
  },
  {
    title: "cube of 1 ohm resistors across a face diagonal",
    netlist: cube("110"),
    printed: { "R V1": 3 / 4 },
    tolerance: 1e-12,
    source: SCHOOLPHYSICS,
  },
  {
    title: "cube of 1 ohm resistors across an edge",
    netlist: cube("100"),
    printed: { "R V1": 7 / 12 },
    tolerance: 1e-12,
    source: SCHOOLPHYSICS,
  },
  {
    title: "endless ladder, 2 ohm along and 1 ohm across (forty sections of it)",
    netlist: ladder(40),
    printed: { "R V1": 2.732 },
    tolerance: 1e-3,
    source: SCHOOLPHYSICS,
  },
  ...[1, 6, 11, 15].map((code) => ({
    title: `R-2R ladder of 4 bits at code ${code}`,
    netlist: r2r(code),
    // Vout = Vref x digital value / 2^n
    printed: { "V n3": (10 * code) / 16 },
    tolerance: 1e-12,
    source: "lahirunirmalx.github.io/resistornetwork (law of the R-2R ladder)",
  })),
  {
    title: "first rungs of an R-2R ladder of measured resistors",
    netlist: `
      V V1 a 0 1
      R Rbase1 x y 967
      R Rbase2 y 0 1015
      R Rbit1 x z 973
      R Rbit2 z 0 1009
      R Rseries a x 969`,
    printed: { "R V1": 1960 },
    tolerance: 1e-9,
    source: "nerdkits.com/forum/thread/1815",
  },
  {
    title: "24 V on three branches of 12 ohm",
    netlist: `
      V V1 1 0 24
      R Ra 1 0 12
      R Rb1 1 b 6
      R Rb2 b 0 6
      R Rc1 1 c 6
      R Rc2 c 0 6`,
    printed: { "R V1": 4, "I V1": 6, "I Ra": 2, "I Rb1": 2 },
    tolerance: 1e-12,
    source: "Conceptual Physics, 12th edition, chapter 23, problem 120 (worked answer, gradesaver.com)",
  },
  {
    title: "9 V on three branches, one of them mixed",
    netlist: `
      V V1 1 0 9
      R R1 1 0 1.5
      R R2 1 0 2.5
      R R3 1 2 6.3
      R R4 2 0 4.8
      R R5 2 0 3.3
      R R6 2 0 8.1`,
    printed: { "I R1": 6, "I R2": 3.6, "I R3": 1.14, "V 2": 1.8, "I R4": 0.38, "I R5": 0.55, "I R6": 0.22 },
    // The text rounds on the way.
    tolerance: 0.006,
    source: "physics textbook, solution 21-53 (coursehero.com/file/6456173)",
  },
  ...[
    { supplyV: 12, forwardV: 1.8, ohm: 2040, amps: 5e-3, source: "LED circuit (encyclopaedia article)" },
    { supplyV: 9, forwardV: 1.8, ohm: 1440, amps: 5e-3, source: "LED circuit (encyclopaedia article)" },
    { supplyV: 12, forwardV: 3.6, ohm: 280, amps: 30e-3, source: "59dnxgjfml.pages.dev/372 (arithmetic complete)" },
    {
      supplyV: 12,
      forwardV: 2,
      ohm: 500,
      amps: 20e-3,
      source: "offroaders.com/tech/LED.htm (10 V across the resistor)",
    },
  ].map(({ supplyV, forwardV, ohm, amps, source }) => ({
    title: `LED of ${forwardV} V with its resistor on ${supplyV} V`,
    netlist: `
      V V1 1 0 ${supplyV}
      R R1 1 2 ${ohm}
      D D1 2 0 ${forwardV}`,
    printed: { "I R1": amps, "V R1": supplyV - forwardV },
    tolerance: 1e-12,
    source,
  })),
];

/** Chained constant powers on one 24 V run: no printed answer; a backward and forward sweep carried to the end gives these. */
export const poweredRun = {
  volts: 24,
  segmentsOhm: [0.05, 0.08, 0.1],
  watts: [120, 60, 30],
  nodeV: [23.551249519, 23.240870435, 23.11106247],
} as const;

/**
 * A constant power behind a resistance: V² - V0 V + P R = 0, of which the higher root is the one wanted; the most is V0² / 4R.
 * The matched case, 39.2 W at 5.6 V, is printed (Lessons In Electric Circuits, as above). Terms: Taheri and Kekatos, Power Flow
 * Solvers for Direct Current Networks, IEEE Trans. Smart Grid (2019).
 */
export const poweredLoads = [
  { volts: 12, ohm: 0.1, watts: 60, highV: 11.477225575 },
  { volts: 12, ohm: 0.5, watts: 50, highV: 9.31662479 },
  { volts: 24, ohm: 0.2, watts: 200, highV: 22.198039027 },
  { volts: 12.6, ohm: 0.05, watts: 500, highV: 10.132753579 },
  { volts: 12, ohm: 1, watts: 36.1, highV: null },
] as const;
