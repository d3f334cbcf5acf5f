import { parseWireColour, wireColours } from "../../core/reference/index.ts";
import { TextField } from "./TextField.tsx";

interface Props {
  readonly value: string | undefined;
  /** What stands in the empty field. */
  readonly unsaid: string;
  readonly onCommit: (colour: string | undefined) => void;
}

/** The colour of a wire's insulation: letters or words typed, or a swatch pressed; with Shift pressed the swatch is the tracer. */
export function ColourField({ value, unsaid, onCommit }: Props) {
  const base = value === undefined ? null : (parseWireColour(value)?.base.code ?? null);
  return (
    <div className="colour-field">
      <TextField
        label="Colour"
        value={value ?? ""}
        placeholder={unsaid}
        help="Letters or words: RD or red, RDBU or red/blue for a blue tracer."
        onCommit={(text) => {
          const colour = text === "" ? undefined : colourOf(text);
          if (colour === null) return `Got "${text}", wanted colours such as RD, red, RDBU or red/blue`;
          onCommit(colour);
          return null;
        }}
      />
      <fieldset className="swatches" aria-label="Colours">
        {wireColours.map(({ code, name, rgb }) => (
          <button
            key={code}
            type="button"
            aria-label={name}
            aria-pressed={base === code}
            title={`${name}; with Shift: as tracer`}
            style={{ background: rgb }}
            onClick={(event) => onCommit(event.shiftKey && base !== null && base !== code ? base + code : code)}
          />
        ))}
      </fieldset>
    </div>
  );
}

/** Words people use for colours the standard calls otherwise. */
const OTHER_NAMES: Readonly<Record<string, string>> = { purple: "VT", gray: "GY" };

/** The letters of the standard for what was typed; `null` when it names no colour. */
function colourOf(text: string): string | null {
  const letters = parseWireColour(text);
  if (letters !== null) return letters.base.code + (letters.tracer?.code ?? "");
  const words = text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "" && word !== "with" && word !== "tracer");
  const codes = words.map((word) => OTHER_NAMES[word] ?? wireColours.find((colour) => colour.name === word)?.code);
  return codes.length >= 1 && codes.length <= 2 && codes.every((code) => code !== undefined) ? codes.join("") : null;
}
