import { useId } from "react";
import type { Part } from "../../../core/document/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { kindsToSwapFor, swapKind } from "../../commands/swap-kind.ts";
import { useWords } from "../../use-words.ts";

/** Makes the part another kind and keeps its wires. */
export function SwapKind({ part }: { readonly part: Part }) {
  const { runner } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const id = useId();
  const kinds = kindsToSwapFor(drawing, part);
  return (
    <div className="field">
      <label htmlFor={id}>Swap for</label>
      <span className="field-entry">
        <select
          id={id}
          value=""
          onChange={(event) => {
            const kind = kinds.find((one) => one.kind === event.target.value);
            if (kind !== undefined) runner.carryOut(swapKind(drawing, part, kind));
          }}
        >
          <option value="">another kind, wires kept</option>
          {kinds.map((kind) => (
            <option key={kind.kind} value={kind.kind}>
              {words(kind.title)}
            </option>
          ))}
        </select>
      </span>
    </div>
  );
}
