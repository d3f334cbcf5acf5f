import { partKinds, type PartKind, type Setting } from "../../../core/parts/index.ts";
import { unitSymbol } from "../../../core/units/index.ts";
import { usualText } from "../../fields/QuantityField.tsx";
import { viewOf } from "../../store/part-view.ts";
import { useWords } from "../../use-words.ts";
import { SymbolPicture } from "../SymbolPicture.tsx";

const MOST = { width: 88, height: 80 };

/** Every kind of part: its symbol, its terminals, its settings. Made from the kinds themselves. */
export function PartsPage() {
  return (
    <>
      {partKinds.map((kind) => (
        <KindHelp key={kind.kind} kind={kind} />
      ))}
    </>
  );
}

function KindHelp({ kind }: { readonly kind: PartKind }) {
  const words = useWords();
  const view = viewOf({ id: kind.letter, kind: kind.kind });
  return (
    <section className="kind-help">
      <h4>{words(kind.title)}</h4>
      <SymbolPicture view={view} most={MOST} />
      <p>{words(kind.about)}</p>
      <p className="quiet">{words(`Also found as: ${kind.words.join(", ")}.`)}</p>
      <dl>
        {view.terminals.map((terminal) => (
          <div key={terminal.name}>
            <dt>Terminal {terminal.name}</dt>
            <dd>{words(terminal.about)}</dd>
          </div>
        ))}
        {Object.entries(kind.settings).map(([key, setting]) => (
          <div key={key}>
            <dt>{words(setting.label)}</dt>
            <dd>{words(`${setting.help} ${usual(setting)}`)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function usual(setting: Setting<unknown>): string {
  if (setting.type !== "quantity" && setting.type !== "whole") return "";
  const unit = unitSymbol(setting.unit);
  const range =
    setting.min !== undefined && setting.max !== undefined ? `${setting.min} to ${setting.max} ${unit}` : unit;
  return `(${range.trim()}; ${usualText(setting.fallback, setting.unit, setting.follows)})`;
}
