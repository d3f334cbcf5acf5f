import { useEffect, useState } from "react";
import { useEditor } from "../app-context.tsx";

/** Long enough for an edit and what it brings about to be heard as one. */
const GATHER_MS = 150;

/** Tells those who hear the page what just happened; of several things in quick succession the last. */
export function LiveRegion() {
  const said = useEditor((state) => state.said);
  const [heard, setHeard] = useState(said);
  useEffect(() => {
    const timer = setTimeout(() => setHeard(said), GATHER_MS);
    return () => clearTimeout(timer);
  }, [said]);
  // The same words twice are two sayings: an invisible difference makes them so.
  const again = heard.turn % 2 === 0 ? "" : " ";
  return (
    <output className="unseen" aria-live="polite">
      {heard.text}
      {again}
    </output>
  );
}
