import { nanoid } from "nanoid";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./styles/index.css";
import { AppContext, type AppTools } from "./app-context.tsx";
import { App } from "./App.tsx";
import { OwnSymbols } from "./bench/own-symbols.ts";
import { createRunner } from "./commands/run-command.ts";
import { browserStorage } from "./keeping/browser-storage.ts";
import { DrawingShelf } from "./keeping/drawing-shelf.ts";
import { fileName, saveFile } from "./keeping/files.ts";
import { Keeper } from "./keeping/keeper.ts";
import { browserKeyValue } from "./keeping/key-value.ts";
import { LastWords } from "./keeping/last-words.ts";
import { browserTabs } from "./keeping/tabs.ts";
import { keepOffline } from "./offline.ts";
import { browserOutside } from "./outside.ts";
import { heedCodes } from "./papers/open-code.ts";
import { Boundary } from "./panels/Boundary.tsx";
import { fetchRest } from "./panels/index.ts";
import { Editor } from "./store/editor.ts";
import { Analyst, type WorkerPort } from "./worker/analyst.ts";

const DARK = matchMedia("(prefers-color-scheme: dark)");
const now = () => Date.now();
const storage = browserStorage();

const editor = new Editor({
  now,
  preferences: storage,
  deviceIsDark: () => DARK.matches,
  ask: (question) => analyst.ask(question),
});

const analyst = new Analyst({
  makeWorker: () =>
    new Worker(new URL("./worker/analysis.worker.ts", import.meta.url), { type: "module" }) as WorkerPort,
  onNews: (news) => editor.hear(news),
});

const keeper = new Keeper(editor, {
  shelf: new DrawingShelf(browserKeyValue(), now),
  lastWords: new LastWords(storage),
  tabs: browserTabs(),
  newId: () => nanoid(10),
  now,
  saveToFile: () => outside.saveFile(),
  saveText: (title, text) => void saveFile({ name: fileName(title, "json"), media: "application/json", text }),
  askToPersist: () => void navigator.storage?.persist?.().catch(() => false),
  setAddress: (search) => history.replaceState(null, "", `${location.pathname}${search}`),
});

const outside = browserOutside(editor, keeper);
const tools: AppTools = {
  editor,
  keeper,
  symbols: new OwnSymbols({ kept: browserKeyValue(), newId: () => nanoid(10) }),
  runner: createRunner(editor, outside),
  consult: analyst.consult.bind(analyst),
};

DARK.addEventListener("change", () => editor.followDevice());
// A phone may end the page without another word once it is out of sight.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") void keeper.flush();
});
addEventListener("pagehide", () => keeper.leave());
addEventListener("beforeunload", (event) => {
  // What can't be kept here is asked about before it goes.
  const { status } = editor.state.keeping;
  if (status === "refused" || status === "conflict") event.preventDefault();
});

/** When the drawing is up and the first marks are on it. */
const REST_AFTER_MS = 1500;

/** The Board draws its lettering once, so the typeface must be there before it does. */
async function start(): Promise<void> {
  await Promise.all([keeper.start(location.search), document.fonts.load("12px Inter", "Ω").catch(() => [])]);
  createRoot(document.getElementById("root")!).render(
    <StrictMode>
      <Boundary onBroken={() => void keeper.flush()} onSave={() => outside.saveFile()}>
        <AppContext value={tools}>
          <App />
        </AppContext>
      </Boundary>
    </StrictMode>,
  );
}

void tools.symbols.look();
void start().then(() => {
  heedCodes(editor, keeper);
  setTimeout(fetchRest, REST_AFTER_MS);
});
void keepOffline((switchOver) =>
  editor.notify({
    about: "update",
    tone: "plain",
    text: "A newer version is ready.",
    action: { label: "Use it now", run: switchOver },
  }),
);
