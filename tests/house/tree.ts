import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("../../", import.meta.url));

/** Paths of the files below a folder, from the top folder, with forward slashes. */
export function filesBelow(folder: string, pattern = /\.tsx?$/): string[] {
  return readdirSync(`${top}${folder}`, { recursive: true, encoding: "utf8" })
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .filter((path) => pattern.test(path) && !path.startsWith("app/dist/"))
    .toSorted();
}

export function textOf(path: string): string {
  return readFileSync(`${top}${path}`, "utf8");
}
