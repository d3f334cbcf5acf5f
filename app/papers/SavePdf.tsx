import type { Paper, PaperOptions, PaperSource } from "../../core/papers/index.ts";
import { everyPaper } from "./paper-set.ts";
import { usePdfSaving } from "./use-pdf-saving.ts";

interface Props {
  readonly paper: Paper;
  readonly options: PaperOptions;
  /** `null`: the analysis is not there yet. */
  readonly source: PaperSource | null;
}

/** Buttons that save the chosen paper, or all of them, as one PDF. */
export function SavePdf({ paper, options, source }: Props) {
  const { progress, setProgress, save, cancel } = usePdfSaving(options);
  if (progress !== null) {
    return (
      <div className="pdf-progress">
        <label>
          Making the PDF: {progress.words} <progress value={progress.done} max={progress.of} />
        </label>
        <button type="button" onClick={cancel}>
          Cancel
        </button>
      </div>
    );
  }
  const saveOne = () => source && void save(paper.title, [{ title: paper.title, pages: paper.pages(source, options) }]);
  const saveAll = () =>
    source &&
    void save(
      "All papers",
      everyPaper(source, options, (words, done, of) => setProgress({ words, done, of })),
    );
  return (
    <>
      <button type="button" disabled={source === null} onClick={saveOne}>
        Save as PDF
      </button>
      <button type="button" disabled={source === null} onClick={saveAll}>
        Save all papers as one PDF
      </button>
    </>
  );
}
