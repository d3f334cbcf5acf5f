import type { Remedy } from "../rule.ts";
import { partId, type ElementOf } from "../study/elements.ts";

/** The person says that it may be on at rest; empty for a load that can't be told so. */
export function meantToStayOn(use: ElementOf<"load">): readonly Remedy[] {
  if (!("mustBeOffAtRest" in use.part.settings)) return [];
  return [
    {
      id: "meant-to-stay-on",
      text: "It is meant to stay on",
      edits: [{ op: "set-props", id: partId(use), change: { mustBeOffAtRest: false } }],
    },
  ];
}
