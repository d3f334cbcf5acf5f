import * as z from "zod/mini";

/** Shape and limits of a circuit file, version 1, but for the settings of each part, which are its kind's own. */
const id = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,64}$/));
const number = (min: number, max: number) => z.number().check(z.gte(min), z.lte(max));
const gridPoint = z.tuple([number(-100_000, 100_000), number(-100_000, 100_000)]);
const text = z.string().check(z.maxLength(10_000));

const sheet = z.looseObject({
  title: z.optional(text),
  vehicle: z.optional(text),
  drawnBy: z.optional(text),
  revision: z.optional(text),
  date: z.optional(text),
  notes: z.optional(text),
});

const system = z.looseObject({
  nominalV: z.optional(z.literal([12, 24])),
  ambientC: z.optional(number(-60, 150)),
  conductorC: z.optional(number(-60, 200)),
  cautionDropPercent: z.optional(number(0.1, 100)),
  faultDropPercent: z.optional(number(0.1, 100)),
  fuseLoadPercent: z.optional(number(10, 100)),
  capacityTable: z.optional(z.literal(["vehicle", "insulation"])),
  alternatorA: z.optional(z.nullable(number(0, 2000))),
  baseLoadA: z.optional(z.nullable(number(0, 2000))),
  sizes: z.optional(z.literal(["awg", "mm2"])),
});

const cover = z.literal(["bare", "covered", "cavity"]);

export const partSchema = z.looseObject({
  id,
  kind: z.string().check(z.minLength(1), z.maxLength(64)),
  label: z.optional(text),
  at: z.optional(gridPoint),
  turn: z.optional(z.literal([0, 90, 180, 270])),
  flip: z.optional(z.boolean()),
  props: z.optional(z.looseObject({})),
  covers: z.optional(z.record(z.string(), cover)),
  fixed: z.optional(z.array(text)),
});

const wireEnd = z.looseObject({
  terminal: z.optional(text),
  stud: z.optional(text),
  barrel: z.optional(text),
});

const wire = z.looseObject({
  id,
  from: z.string().check(z.minLength(1), z.maxLength(200)),
  to: z.string().check(z.minLength(1), z.maxLength(200)),
  size: z.optional(z.string().check(z.regex(/^([0-9]{1,2}|[1-4]\/0) AWG$|^[0-9]{1,3}(\.[0-9]{1,3})? mm2$/))),
  metres: z.optional(number(0, 1000)),
  colour: z.optional(z.string().check(z.maxLength(40))),
  insulationC: z.optional(number(40, 300)),
  ambientC: z.optional(number(-60, 150)),
  bundle: z.optional(number(1, 100).check(z.multipleOf(1))),
  sheathed: z.optional(z.boolean()),
  label: z.optional(text),
  via: z.optional(z.array(gridPoint).check(z.maxLength(200))),
  main: z.optional(z.literal(["starter", "alternator", "winch"])),
  measured: z.optional(z.boolean()),
  fixed: z.optional(z.array(text)),
  ends: z.optional(z.looseObject({ from: z.optional(wireEnd), to: z.optional(wireEnd) })),
});

const situation = z.looseObject({
  id,
  name: z.optional(text),
  set: z.optional(z.record(z.string(), z.string())),
});

const note = z.looseObject({
  id,
  at: gridPoint,
  text: z.string().check(z.minLength(1), z.maxLength(1000)),
});

const address = z.string().check(z.minLength(1), z.maxLength(200));

const reading = z.looseObject({
  situation: id,
  meter: z.literal(["V", "A", "ohm"]),
  red: address,
  black: z.optional(address),
  value: number(-1e9, 1e9),
  date: z.optional(z.string().check(z.maxLength(40))),
});

const revision = z.looseObject({
  revision: z.string().check(z.maxLength(200)),
  date: z.optional(z.string().check(z.maxLength(40))),
  circuit: z.looseObject({}),
});

export const circuitSchema = z.looseObject({
  format: z.literal("groundstrap"),
  version: z.literal(1),
  sheet: z.optional(sheet),
  system: z.optional(system),
  parts: z.array(partSchema).check(z.maxLength(20_000)),
  wires: z.array(wire).check(z.maxLength(40_000)),
  situations: z.optional(z.array(situation).check(z.maxLength(1000))),
  notes: z.optional(z.array(note).check(z.maxLength(1000))),
  readings: z.optional(z.array(reading).check(z.maxLength(5000))),
  revisions: z.optional(z.array(revision).check(z.maxLength(100))),
});
