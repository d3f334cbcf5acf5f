import { useMemo } from "react";
import { createPortal } from "react-dom";
import { paperSizeMm, type PaperOptions } from "../../core/papers/index.ts";

interface Props {
  readonly title: string;
  readonly options: PaperOptions;
  /** SVG files of true size. */
  readonly pages: readonly string[];
}

/** A paper as it will be printed. A copy outside the app is what the printer gets; see print.css. */
export function PaperView({ title, options, pages }: Props) {
  const pictures = useMemo(() => pages.map(pictureOf), [pages]);
  const [width, height] = paperSizeMm(options);
  const shown = pictures.map((picture, index) => (
    <img key={index} src={picture} alt={pages.length === 1 ? title : `${title}, page ${index + 1}`} />
  ));
  return (
    <>
      <section className="paper-view" aria-label={title}>
        {shown}
      </section>
      {createPortal(
        <div className="printed" aria-hidden="true">
          <style>{`@page { size: ${width}mm ${height}mm; margin: 0 } .printed img { width: ${width}mm; height: ${height}mm }`}</style>
          {shown}
        </div>,
        document.body,
      )}
    </>
  );
}

/** A page as a picture of its own, kept out of the app's styles. */
function pictureOf(page: string): string {
  return `data:image/svg+xml,${encodeURIComponent(page)}`;
}
