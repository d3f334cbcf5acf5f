import { useState } from "react";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { FocusedInput } from "../fields/FocusedInput.tsx";
import { write, type Hand, type Turn } from "./drawing-hand.ts";
import type { BenchSymbol } from "./symbol.ts";

interface Props {
  readonly hand: Hand;
  readonly symbol: BenchSymbol;
  readonly onTurn: (turn: Turn) => void;
  readonly onDone: () => void;
}

/** Heights, grid steps. */
export const TEXT_SIZES = [
  { value: "0.75", label: "Small" },
  { value: "1", label: "Middle" },
  { value: "1.5", label: "Large" },
];

/** The text for the spot pressed with the Text pen. */
export function WriteText({ hand, symbol, onTurn, onDone }: Props) {
  const [text, setText] = useState("");
  const [size, setSize] = useState("1");
  const done = (words: string) => {
    onTurn(write(hand, symbol, words, Number(size)));
    onDone();
  };
  return (
    <form
      className="bench-write"
      onSubmit={(event) => {
        event.preventDefault();
        done(text);
      }}
    >
      <FocusedInput
        aria-label="Text to draw"
        maxLength={24}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key !== "Escape") return;
          event.preventDefault();
          event.stopPropagation();
          done("");
        }}
      />
      <ChoiceField label="Size" value={size} options={TEXT_SIZES} onCommit={setSize} />
      <button type="submit" className="primary">
        Write it
      </button>
      <button type="button" onClick={() => done("")}>
        Leave it
      </button>
    </form>
  );
}
