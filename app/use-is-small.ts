import { useSyncExternalStore } from "react";

/** Below this width the places open as sheets over the Board; the same number stands in layout.css. */
const SMALL = matchMedia("(max-width: 899px)");

export function useIsSmall(): boolean {
  return useSyncExternalStore(
    (listener) => {
      SMALL.addEventListener("change", listener);
      return () => SMALL.removeEventListener("change", listener);
    },
    () => SMALL.matches,
  );
}
