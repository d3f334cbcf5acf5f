import { lazy, type ComponentType } from "react";
import type { PlaceId } from "../store/editor-state.ts";
import { Card } from "./card/Card.tsx";
import { CommandBox } from "./CommandBox.tsx";
import { Controls } from "./controls/Controls.tsx";
import { Drawings } from "./Drawings.tsx";
import { Outline } from "./Outline.tsx";
import { Settings } from "./Settings.tsx";
import { Shelf } from "./Shelf.tsx";
import { Sizing } from "./Sizing.tsx";
import { Snags } from "./Snags.tsx";
import { WireTo } from "./WireTo.tsx";

// Fetched after the rest: the papers and the help bring much that drawing does not need.
const fetchHelp = async () => ({ default: (await import("./help/Help.tsx")).Help });
const fetchPapers = async () => ({ default: (await import("./Papers.tsx")).Papers });
const fetchBench = async () => ({ default: (await import("../bench/Bench.tsx")).Bench });
const Bench = lazy(fetchBench);
const Help = lazy(fetchHelp);
const Papers = lazy(fetchPapers);
const fetchReadings = async () => ({ default: (await import("../papers/TakeReadings.tsx")).TakeReadings });
const TakeReadings = lazy(fetchReadings);
const fetchRevisions = async () => ({ default: (await import("../papers/Revisions.tsx")).Revisions });
const Revisions = lazy(fetchRevisions);

/** Has them at hand before they are asked for; the service worker keeps them, so a failure here costs nothing. */
export function fetchRest(): void {
  void Promise.allSettled([fetchBench(), fetchHelp(), fetchPapers(), fetchReadings(), fetchRevisions()]);
}

interface Panel {
  readonly Panel: ComponentType;
  /** `place`: beside the Board where there is room, a sheet over it where not. `dialog`: over the whole page. */
  readonly shown: "place" | "dialog";
  /** Element to bring the focus to when it stands beside the Board. */
  readonly selector?: string;
}

/** Every panel. To add one: its file, its id in `PlaceId`, and its line here. */
export const PANELS: Readonly<Record<PlaceId, Panel>> = {
  shelf: { Panel: Shelf, shown: "place", selector: ".shelf-search" },
  card: {
    Panel: Card,
    shown: "place",
    selector: '.card :is(input, textarea, button:not([data-command="delete"]))',
  },
  controls: { Panel: Controls, shown: "place", selector: ".controls button" },
  snags: { Panel: Snags, shown: "place", selector: ".snags .snag-head" },
  outline: { Panel: Outline, shown: "place", selector: '.outline [tabindex="0"]' },
  drawings: { Panel: Drawings, shown: "dialog" },
  papers: { Panel: Papers, shown: "dialog" },
  readings: { Panel: TakeReadings, shown: "dialog" },
  revisions: { Panel: Revisions, shown: "dialog" },
  help: { Panel: Help, shown: "dialog" },
  settings: { Panel: Settings, shown: "dialog" },
  sizing: { Panel: Sizing, shown: "dialog" },
  "command-box": { Panel: CommandBox, shown: "dialog" },
  bench: { Panel: Bench, shown: "dialog" },
  "wire-to": { Panel: WireTo, shown: "dialog" },
};
