import { splitAddress, type Document } from "../../core/document/index.ts";
import type { EditorState } from "../store/editor-state.ts";
import { documentOf } from "../store/editor-state.ts";
import { placeName, viewOf } from "../store/part-view.ts";
import { whyNot, type Command } from "./command.ts";
import { commandsFor } from "./index.ts";

/** Something of the drawing that can be gone to. */
interface FoundPlace {
  /** Part or wire id, or a terminal's address. */
  readonly place: string;
  readonly title: string;
  readonly words: string;
  readonly label: string;
}

/** Best first. A thing asked for by its very name comes before all; terminals, of which there are many, come last. */
const RANK = { named: 0, title: 1, blocked: 2, words: 3, terminal: 4 } as const;

/**
 * Commands and things of the drawing that hold every word of `sought`: a thing of that very id, or whose label starts so, first, then commands and things with
 * the words in their title, then the rest. With nothing sought, the commands alone.
 */
export function findAnything(state: EditorState, sought: string): readonly Command[] {
  const wanted = sought.trim().toLowerCase();
  const words = wanted.split(/\s+/).filter(Boolean);
  const holds = (text: string) => words.every((word) => text.toLowerCase().includes(word));
  const commands = commandsFor(state)
    .filter(({ id, title, group, words: others }) => {
      return id !== "show command-box" && holds(`${title} ${group} ${others ?? ""}`);
    })
    .map((command) => {
      const isReady = whyNot(command, state) === null;
      const rank = holds(command.title) ? (isReady ? RANK.title : RANK.blocked) : RANK.words;
      return { command, rank: isReady ? rank : rank + 0.5 };
    });
  const places =
    wanted === "" ? [] : placesOf(documentOf(state)).filter((one) => holds(`${one.place} ${one.title} ${one.words}`));
  const going = places.map((one) => ({ command: goTo(one), rank: rankOf(one, wanted, holds) }));
  return [...commands, ...going].toSorted((a, b) => a.rank - b.rank).map(({ command }) => command);
}

function rankOf({ place, title, label }: FoundPlace, wanted: string, holds: (text: string) => boolean): number {
  const isNamed = [place, place.replace(".", " ")].some((name) => name.toLowerCase() === wanted);
  if (isNamed || label.toLowerCase().startsWith(wanted)) return RANK.named;
  if (place.includes(".")) return RANK.terminal;
  return holds(title) ? RANK.title : RANK.words;
}

function placesOf(document: Document): FoundPlace[] {
  const parts = document.parts.flatMap((part): FoundPlace[] => {
    const { kind, terminals } = viewOf(part);
    const words = `${kind.title} ${kind.words.join(" ")}`;
    const itself = { place: part.id, title: placeName(document, part.id), words, label: part.label ?? "" };
    const metal = terminals.map(({ name, about }): FoundPlace => {
      const place = `${part.id}.${name}`;
      return { place, title: placeName(document, place), words: `${words} ${about}`, label: "" };
    });
    return [itself, ...metal];
  });
  const wires = document.wires.map(({ id, label = "", colour = "", size = "", from, to }): FoundPlace => ({
    place: id,
    title: placeName(document, id),
    words: `${colour} ${size} ${from} ${to} lead cable`,
    label,
  }));
  const notes = (document.notes ?? []).map(({ id, text }): FoundPlace => ({
    place: id,
    title: `${placeName(document, id)}: ${text}`,
    words: "",
    label: text,
  }));
  return [...parts, ...wires, ...notes];
}

function goTo({ place, title }: FoundPlace): Command {
  const isTerminal = place.includes(".");
  return {
    id: `go ${place}`,
    title: title.charAt(0).toUpperCase() + title.slice(1),
    group: "On the Board",
    plan: () => ({
      select: [splitAddress(place)[0]],
      effects: [
        { do: "spotlight", places: isTerminal ? [place] : [], snag: null },
        { do: "reveal", places: [place] },
      ],
      say: title,
    }),
  };
}
