import { useState } from "react";
import { Dialog } from "../Dialog.tsx";
import { CautionsPage } from "./CautionsPage.tsx";
import { ExactnessPage } from "./ExactnessPage.tsx";
import { KeysPage } from "./KeysPage.tsx";
import { MarksPage } from "./MarksPage.tsx";
import { PartsPage } from "./PartsPage.tsx";
import { RulesPage } from "./RulesPage.tsx";
import { StartPage } from "./StartPage.tsx";

/** Pages of the help. To add one: its file, and its line here. */
const PAGES = [
  { id: "start", title: "First steps", Page: StartPage },
  { id: "marks", title: "Marks", Page: MarksPage },
  { id: "parts", title: "Symbols and settings", Page: PartsPage },
  { id: "rules", title: "Snags", Page: RulesPage },
  { id: "keys", title: "Keys", Page: KeysPage },
  { id: "exact", title: "How exact", Page: ExactnessPage },
  { id: "cautions", title: "Cautions", Page: CautionsPage },
];

export function Help() {
  const [open, setOpen] = useState("start");
  const { Page, title } = PAGES.find((page) => page.id === open)!;
  return (
    <Dialog title="Help" className="help">
      <nav className="help-pages" aria-label="Help pages">
        {PAGES.map((page) => (
          <button
            key={page.id}
            type="button"
            aria-current={page.id === open ? "page" : undefined}
            onClick={() => setOpen(page.id)}
          >
            {page.title}
          </button>
        ))}
      </nav>
      <article className="help-page" aria-label={title}>
        <h3>{title}</h3>
        <Page />
      </article>
    </Dialog>
  );
}
