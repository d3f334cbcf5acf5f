// Installs the packages of package-lock.json when they are not all there yet. Plain Node: it runs before anything is installed.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));

/**
 * True when npm's own record of what it installed in `folder` holds every package of the lock in the locked version.
 * Optional packages made for other machines are rightly absent.
 */
export function isInstalled(folder) {
  const wanted = packagesOf(join(folder, "package-lock.json"));
  const present = packagesOf(join(folder, "node_modules", ".package-lock.json"));
  return Object.entries(wanted).every(
    ([place, { version, optional }]) =>
      place === "" || present[place]?.version === version || (optional && !present[place]),
  );
}

/** Installs when needed. `quiet` keeps npm's words to itself unless the install fails; stdout stays untouched either way. */
export function install({ quiet }) {
  if (isInstalled(root)) return;
  const npm = process.env["npm_execpath"];
  const [command, first] = npm?.endsWith("js") ? [process.execPath, [npm]] : ["npm", []];
  const result = spawnSync(command, [...first, "ci", "--no-progress", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", quiet ? "pipe" : 2, quiet ? "pipe" : 2],
    shell: command === "npm" && process.platform === "win32",
    encoding: "utf8",
  });
  if (result.status === 0) return;
  if (quiet) process.stderr.write(result.stderr ?? "");
  throw new Error("the packages could not be installed; check the network and run: npm ci");
}

function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8")).packages;
  } catch {
    return {};
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    install({ quiet: false });
  } catch (error) {
    console.error(`groundstrap: ${error.message}`);
    process.exitCode = 1;
  }
}
