import type { Document } from "../../core/document/index.ts";
import type { Present } from "../worker/protocol.ts";
import { partName } from "./part-view.ts";

/** More than this is not heard out. */
const MOST_SAID = 5;

/** What a flick brought about: "LA1 left on, K1 pulled in". Empty when nothing else changed. */
export function changeWords(document: Document, before: Present | null, after: Present): string {
  if (!after.settled) return "nothing settles";
  const changes = document.parts.flatMap((part): string[] => {
    const was = before?.parts[part.id];
    const is = after.parts[part.id];
    const name = partName(part);
    if (typeof is?.on === "boolean" && is.on !== (was?.on ?? false)) return [`${name} ${is.on ? "on" : "off"}`];
    if (typeof is?.pulledIn === "boolean" && is.pulledIn !== (was?.pulledIn ?? false)) {
      return [`${name} ${is.pulledIn ? "pulled in" : "let go"}`];
    }
    return [];
  });
  const more = changes.length - MOST_SAID;
  return [...changes.slice(0, MOST_SAID), ...(more > 0 ? [`and ${more} more`] : [])].join(", ");
}
