import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

/**
 * Adds the service worker to a build: `sw.js` with the list of all built and public files and a version made of their
 * content, so that every byte the app may ever need is kept at the first visit.
 */
export function offline(): Plugin {
  let root = "";
  let publicFolder = "";
  return {
    name: "offline",
    apply: "build",
    configResolved(config) {
      root = config.root;
      publicFolder = config.publicDir;
    },
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        const hash = createHash("sha256");
        const files = ["./"];
        for (const [name, item] of Object.entries(bundle)) {
          hash.update(name).update(item.type === "chunk" ? item.code : item.source);
          if (name !== "index.html") files.push(name);
        }
        for (const name of filesBelow(publicFolder)) {
          hash.update(name).update(readFileSync(join(publicFolder, name)));
          files.push(name);
        }
        const worker = readFileSync(join(root, "sw.js"), "utf8");
        hash.update(worker);
        const source = worker
          .replace("__FILES__", JSON.stringify(files.sort()))
          .replace("__VERSION__", JSON.stringify(hash.digest("hex").slice(0, 12)));
        this.emitFile({ type: "asset", fileName: "sw.js", source });
      },
    },
  };
}

/** Names of the files below `folder`, with forward slashes. */
function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) =>
      join(item.parentPath, item.name)
        .slice(folder.length + 1)
        .replaceAll("\\", "/"),
    );
}
