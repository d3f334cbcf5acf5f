import { useWords } from "../../use-words.ts";

const STEPS = [
  "Tap a part on the Shelf, or drag it to the Board. Find it by any word for it: lamp, light, earth bar.",
  "Drag from one terminal to another to draw a wire. By keys: W, then choose the two terminals.",
  "Select a part or a wire and say what it is on its Card: watts, fuse rating, wire size, length. What you leave out is never assumed; it is listed as something that can't be checked.",
  "Draw the way back too. A return is a wire of its own, with a size and a length, to the ground strip and on to the battery.",
  "Operate the Controls and watch: what is live, what works, what each wire carries.",
  "Go through the Snags, worst first. Choosing one shows the place; a remedy says what it will change before you press it, and one undo takes it back.",
  "Print the papers. The vehicle card carries the drawing in itself: save it as SVG and it can be opened here again.",
];

export function StartPage() {
  const words = useWords();
  return (
    <>
      <p>
        {words(
          "Groundstrap plans the wiring of accessories on a 12 or 24 V vehicle: what will be hot, what protects it, what it carries, and what happens if something goes wrong.",
        )}
      </p>
      <ol>
        {STEPS.map((step) => (
          <li key={step}>{words(step)}</li>
        ))}
      </ol>
      <p>Everything stays on this device. It works without a network.</p>
    </>
  );
}
