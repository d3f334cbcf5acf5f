import { pictureOf, type Picture } from "../picture/index.ts";
import { picturePages } from "./drawing/picture-pages.ts";
import { reportWords } from "./drawing/report-words.ts";
import {
  frameInside,
  headingBlock,
  paragraphBlock,
  sheetOf,
  tableBlock,
  type Block,
  type Row,
} from "./layout/index.ts";
import { isHotAtRest, liveRows, wireHot } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { framed } from "./printed.ts";

/** The same drawing with nothing on it but what is live with the key out. */
export const hotAtRest: Paper = {
  kind: "hot-at-rest",
  title: "Hot with the key out",
  about: "Only what is live with everything off: every wire and bare point, what guards it, and how to kill it.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => hotPages(source, options)[0]!,
  pages: hotPages,
};

function hotPages(source: PaperSource, options: PaperOptions): string[] {
  const words = reportWords(source);
  const sheet = sheetOf(options);
  const inside = frameInside(sheet);
  const contents = picturePages(
    livePicture(source),
    { ...words, terminalMark: (address) => (isLive(source, address) ? words.terminalMark(address) : null) },
    liveLists(source, inside.right - inside.left),
    inside,
  );
  return framed(hotAtRest.title, source.document, sheet, contents);
}

/** The drawing without what is dead at rest. */
function livePicture(source: PaperSource): Picture {
  const { netlist } = source;
  const picture = pictureOf(source.document);
  const wires = picture.wires.filter(({ id }) => isHotAtRest(wireHot(netlist.wireAt.get(id)!, source)));
  const parts = picture.parts.filter(({ terminals }) => terminals.some(({ address }) => isLive(source, address)));
  const ends = wires.flatMap(({ id }) => [netlist.wireAt.get(id)!.wire.from, netlist.wireAt.get(id)!.wire.to]);
  const met = parts.flatMap(({ terminals }) =>
    terminals.filter(({ address }) => ends.filter((end) => end === address).length > 1).map(({ at }) => at),
  );
  const joints = picture.joints.filter(([x, y]) => met.some(([a, b]) => a === x && b === y));
  return { ...picture, parts, wires, joints };
}

function isLive({ report }: PaperSource, address: string): boolean {
  return isHotAtRest(report.terminals[address]?.hot);
}

function liveLists(source: PaperSource, widthMm: number): Block[] {
  const rows = liveRows(source).map(({ name, about, guard, kill }): Row => ({ cells: [name, about, guard, kill] }));
  const columns = [
    { head: "Live" },
    { head: "Where, and what it is", grow: 1 },
    { head: "Guarded by" },
    { head: "To make it dead" },
  ];
  return [
    headingBlock("Live with everything off", widthMm),
    tableBlock({ columns, rows, none: "Nothing that is drawn here is live with everything off." }, widthMm),
    paragraphBlock(
      "Test before you touch: colours and drawings can be wrong. What is not drawn here is not known to be dead.",
      widthMm,
    ),
    ...unprovedBlocks(source, widthMm),
  ];
}

function unprovedBlocks({ report }: PaperSource, widthMm: number): Block[] {
  const { unproved } = report.summary;
  return unproved.length === 0
    ? []
    : [paragraphBlock(`Not proved for every position: ${unproved.join("; ")}.`, widthMm)];
}
