// Runs a TypeScript entry that exports `run(argv, io)` in plain Node: node app/tools/headless.mjs ENTRY [arguments].
// The entry is bundled once into node_modules/.cache/groundstrap and bundled again only when its sources change.
// Only what the entry itself prints reaches stdout.
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { basename, isAbsolute, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { install } from "./install.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const cache = join(root, "node_modules", ".cache", "groundstrap");
/** npm moves to the top folder before it runs a script; paths belong to where the person stood. */
const cwd = process.env["INIT_CWD"] ?? process.cwd();

const io = {
  read: (path) => (path === "-" ? readStdin() : readFile(resolve(cwd, path))),
  write: (path, text) => writeFile(resolve(cwd, path), text),
  out: (text) => print(1, text),
  err: (text) => print(2, text),
};

async function main() {
  const [entry, ...argv] = process.argv.slice(2);
  install({ quiet: true });
  const { run } = await import(pathToFileURL(await bundled(resolve(root, entry))).href);
  process.exitCode = await run(argv, io);
}

/** Path of the up-to-date bundle of `entry`. */
async function bundled(entry) {
  const name = basename(entry, ".ts");
  const list = join(cache, `${name}.json`);
  const file = (inputs) => join(cache, `${name}-${digest(inputs)}.mjs`);
  if (existsSync(list)) {
    const known = JSON.parse(readFileSync(list, "utf8"));
    // Another entry of the same name in another folder has the same list.
    if (known.includes(entry) && existsSync(file(known))) return file(known);
  }
  const { code, inputs } = await bundle(entry);
  mkdirSync(cache, { recursive: true });
  writeWhole(file(inputs), code);
  writeWhole(list, JSON.stringify(inputs));
  const outdated = readdirSync(cache).filter((item) => item.startsWith(`${name}-`) && item.endsWith(".mjs"));
  for (const item of outdated) if (join(cache, item) !== file(inputs)) rmSync(join(cache, item), { force: true });
  return file(inputs);
}

/** The code of `entry` with all it needs but the development packages, and the project's own files that went into it. */
async function bundle(entry) {
  const { build } = await import("vite");
  const { devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  let inputs = [];
  const collectInputs = {
    name: "collect-inputs",
    buildEnd() {
      inputs = [...this.getModuleIds()].filter(
        (id) => isAbsolute(id) && !id.includes("node_modules") && existsSync(id),
      );
    },
  };
  const result = await build({
    configFile: false,
    root,
    logLevel: "silent",
    publicDir: false,
    plugins: [collectInputs],
    ssr: { noExternal: true, external: Object.keys(devDependencies) },
    build: { ssr: entry, write: false, target: "node20", rolldownOptions: { output: { codeSplitting: false } } },
  });
  return { code: result.output[0].code, inputs };
}

/** Changes when one of the files, a package or this script changes. */
function digest(inputs) {
  const hash = createHash("sha256");
  for (const file of [...inputs, join(root, "package-lock.json"), fileURLToPath(import.meta.url)])
    hash
      .update(file)
      .update("\0")
      .update(existsSync(file) ? readFileSync(file) : "gone")
      .update("\0");
  return hash.digest("hex").slice(0, 16);
}

/** The name appears with all of its content or not at all, so commands started side by side never load half a bundle. */
function writeWhole(file, text) {
  const draft = `${file}.${process.pid}`;
  writeFileSync(draft, text);
  renameSync(draft, file);
}

async function readStdin() {
  const chunks = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}

/** Writes all of it before going on, so that nothing is lost when the reader is slow or the process ends. */
function print(descriptor, text) {
  let rest = Buffer.from(text);
  while (rest.length > 0) {
    try {
      rest = rest.subarray(writeSync(descriptor, rest));
    } catch (error) {
      if (error.code === "EPIPE") return;
      if (error.code !== "EAGAIN") throw error;
    }
  }
}

try {
  await main();
} catch (error) {
  const [line] = String(error?.message ?? error).split("\n");
  print(2, `groundstrap: ${line}\n`);
  process.exitCode = 2;
}
