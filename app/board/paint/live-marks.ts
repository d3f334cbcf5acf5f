import type { Picture } from "../../../core/picture/index.ts";
import { type BoardMarks, STANDING, STANDING_BITS } from "../marks.ts";
import type { ScenePart, SceneWire } from "./scene.ts";

/** Pictures of late revisions kept to fit answers that come after further edits. */
const MOST_KEPT = 6;

/**
 * The analysis' answer fitted to the picture on show. An answer counts by the document it was worked out for; while a newer
 * one is on show, what both have keeps its mark and what is new has none.
 */
export class LiveMarks {
  private readonly pictures = new Map<number, Picture>();
  private marks: BoardMarks | null = null;
  private revision = -1;
  private fitted: BoardMarks | null = null;

  /** Takes in what is on show; whether any mark may look different now. */
  update(marks: BoardMarks | null, revision: number, picture: Picture): boolean {
    if (marks === this.marks && revision === this.revision) return false;
    this.pictures.set(revision, picture);
    for (const kept of this.pictures.keys()) {
      if (this.pictures.size <= MOST_KEPT) break;
      if (kept !== revision && kept !== marks?.revision) this.pictures.delete(kept);
    }
    this.marks = marks;
    this.revision = revision;
    this.fitted = marks === null ? null : this.fit(marks, revision, picture);
    return true;
  }

  terminal(part: ScenePart, index: number): number {
    return this.fitted?.terminals[part.firstTerminal + index] ?? 0;
  }

  part(part: ScenePart): number {
    return this.fitted?.parts[part.order] ?? 0;
  }

  wireA(wire: SceneWire): number {
    return this.fitted?.wires[wire.order] ?? 0;
  }

  wireFlags(wire: SceneWire): number {
    return this.fitted?.wireFlags[wire.order] ?? 0;
  }

  get isNone(): boolean {
    return this.fitted === null;
  }

  private fit(marks: BoardMarks, revision: number, picture: Picture): BoardMarks | null {
    if (marks.revision === revision) return marks;
    const source = this.pictures.get(marks.revision);
    return source === undefined ? null : carryOver(marks, source, picture);
  }
}

/** The marks of one picture as they fit another, by id. */
function carryOver(marks: BoardMarks, from: Picture, to: Picture): BoardMarks {
  const wireAt = new Map(from.wires.map((wire, index) => [wire.id, index]));
  const partAt = new Map<string, { index: number; first: number; count: number }>();
  let first = 0;
  from.parts.forEach((part, index) => {
    partAt.set(part.id, { index, first, count: part.terminals.length });
    first += part.terminals.length;
  });
  const terminals = new Uint8Array(to.parts.reduce((sum, part) => sum + part.terminals.length, 0));
  const parts = new Uint8Array(to.parts.length);
  first = 0;
  to.parts.forEach((part, index) => {
    const old = partAt.get(part.id);
    if (old !== undefined) {
      parts[index] = marks.parts[old.index] ?? 0;
      const count = Math.min(old.count, part.terminals.length);
      terminals.set(marks.terminals.subarray(old.first, old.first + count), first);
    }
    first += part.terminals.length;
  });
  const wires = new Float32Array(to.wires.length);
  const wireFlags = new Uint8Array(to.wires.length);
  to.wires.forEach((wire, index) => {
    const old = wireAt.get(wire.id);
    wires[index] = old === undefined ? 0 : (marks.wires[old] ?? 0);
    wireFlags[index] = old === undefined ? 0 : (marks.wireFlags[old] ?? 0);
  });
  return { ...marks, terminals, parts, wires, wireFlags };
}

/** The standing in a terminal's mark; `unknown` for a number nobody defined. */
export function standingOf(mark: number): number {
  const standing = mark & STANDING_BITS;
  return standing > STANDING.always ? STANDING.unknown : standing;
}
