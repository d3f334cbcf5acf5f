import type { Touch } from "../../../core/touch/index.ts";
import { formatNumber, formatQuantity } from "../../../core/units/index.ts";
import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { placeName } from "../../store/part-view.ts";
import { standingWords } from "../../store/standing-words.ts";
import { useConsultation } from "../../use-consultation.ts";
import { useWords } from "../../use-words.ts";
import { Readings, type ReadingRow } from "../card/Readings.tsx";
import { PlacePicker } from "./PlacePicker.tsx";

/** Point at any metal: is it hot, when, what flows if it touches the frame, what stops that, how soon, and does the wire survive. */
export function TouchPanel() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const at = useEditor((state) => state.leads[0]?.at);
  const touch = useConsultation("touch", at ?? "", at === undefined ? null : { at });
  return (
    <>
      <PlacePicker label="Finger on" value={at} offers="both" onPick={(place) => editor.probe(place)} />
      {at === undefined && <p className="quiet">Tap a terminal or a wire on the Board.</p>}
      {touch && <TouchAnswer touch={touch} name={placeName(drawing, at!)} />}
    </>
  );
}

function TouchAnswer({ touch, name }: { readonly touch: Touch; readonly name: string }) {
  const words = useWords();
  const rows: ReadingRow[] = [
    ["Now", touch.volts === null ? "no reading" : formatQuantity(touch.volts, "V")],
    ["In every position", standingWords(touch)],
    ["Metal", touch.bare ? "bare: it can be touched" : "covered"],
  ];
  if (touch.faultA !== null) {
    rows.push(["If it touches the frame", `${formatQuantity(touch.faultA, "A")} flow`]);
    rows.push(["Stopped by", stopWords(touch)]);
    rows.push([
      "The wire",
      touch.survives === null ? "can't be told" : touch.survives ? "stands it" : "does not stand it",
    ]);
  }
  return (
    <div aria-live="polite">
      <p className="verdict" data-bad={isBad(touch) || undefined}>
        {words(verdictOf(touch, name))}
      </p>
      <Readings rows={rows} />
    </div>
  );
}

function stopWords({ guard, clearsWithinS }: Touch): string {
  if (guard === null || guard === undefined) return "nothing";
  const rating = guard.ratingA === null ? "rating not known" : formatQuantity(guard.ratingA, "A");
  const time = clearsWithinS === null ? "time not known" : `within ${formatNumber(clearsWithinS)} s`;
  return `${guard.at.toUpperCase()}, ${rating}, ${time}`;
}

function isBad(touch: Touch): boolean {
  return (
    (touch.bare && (touch.hot === "always" || touch.hot === "at-rest")) ||
    (touch.faultA !== null && (touch.guard === null || touch.survives === false))
  );
}

function verdictOf(touch: Touch, name: string): string {
  const place = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  if (touch.hot === "never") return `${place} is never live. Touching the frame there does nothing.`;
  if (touch.faultA === null) return `${place} is live only through a load: it shows on a meter, but little flows.`;
  if (touch.guard === null || touch.guard === undefined)
    return `${place} is live and nothing stops a short there. It burns.`;
  if (touch.survives === false)
    return `A short at ${name} heats the wire past what it stands before ${touch.guard.at.toUpperCase()} opens.`;
  const bare = touch.bare && touch.hot !== "switched" ? " It is bare and live with everything off." : "";
  return `A short at ${name} is stopped by ${touch.guard.at.toUpperCase()}.${bare}`;
}
