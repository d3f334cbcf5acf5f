import type { Setting } from "../../core/parts/index.ts";
import type { Choice, Proposal } from "../../core/sizing/index.ts";
import { formatQuantity } from "../../core/units/index.ts";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { placeName, viewOf } from "../store/part-view.ts";
import { useConsultation } from "../use-consultation.ts";
import { useWords } from "../use-words.ts";
import { Dialog } from "./Dialog.tsx";

/** What Size it would choose for the selection or the whole drawing, and why. Nothing changes until it is told. */
export function Sizing() {
  const selection = useEditor((state) => state.selection);
  const scope = selection.size === 0 ? null : [...selection];
  const proposal = useConsultation("sizing", scope?.join(" ") ?? "all", { scope });
  return (
    <Dialog title="Size it" className="sizing">
      <p>
        {scope === null ? "The whole drawing" : `Only what is selected (${scope.length})`}: the least copper with which
        every rule on wires, fuses, contacts and barrels holds. Values marked to be kept stay.
      </p>
      {proposal === undefined ? <p className="quiet">Choosing…</p> : <ProposalView proposal={proposal} />}
    </Dialog>
  );
}

function ProposalView({ proposal }: { readonly proposal: Proposal }) {
  const { editor, runner } = useApp();
  const words = useWords();
  const { transaction, choices, unfit } = proposal;
  const apply = () => {
    editor.show(null);
    if (transaction !== null) runner.carryOut({ transaction });
  };
  return (
    <>
      {choices.length === 0 && <p>Every size is as it should be already.</p>}
      <ul className="choices">
        {choices.map((choice) => (
          <li key={`${choice.at} ${choice.setting}`}>
            <ChoiceLine choice={choice} />
            <p className="quiet">{words(choice.why)}</p>
          </li>
        ))}
      </ul>
      {unfit.length > 0 && (
        <>
          <h3>No size helps here</h3>
          <ul className="choices">
            {unfit.map((one) => (
              <li key={`${one.rule} ${one.text}`}>{words(one.text)}</li>
            ))}
          </ul>
        </>
      )}
      {transaction !== null && (
        <div className="row-buttons">
          <button type="button" className="primary" onClick={apply}>
            {choices.length === 1 ? "Take it" : `Take all ${choices.length}`}
          </button>
        </div>
      )}
    </>
  );
}

function ChoiceLine({ choice }: { readonly choice: Choice }) {
  const drawing = useDrawing();
  const part = drawing.parts.find((one) => one.id === choice.at);
  const setting = part && viewOf(part).kind.settings[choice.setting];
  return (
    <>
      <strong>{placeName(drawing, choice.at)}</strong>: {setting?.label.toLowerCase() ?? choice.setting}{" "}
      {valueWords(choice.from, setting)} → <strong>{valueWords(choice.to, setting)}</strong>
    </>
  );
}

function valueWords(value: unknown, setting: Setting<unknown> | undefined): string {
  if (value === undefined || value === null) return "not said";
  if (typeof value === "number") return formatQuantity(value, setting?.unit ?? "");
  return typeof value === "string" ? value.replace("mm2", "mm²") : "changed";
}
