import type { Wire, WireEnd } from "../../../core/document/index.ts";
import { barrels, ringStuds } from "../../../core/reference/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { placeName } from "../../store/part-view.ts";

type EndName = "from" | "to";

const FIELDS: readonly { readonly key: keyof WireEnd; readonly label: string; readonly options: readonly string[] }[] =
  [
    {
      key: "terminal",
      label: "Terminal",
      options: ["ring", "fork", "push-on", "pin", "socket", "bullet", "ferrule", "butt"],
    },
    { key: "stud", label: "Stud", options: ringStuds.map((ring) => ring.stud) },
    { key: "barrel", label: "Barrel", options: barrels.map((barrel) => barrel.colour) },
  ];

/** What is crimped on each end of a wire, for the cut list and the crimp sheet. */
export function WireEnds({ wire }: { readonly wire: Wire }) {
  const drawing = useDrawing();
  return (
    <>
      {(["from", "to"] as const).map((end) => (
        <details key={end} className="wire-end">
          <summary>
            End at {placeName(drawing, wire[end])}: {endWords(wire.ends?.[end])}
          </summary>
          <EndFields wire={wire} end={end} />
        </details>
      ))}
    </>
  );
}

function EndFields({ wire, end }: { readonly wire: Wire; readonly end: EndName }) {
  const { editor } = useApp();
  const stated: WireEnd = wire.ends?.[end] ?? {};
  const set = (key: keyof WireEnd, text: string): null => {
    const { [key]: _before, ...others } = stated;
    const changed: WireEnd = text === "" ? others : { ...others, [key]: text };
    const edits = [{ op: "set-wire", id: wire.id, change: { ends: { ...wire.ends, [end]: changed } } }] as const;
    editor.dispatch({ label: `End of wire ${wire.id.toUpperCase()}`, edits });
    return null;
  };
  return FIELDS.map(({ key, label, options }) => (
    <TextField
      key={key}
      label={label}
      value={stated[key] ?? ""}
      placeholder="not said"
      options={options}
      onCommit={(text) => set(key, text)}
    />
  ));
}

function endWords(end: WireEnd | undefined): string {
  const said = [end?.terminal, end?.stud, end?.barrel].filter((word) => word !== undefined);
  return said.length === 0 ? "as usual there" : said.join(", ");
}
