import { formatNumber } from "../units/index.ts";
import { paragraphBlock, tableBlock, TICK, unbroken, type Row } from "./layout/index.ts";
import { jointRows, type JointRow } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { bothSizes, stripMm, wireName } from "./words/index.ts";

/** Joint by joint at the bench. */
export const crimpSheet: Paper = {
  kind: "crimp-sheet",
  title: "Crimp sheet",
  about: "Joint by joint: wires in the barrel, which barrel and die, strip length, and the pull it must stand.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => crimpPages(source, options)[0]!,
  pages: crimpPages,
};

function crimpPages(source: PaperSource, options: PaperOptions): string[] {
  const rows = jointRows(source).map((joint): Row => ({
    cells: [
      joint.place,
      joint.wires.map((wire) => unbroken(`${wireName(wire.wire)} ${bothSizes(wire)}`)).join(" + "),
      joint.totalMm2 === null ? "not stated" : unbroken(`${formatNumber(joint.totalMm2)} mm²`),
      `${joint.terminal}, ${joint.barrel}${joint.fits === false ? ": DOES NOT FIT" : ""}`,
      stripWords(joint),
      joint.pull === null
        ? ""
        : `${unbroken(`${joint.pull.lbf} lbf`)} ${unbroken(`(${formatNumber(joint.pull.minN)} N)`)}`,
      TICK,
      TICK,
    ],
  }));
  const columns = [
    { head: "Joint", grow: 1 },
    { head: "Wires in it", grow: 1 },
    { head: "Copper" },
    { head: "Terminal and barrel", grow: 1 },
    { head: "Strip" },
    { head: "Pull test" },
    { head: "Seal" },
    { head: "Done" },
  ];
  return printed(crimpSheet.title, source.document, options, (widthMm) => [
    tableBlock({ columns, rows, none: "No wire is drawn." }, widthMm),
    paragraphBlock(
      "Die by the colour or the size stamped on the barrel. Several wires in one barrel: the barrel is chosen for their copper together, and the joint is no stronger than its thinnest wire. Seal every joint outside the cab. Pull-test one sample of each sort before you start, then tug each joint.",
      widthMm,
    ),
  ]);
}

function stripWords({ totalMm2 }: JointRow): string {
  const strip = stripMm(totalMm2);
  return strip === null ? "" : unbroken(`${strip} mm`);
}
