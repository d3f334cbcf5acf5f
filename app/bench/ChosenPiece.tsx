import type { Stroke } from "../../core/geometry/index.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { FlagField } from "../fields/FlagField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { nudge, without, type Hand } from "./drawing-hand.ts";
import { strokeWords } from "./strokes.ts";
import type { BenchSymbol } from "./symbol.ts";
import { TEXT_SIZES } from "./WriteText.tsx";

interface Props {
  readonly symbol: BenchSymbol;
  readonly hand: Hand;
  readonly onChoose: (hand: Hand) => void;
  readonly onChange: (symbol: BenchSymbol) => void;
}

const WEIGHTS = [
  { value: "thin", label: "Thin" },
  { value: "normal", label: "Normal" },
  { value: "thick", label: "Thick" },
];
const NUDGES = [
  ["Left", -0.5, 0],
  ["Right", 0.5, 0],
  ["Up", 0, -0.5],
  ["Down", 0, 0.5],
] as const;
const NONE = "";

/** The strokes as a list, and how the chosen one looks. */
export function ChosenPiece({ symbol, hand, onChoose, onChange }: Props) {
  if (symbol.drawing.length === 0) return null;
  const index = hand.chosen?.piece === "stroke" ? hand.chosen.index : -1;
  const stroke = symbol.drawing[index];
  const piece = { piece: "stroke", index } as const;
  const set = (next: Stroke) =>
    onChange({ ...symbol, drawing: symbol.drawing.map((one, at) => (at === index ? next : one)) });
  return (
    <section className="bench-group" aria-label="Strokes">
      <h3>Strokes</h3>
      <ChoiceField
        label="Chosen"
        value={stroke === undefined ? NONE : String(index)}
        options={[
          { value: NONE, label: `none of ${symbol.drawing.length}` },
          ...symbol.drawing.map((one, at) => ({ value: String(at), label: `${at + 1}: ${strokeWords(one)}` })),
        ]}
        onCommit={(value) =>
          onChoose({ ...hand, chosen: value === NONE ? null : { piece: "stroke", index: Number(value) } })
        }
      />
      {stroke !== undefined && (
        <>
          <StrokeLook stroke={stroke} onChange={set} />
          <div className="row-buttons">
            {NUDGES.map(([name, dx, dy]) => (
              <button key={name} type="button" onClick={() => onChange(nudge(symbol, piece, [dx, dy]))}>
                {name}
              </button>
            ))}
            <button
              type="button"
              onClick={() => {
                onChange(without(symbol, piece));
                onChoose({ ...hand, chosen: null });
              }}
            >
              Remove
            </button>
          </div>
        </>
      )}
    </section>
  );
}

function StrokeLook({ stroke, onChange }: { readonly stroke: Stroke; readonly onChange: (stroke: Stroke) => void }) {
  if (stroke.shape === "text")
    return (
      <>
        <TextField
          label="Text"
          value={stroke.text}
          onCommit={(text) => {
            if (text === "" || text.length > 24) return `Got ${text.length} letters, wanted 1 to 24`;
            onChange({ ...stroke, text });
            return null;
          }}
        />
        <ChoiceField
          label="Size"
          value={String(stroke.size)}
          options={[
            ...TEXT_SIZES,
            ...(TEXT_SIZES.some(({ value }) => Number(value) === stroke.size)
              ? []
              : [{ value: String(stroke.size), label: "As pasted" }]),
          ]}
          onCommit={(size) => onChange({ ...stroke, size: Number(size) })}
        />
      </>
    );
  const isRound = stroke.shape === "circle";
  const canFill = isRound || (stroke.shape === "line" && stroke.closed === true);
  return (
    <>
      <ChoiceField
        label="Line"
        value={stroke.weight ?? "normal"}
        options={WEIGHTS}
        onCommit={(weight) => onChange({ ...stroke, weight: weight as "thin" | "normal" | "thick" })}
      />
      {canFill && (
        <FlagField label="Filled" value={stroke.fill ?? false} onCommit={(fill) => onChange({ ...stroke, fill })} />
      )}
      {stroke.shape === "line" && (
        <FlagField label="Dashed" value={stroke.dash ?? false} onCommit={(dash) => onChange({ ...stroke, dash })} />
      )}
    </>
  );
}
