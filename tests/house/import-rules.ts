/** Paths of the tree to their text; paths start at the top folder and use forward slashes. */
export type Tree = ReadonlyMap<string, string>;

/** Folders and files of core, lowest first: each may import only those before it, and another folder only through its index.ts. */
const ORDER = [
  "units",
  "geometry",
  "reference",
  "circuit",
  "solver",
  "document",
  "parts",
  "placing",
  "picture",
  "file",
  "netlist",
  "readings",
  "meter",
  "positions",
  "rules",
  "touch",
  "report",
  "papers",
  "analyse",
  "sizing",
  "drill",
  "diagnosis",
  "examples",
] as const;

/** Tighter than the order. */
const ONLY: Readonly<Record<string, readonly string[]>> = {
  solver: ["circuit", "units"],
  document: ["units", "geometry"],
  examples: ["document"],
};
const NEVER: Readonly<Record<string, readonly string[]>> = { parts: ["solver"] };

/** Packages core may use: they run anywhere and know no screen, clock or chance. */
const CORE_PACKAGES = ["zod/mini", "immer", "lean-qr", "fflate"];

interface Import {
  readonly from: string;
  readonly line: number;
  /** As written. */
  readonly specifier: string;
  /** The file it means, from the top folder; `null` for a package. */
  readonly target: string | null;
}

/** What breaks the import rules, one sentence each, with the line to change. */
export function importTrouble(tree: Tree): string[] {
  const imports = [...tree].flatMap(([path, text]) => importsOf(path, text));
  return [...imports.flatMap(troubleWith), ...cycles(imports)];
}

function troubleWith(item: Import): string[] {
  const { from, line, specifier, target } = item;
  const say = (text: string) => [`${from}:${line}: "${specifier}" ${text}`];
  if (target === null) {
    if (!from.startsWith("core/") || CORE_PACKAGES.includes(specifier)) return [];
    return say(`is not a package core may import (${CORE_PACKAGES.join(", ")}); move the code that needs it to app`);
  }
  if (/^(tests|e2e)\//.test(target)) return say("is a test: nothing the program runs may import it");
  if (!/\.[a-z0-9]+(\?[a-z]+)?$/.test(specifier)) return say("names no file; imports carry their extension");
  if (from.startsWith("core/") && !target.startsWith("core/")) return say("leaves core; core imports only core");
  const home = folderOf(from);
  const goal = folderOf(target);
  if (home === goal) return [];
  if (target.startsWith("core/") && !isFrontDoor(target))
    return say(`goes past the front door; import ${goal}/index.ts`);
  return from.startsWith("core/") ? orderTrouble(unitOf(from), unitOf(target), say) : [];
}

function orderTrouble(home: string, goal: string, say: (text: string) => string[]): string[] {
  const place = (unit: string) => (ORDER as readonly string[]).indexOf(unit);
  for (const unit of [home, goal])
    if (place(unit) < 0)
      return say(`meets core/${unit}, which has no place in the order; add it to ORDER in tests/house/import-rules.ts`);
  const only = ONLY[home];
  if (only && !only.includes(goal)) return say(`is out of sight: core/${home} may import only ${only.join(" and ")}`);
  if (NEVER[home]?.includes(goal)) return say(`is out of sight: core/${home} never imports core/${goal}`);
  if (place(goal) > place(home))
    return say(`points up: core/${home} comes before core/${goal}; move the code up or what it needs down`);
  if (goal === "examples") return say("is for the app and tests; core/examples is imported by no other folder of core");
  return [];
}

/** The first level of core or app; what lies deeper belongs to it. */
function folderOf(path: string): string {
  const steps = path.split("/");
  return steps.slice(0, Math.min(2, steps.length - 1)).join("/");
}

function unitOf(path: string): string {
  return (path.split("/")[1] ?? "").replace(/\.ts$/, "");
}

function isFrontDoor(path: string): boolean {
  return path === `${folderOf(path)}/index.ts` || /^core\/[^/]+\.ts$/.test(path);
}

/** Each import statement, export-from, dynamic import and worker address of a file. */
function importsOf(from: string, text: string): Import[] {
  const code = text
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, " "))
    .replace(/^\s*\/\/.*$/gm, "");
  const pattern =
    /(?:^\s*|[;}]\s*)(?:import|export)\s(?:[^"'`;()]*?\sfrom\s*)?["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']|new URL\(\s*["'](\.[^"']+)["']\s*,\s*import\.meta\.url/gm;
  return [...code.matchAll(pattern)].map((match) => {
    const specifier = match[1] ?? match[2] ?? match[3] ?? "";
    const line = code.slice(0, match.index + match[0].length).split("\n").length;
    return { from, line, specifier, target: specifier.startsWith(".") ? resolve(from, specifier) : null };
  });
}

function resolve(from: string, specifier: string): string {
  const parts = from.split("/").slice(0, -1);
  for (const step of specifier.replace(/\?.*$/, "").split("/")) {
    if (step === "..") parts.pop();
    else if (step !== ".") parts.push(step);
  }
  return parts.join("/");
}

/** One sentence for each ring of files that import each other. */
function cycles(imports: readonly Import[]): string[] {
  const next = new Map<string, Import[]>();
  for (const item of imports) next.set(item.from, [...(next.get(item.from) ?? []), item]);
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (file: string, trail: readonly string[]) => {
    if (done.has(file)) return;
    for (const { target, line } of next.get(file) ?? []) {
      if (target === null) continue;
      const start = [...trail, file].indexOf(target);
      if (start >= 0)
        found.push(`${file}:${line}: closes a ring: ${[...trail, file].slice(start).join(" > ")} > ${target}`);
      else visit(target, [...trail, file]);
    }
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return found;
}
