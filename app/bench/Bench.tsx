import { useState, type KeyboardEvent } from "react";
import { Dialog } from "../panels/Dialog.tsx";
import "./bench.css";
import { BenchAbout } from "./BenchAbout.tsx";
import { BenchControl } from "./BenchControl.tsx";
import { BenchGoals } from "./BenchGoals.tsx";
import { BenchSources } from "./BenchSources.tsx";
import { ChosenPiece } from "./ChosenPiece.tsx";
import { DrawingArea } from "./DrawingArea.tsx";
import { takePen, type Turn } from "./drawing-hand.ts";
import { Inside } from "./Inside.tsx";
import { MySymbols } from "./MySymbols.tsx";
import { PenRack } from "./PenRack.tsx";
import { Terminals } from "./Terminals.tsx";
import { TryOut } from "./TryOut.tsx";
import { useBench } from "./use-bench.ts";

/** Where a person draws a symbol of their own, places its terminals and puts together what is inside. */
export function Bench() {
  const work = useBench();
  const { symbol, change } = work;
  const [hand, setHand] = useState(() => takePen(symbol.drawing.length === 0 ? "box" : "move"));
  const [said, setSaid] = useState("");
  const startAnew = () => setHand(takePen("move"));
  const apply = (turn: Turn) => {
    setHand(turn.hand);
    change(turn.symbol);
    if (turn.say !== undefined) setSaid(turn.say);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const isTyping = event.target instanceof HTMLInputElement && event.target.type !== "radio";
    if (!(event.ctrlKey || event.metaKey) || isTyping || event.target instanceof HTMLTextAreaElement) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) work.redo();
    else work.undo();
    setHand(takePen(hand.pen));
  };
  return (
    <Dialog title="Bench" className="bench">
      <div className="bench-table" onKeyDown={onKeyDown} role="presentation">
        <BenchSources work={work} onSay={setSaid} onNewHand={startAnew} />
        <BenchGoals work={work} onSay={setSaid} />
        <PenRack pen={hand.pen} onTake={(pen) => setHand(takePen(pen))} />
        <DrawingArea symbol={symbol} hand={hand} onTurn={apply} onSay={setSaid} />
        <TryOut symbol={symbol} />
        <div className="bench-side">
          <ChosenPiece symbol={symbol} hand={hand} onChoose={setHand} onChange={change} />
          <BenchAbout symbol={symbol} onChange={change} />
          <Terminals symbol={symbol} onChange={change} />
          <Inside symbol={symbol} onChange={change} />
          <BenchControl symbol={symbol} onChange={change} />
          <MySymbols work={work} onSay={setSaid} onNewHand={startAnew} />
        </div>
        <output className="unseen" aria-live="polite">
          {said}
        </output>
      </div>
    </Dialog>
  );
}
