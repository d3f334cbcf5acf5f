import type { NetElement, NetPart, NetWire } from "../../netlist/index.ts";
import type { PaperSource } from "../paper.ts";

/** Something that can be taken out of the way of a current: a fuse pulled, a wire off, a part removed. */
export type Break = NetElement | NetWire | NetPart;

interface Link {
  readonly a: number;
  readonly b: number;
  /** Conducts from a to b only. */
  readonly oneWay: boolean;
  readonly through: NetElement | NetWire;
}

/** What is joined to what in one situation, as it was solved: who is fed, from where, and what goes dead without something. */
export interface Conduction {
  /** Nodes joined to a source's positive by metal alone. */
  readonly fed: ReadonlySet<number>;
  /** Nodes joined to a source's negative. */
  readonly returned: ReadonlySet<number>;
  /** Nodes still fed with all of `breaks` out of the way; through loads too where `throughLoads`. */
  fedWithout(breaks: readonly Break[], throughLoads?: boolean): ReadonlySet<number>;
  /** Parts that are on in this situation and would go off with `broken` out; relays that lose their coil let go. */
  offWithout(broken: Break): readonly NetPart[];
  /** Terminals' nodes from a source's positive to `node`, with what lies between; empty when it is not fed. */
  wayTo(node: number): readonly WayStep[];
}

export interface WayStep {
  readonly through: NetElement | NetWire;
  readonly from: number;
  readonly to: number;
}

/** The conduction of a situation of the report ("rest" or a declared one). */
export function conductionOf(source: PaperSource, situation: string): Conduction {
  const links = linksOf(source, situation);
  const sources = source.netlist.elements.filter(
    (element) => element.spec.type === "source" && isPresent(element, source, situation),
  );
  const plus = sources.map(({ a }) => a);
  const minus = sources.map(({ b }) => b);
  const loads = loadLinks(source);
  return {
    fed: reach(plus, links),
    returned: reach(minus, backwards(links)),
    fedWithout(breaks, throughLoads = false) {
      const left = links.filter((link) => !isBroken(link, breaks));
      const starts = sources.filter(({ part }) => !breaks.includes(part)).map(({ a }) => a);
      if (!throughLoads) return reach(starts, left);
      const grounded = reach(minus, backwards(left));
      return reach(starts, [...left, ...loads.filter((link) => !isBroken(link, breaks))], grounded);
    },
    offWithout: (broken) => offWithout(broken, source, situation, links, { plus, minus }),
    wayTo: (node) => wayFrom(plus, links, node),
  };
}

function linksOf(source: PaperSource, situation: string): Link[] {
  const wires = source.netlist.wires.map((wire): Link => ({
    a: wire.from.node,
    b: wire.to.node,
    oneWay: false,
    through: wire,
  }));
  const elements = source.netlist.elements.flatMap((element): Link[] => {
    if (!conducts(element, source, situation)) return [];
    return [{ a: element.a, b: element.b, oneWay: element.spec.type === "diode", through: element }];
  });
  return [...elements, ...wires];
}

function conducts(element: NetElement, source: PaperSource, situation: string): boolean {
  const { spec } = element;
  switch (spec.type) {
    case "link":
      return true;
    case "diode":
      return spec.suppresses === undefined;
    case "protection":
      return spec.closed;
    case "contact": {
      const reading = source.report.situations[situation]?.parts[element.part.part.id];
      return (reading?.ways?.[spec.b]?.closed ?? reading?.closed) === true;
    }
    default:
      return false;
  }
}

function isPresent({ spec, part }: NetElement, { document }: PaperSource, situation: string): boolean {
  if (spec.type !== "source" || spec.when === null) return spec.type === "source";
  const set = document.situations?.find(({ id }) => id === situation)?.set ?? {};
  return spec.when.includes(set[part.part.id] ?? part.control?.positions[0] ?? "");
}

function loadLinks({ netlist }: PaperSource): Link[] {
  return netlist.elements
    .filter(({ spec }) => spec.type === "load" || spec.type === "coil")
    .map((element) => ({ a: element.a, b: element.b, oneWay: false, through: element }));
}

/** A part that is taken out takes its elements with it, and every wire on it loses that end. */
function isBroken({ through }: Link, breaks: readonly Break[]): boolean {
  const touched: readonly Break[] =
    "wire" in through ? [through, through.from.part, through.to.part] : [through, through.part];
  return touched.some((each) => breaks.includes(each));
}

function backwards(links: readonly Link[]): Link[] {
  return links.map((link) => ({ ...link, a: link.b, b: link.a }));
}

/** Nodes reached from `starts`; `walls` are never entered. */
function reach(starts: readonly number[], links: readonly Link[], walls: ReadonlySet<number> = new Set()): Set<number> {
  const reached = new Set(starts);
  const next = neighbours(links);
  const queue = [...starts];
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    for (const { to } of next.get(node) ?? []) {
      if (reached.has(to) || walls.has(to)) continue;
      reached.add(to);
      queue.push(to);
    }
  }
  return reached;
}

function neighbours(links: readonly Link[]): Map<number, WayStep[]> {
  const next = new Map<number, WayStep[]>();
  const add = (from: number, to: number, through: Link["through"]) => {
    const steps = next.get(from);
    if (steps) steps.push({ from, to, through });
    else next.set(from, [{ from, to, through }]);
  };
  for (const { a, b, oneWay, through } of links) {
    add(a, b, through);
    if (!oneWay) add(b, a, through);
  }
  return next;
}

function wayFrom(starts: readonly number[], links: readonly Link[], goal: number): WayStep[] {
  const next = neighbours(links);
  const came = new Map<number, WayStep | null>(starts.map((node) => [node, null]));
  const queue = [...starts];
  for (const node of queue) {
    if (node === goal) break;
    for (const step of next.get(node) ?? []) {
      if (came.has(step.to)) continue;
      came.set(step.to, step);
      queue.push(step.to);
    }
  }
  const way: WayStep[] = [];
  for (let step = came.get(goal); step; step = came.get(step.from)) way.unshift(step);
  return way;
}

/** Parts that are on and go off with `broken` out: they, or the coils that feed them, lose their feed or their return. */
function offWithout(
  broken: Break,
  { netlist, report }: PaperSource,
  situation: string,
  links: readonly Link[],
  poles: { readonly plus: readonly number[]; readonly minus: readonly number[] },
): NetPart[] {
  const left = links.filter((link) => !isBroken(link, [broken]));
  const holds = liveTest(left, poles);
  const released = netlist.elements.filter((element) => element.spec.type === "coil" && !holds(element));
  const isLive = liveTest(
    left.filter(({ through }) => !isHeldBy(through, released)),
    poles,
  );
  return netlist.parts.filter((part) => {
    if (part === broken || report.situations[situation]?.parts[part.part.id]?.on !== true) return false;
    const uses = part.elements.filter(({ spec }) => spec.type === "load" || spec.type === "converter");
    return uses.length > 0 && !uses.some(isLive);
  });
}

/** Whether an element has a source's positive at one end and its negative at the other. */
function liveTest(
  links: readonly Link[],
  { plus, minus }: { readonly plus: readonly number[]; readonly minus: readonly number[] },
): (element: NetElement) => boolean {
  const [fed, returned] = [reach(plus, links), reach(minus, backwards(links))];
  return ({ a, b }) => (fed.has(a) && returned.has(b)) || (fed.has(b) && returned.has(a));
}

function isHeldBy(through: NetElement | NetWire, released: readonly NetElement[]): boolean {
  if (!("spec" in through) || through.spec.type !== "contact" || !("coil" in through.spec.movedBy)) return false;
  return through.spec.movedBy.closedWhen === "pulled-in" && released.some(({ index }) => index === through.coil);
}
