// Finds a Chromium for the browser tests and, run by itself, installs one when there is none.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "@playwright/test";

/** Path of a Chromium: the one `CHROMIUM` names, Playwright's own, the system's; `undefined` when there is none. */
export function chromiumPath() {
  const candidates = [
    process.env["CHROMIUM"],
    chromium.executablePath(),
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
  ];
  return candidates.find((path) => path && existsSync(path));
}

function installChromium() {
  // Playwright's download comes from a host of its own, which not every network reaches: root on Debian takes the distribution's.
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], {
      DEBIAN_FRONTEND: "noninteractive",
    });
  }
  if (!chromiumPath()) run("npx", ["playwright", "install", "chromium"]);
}

function run(command, args, env = {}) {
  const shell = process.platform === "win32";
  spawnSync(command, args, { stdio: ["ignore", 2, 2], shell, env: { ...process.env, ...env } });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (!chromiumPath()) installChromium();
  if (!chromiumPath()) {
    console.error("groundstrap: no Chromium found or installed; install one and name its path in CHROMIUM");
    process.exitCode = 1;
  }
}
