import type { Part } from "../../core/document/index.ts";
import { useApp } from "../app-context.tsx";
import { partName } from "../store/part-view.ts";
import { elementTitle, withElement } from "./behaviour.ts";
import { ElementSettings } from "./ElementSettings.tsx";
import { isOwn } from "./own-kind.ts";
import { symbolOf } from "./symbol.ts";

/** On the Card of an own symbol: what is inside with its settings, and the way to the Bench. Nothing on any other. */
export function OwnPartFields({ part }: { readonly part: Part }) {
  const { editor, symbols } = useApp();
  if (!isOwn(part)) return null;
  const symbol = symbolOf(part);
  const openBench = () => {
    symbols.want({ from: "board", drawingId: editor.state.drawingId, partId: part.id });
    editor.show("bench");
  };
  return (
    <>
      {symbol.elements.map((element, index) => (
        <details key={index} open={symbol.elements.length <= 2}>
          <summary>{elementTitle(element)}</summary>
          <div className="card-inside">
            <ElementSettings
              element={element}
              onChange={(change) =>
                editor.dispatch({
                  label: `${partName(part)}: ${elementTitle(element).toLowerCase()}`,
                  edits: [
                    {
                      op: "set-props",
                      id: part.id,
                      change: { elements: withElement(symbol, index, change).elements },
                    },
                  ],
                })
              }
            />
          </div>
        </details>
      ))}
      <div className="row-buttons">
        <button type="button" onClick={openBench}>
          Open on the Bench
        </button>
      </div>
    </>
  );
}
