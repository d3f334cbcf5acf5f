import { createRoot } from "react-dom/client";
import { keepOffline } from "./offline.ts";

const root = document.getElementById("root");
if (root)
  createRoot(root).render(
    <main>
      <h1>Groundstrap</h1>
    </main>,
  );
void keepOffline((switchOver) => switchOver());
