import { useDrawing, useEditor } from "../../app-context.tsx";
import { NoteCard } from "./NoteCard.tsx";
import { PartCard } from "./PartCard.tsx";
import { SeveralCard } from "./SeveralCard.tsx";
import { SheetCard } from "./SheetCard.tsx";
import { WireCard } from "./WireCard.tsx";

/** All about what is selected; about the sheet itself when nothing is. */
export function Card() {
  return (
    <section className="card" aria-label="Card">
      <h2 className="sleeve">Card</h2>
      <CardOfSelection />
    </section>
  );
}

function CardOfSelection() {
  const drawing = useDrawing();
  const selection = useEditor((state) => state.selection);
  if (selection.size === 0) return <SheetCard />;
  if (selection.size > 1) return <SeveralCard ids={selection} />;
  const [id] = selection;
  const part = drawing.parts.find((one) => one.id === id);
  if (part !== undefined) return <PartCard key={part.id} part={part} />;
  const note = drawing.notes?.find((one) => one.id === id);
  if (note !== undefined) return <NoteCard key={note.id} note={note} />;
  const wire = drawing.wires.find((one) => one.id === id);
  return wire === undefined ? <SheetCard /> : <WireCard key={wire.id} wire={wire} />;
}
