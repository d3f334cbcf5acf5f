import type { Analysis } from "../../core/analyse.ts";
import { diagnose } from "../../core/diagnosis/index.ts";
import { possibleFaults, runDrill } from "../../core/drill/index.ts";
import { readClampAmps, readOhms, readVolts } from "../../core/meter/index.ts";
import type { Combination } from "../../core/netlist/index.ts";
import { readSituation } from "../../core/readings/index.ts";
import { sizeIt } from "../../core/sizing/index.ts";
import { touchTest } from "../../core/touch/index.ts";
import type { Consultations, Topic } from "./consultations.ts";

interface Context {
  readonly analysis: Analysis;
  readonly combination: Combination;
}

type Answers = {
  readonly [T in Topic]: (asks: Consultations[T]["asks"], context: Context) => Consultations[T]["gives"];
};

const ANSWERS: Answers = {
  touch: ({ at }, { analysis: { study }, combination }) =>
    touchTest(study, readSituation(study.netlist, combination, "present", "Now"), at),
  meter: ({ dial, red, black }, { analysis, combination }) => {
    const { netlist } = analysis.study;
    const leads = { red: netlist.terminalAt.get(red)?.node, black: netlist.terminalAt.get(black)?.node };
    if (leads.red === undefined || leads.black === undefined) return null;
    const read = dial === "volts" ? readVolts : readOhms;
    return read(netlist, combination, { red: leads.red, black: leads.black });
  },
  clamp: ({ wire }, { analysis, combination }) => {
    const { netlist } = analysis.study;
    const index = netlist.wireAt.get(wire)?.index;
    return index === undefined ? null : readClampAmps(netlist, combination, index);
  },
  faults: (_asks, { analysis }) => possibleFaults(analysis.study.netlist),
  drill: ({ fault }, { analysis }) => {
    const { netlist } = analysis.study;
    return runDrill(netlist.document, fault, possibleFaults(netlist));
  },
  diagnosis: ({ readings, wrong }, { analysis }) => diagnose(analysis.study.netlist.document, readings, wrong),
  sizing: ({ scope }, { analysis }) => sizeIt(analysis.study.netlist.document, scope === null ? "all" : new Set(scope)),
};

/** The answer to one question about the drawing and the situation the controls stand in. */
export function answerConsultation<T extends Topic>(
  topic: T,
  asks: Consultations[T]["asks"],
  context: Context,
): Consultations[T]["gives"] {
  return ANSWERS[topic](asks, context);
}
