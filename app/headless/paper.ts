import { analyse } from "../../core/analyse.ts";
import { builtBefore, paperFiles, paperOf, papers, type Paper, type PaperOptions } from "../../core/papers/index.ts";
import type { Io } from "./io.ts";
import { openCircuit, UNUSABLE } from "./open-circuit.ts";

const SIZES = ["A5", "A4", "Letter", "Half-letter"] as const;

interface Order {
  readonly path: string;
  readonly paper: Paper;
  readonly out: string;
  /** The file of the revision before; `null`: the one on record in the file, if any. */
  readonly previous: string | null;
  readonly options: PaperOptions;
}

/** `paper FILE --kind KIND --out OUT [--previous FILE]`: writes one of the papers; 2 and nothing written when the file or the words can't be used. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  const order = orderFrom(argv);
  if (typeof order === "string") {
    io.err(`paper: ${order}\n`);
    return UNUSABLE;
  }
  const document = await openCircuit(order.path, io);
  if (!document) return UNUSABLE;
  const previous = order.previous === null ? builtBefore(document) : await openCircuit(order.previous, io);
  if (order.previous !== null && !previous) return UNUSABLE;
  const { study, report } = analyse(document);
  const [name, extension] = nameAndExtension(order.out);
  const source = { document, netlist: study.netlist, report, ...(previous && { previous }) };
  const files = paperFiles(order.paper, source, order.options, extension);
  try {
    for (const { suffix, text } of files) await io.write(`${name}${suffix}${extension}`, text);
  } catch (error) {
    io.err(`${order.out}: can't be written (${(error as { code?: string }).code ?? "unknown reason"})\n`);
    return UNUSABLE;
  }
  return report.snags.some(({ level }) => level === "stop") ? 1 : 0;
}

/** "out/card.svg" as "out/card" and ".svg"; dots of folders and of a hidden file's name are no extension. */
function nameAndExtension(out: string): [string, string] {
  const start = Math.max(out.lastIndexOf("/"), out.lastIndexOf("\\")) + 1;
  const dot = out.lastIndexOf(".");
  return dot > start ? [out.slice(0, dot), out.slice(dot)] : [out, ""];
}

/** By kind, or by title as a person writes it: "vehicle-card" for "Vehicle card". */
function paperNamed(asked: string): Paper | null {
  const plain = (title: string) => title.toLowerCase().replaceAll(/[\s_-]+/g, "-");
  return paperOf(asked) ?? papers.find(({ title }) => plain(title) === plain(asked)) ?? null;
}

/** What was asked for, or a line that says what is wrong with the asking. */
function orderFrom(argv: readonly string[]): Order | string {
  const words = new Map<string, string>();
  const paths: string[] = [];
  for (let at = 0; at < argv.length; at++) {
    const word = argv[at]!;
    if (!word.startsWith("--")) paths.push(word);
    else if (word === "--portrait") words.set(word, "yes");
    else words.set(word, argv[++at] ?? "");
  }
  const kinds = papers.map(({ kind }) => kind).join(", ");
  const [path] = paths;
  const out = words.get("--out");
  if (path === undefined || paths.length !== 1 || !out)
    return `wanted FILE --kind KIND --out OUT; KIND is one of ${kinds}`;
  const paper = paperNamed(words.get("--kind") ?? "");
  if (!paper) return `--kind: got "${(words.get("--kind") ?? "").slice(0, 60)}", wanted one of ${kinds}`;
  const size = SIZES.find((one) => one.toLowerCase() === (words.get("--size") ?? "A5").toLowerCase());
  if (!size) return `--size: got "${words.get("--size")!.slice(0, 60)}", wanted one of ${SIZES.join(", ")}`;
  const groundWord = words.get("--words") ?? "ground";
  if (groundWord !== "ground" && groundWord !== "earth")
    return `--words: got "${groundWord.slice(0, 60)}", wanted ground or earth`;
  const previous = words.get("--previous") ?? null;
  if (previous === "") return "--previous: got nothing, wanted the file of the revision before";
  return { path, paper, out, previous, options: { size, landscape: !words.has("--portrait"), words: groundWord } };
}
