import { milliohms, ratingAmps } from "./limits.ts";
import { flag, quantity, rating } from "./setting.ts";

/** What every hand-operated contact can be told: its rating, its resistance, whether it springs back. */
export function contactSettings() {
  return {
    ratedA: rating("Rating", "A", {
      ...ratingAmps,
      help: "Most amps the contacts may switch, as printed on the body.",
    }),
    milliohm: quantity("Contact resistance", "mohm", 10, {
      ...milliohms,
      help: "Resistance of one closed contact; a worn or cheap switch has more.",
    }),
    momentary: flag("Springs back", false, "Works only while it is held, like a horn button."),
  };
}
