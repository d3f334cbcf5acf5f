import { useApp, useEditor } from "../app-context.tsx";
import { COMMANDS } from "../commands/index.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import { Glyph, type GlyphName } from "./Glyph.tsx";

const TOOLS: readonly { readonly command: string; readonly glyph: GlyphName }[] = [
  { command: "touch", glyph: "touch" },
  { command: "meter", glyph: "meter" },
  { command: "drill", glyph: "drill" },
  { command: "size-it", glyph: "size" },
];

/** Ways to try the drawing out, in a row of their own: over the Board they would hide what lies under them. */
export function BoardTools() {
  const { runner } = useApp();
  const instrument = useEditor((state) => state.instrument);
  return (
    <div className="board-tools" role="toolbar" aria-label="Try out">
      {TOOLS.map(({ command, glyph }) => {
        const { short, title, keys } = COMMANDS.find((one) => one.id === command)!;
        return (
          <button
            key={command}
            type="button"
            aria-pressed={instrument === command}
            title={`${title} (${keysText(keys![0]!, IS_MAC)})`}
            onClick={() => runner.run(command)}
          >
            <Glyph name={glyph} />
            <span>{short}</span>
          </button>
        );
      })}
    </div>
  );
}
