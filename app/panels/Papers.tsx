import { useDeferredValue, useMemo, useState } from "react";
import { papers, type Paper, type PaperOptions } from "../../core/papers/index.ts";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { FlagField } from "../fields/FlagField.tsx";
import { titleOf } from "../keeping/drawing-shelf.ts";
import { fileName, saveFile } from "../keeping/files.ts";
import { Dialog } from "./Dialog.tsx";
import { OpenFromCode } from "../papers/OpenFromCode.tsx";
import "../papers/papers.css";
import { usePaperSource } from "../papers/use-paper-source.ts";
import { SavePdf } from "../papers/SavePdf.tsx";
import { PaperView } from "./PaperView.tsx";

const SIZES = ["A5", "A4", "Letter", "Half-letter"].map((size) => ({ value: size, label: size }));

/** The papers of this drawing, to look at, print or save. */
export function Papers() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useEditor((state) => state.preferences.words);
  const [paper, setPaper] = useState<Paper>(papers[0]!);
  const [size, setSize] = useState<PaperOptions["size"]>("A5");
  const [landscape, setLandscape] = useState(true);
  const options = useDeferredValue(useMemo(() => ({ size, landscape, words }), [size, landscape, words]));
  const source = usePaperSource();
  const pages = useMemo(() => (source === null ? null : paper.pages(source, options)), [paper, options, source]);
  const save = async () => {
    if (source === null) return;
    const name = fileName(`${titleOf(drawing)} ${paper.title}`, paper.extension);
    const text = paper.make(source, options);
    if (await saveFile({ name, media: paper.media, text })) editor.say(`${paper.title} saved as ${name}`);
  };
  return (
    <Dialog title="Papers" className="papers">
      <div className="papers-choice">
        <ChoiceField
          label="Paper"
          value={paper.kind}
          options={papers.map(({ kind, title }) => ({ value: kind, label: title }))}
          help={paper.about}
          onCommit={(kind) => setPaper(papers.find((one) => one.kind === kind)!)}
        />
        <ChoiceField
          label="Sheet"
          value={size}
          options={SIZES}
          onCommit={(value) => setSize(value as PaperOptions["size"])}
        />
        <FlagField label="Landscape" value={landscape} onCommit={setLandscape} />
        <div className="row-buttons">
          <button type="button" className="primary" disabled={pages === null} onClick={() => window.print()}>
            Print
          </button>
          <button type="button" disabled={pages === null} onClick={() => void save()}>
            Save as {paper.extension.toUpperCase()}
          </button>
          <SavePdf paper={paper} options={options} source={source} />
        </div>
        <p className="quiet">The card's SVG and every PDF carry the circuit: open one to have the drawing back.</p>
        <JobRecords />
        <OpenFromCode />
      </div>
      {pages === null ? (
        <p className="quiet">Waiting for the analysis…</p>
      ) : (
        <PaperView title={paper.title} options={options} pages={pages} />
      )}
    </Dialog>
  );
}

/** On to what is recorded of the finished job. */
function JobRecords() {
  const { editor } = useApp();
  return (
    <div className="row-buttons">
      <button type="button" onClick={() => editor.show("readings")}>
        Take readings
      </button>
      <button type="button" onClick={() => editor.show("revisions")}>
        Revisions
      </button>
    </div>
  );
}
