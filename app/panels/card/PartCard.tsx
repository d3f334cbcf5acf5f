import type { Part } from "../../../core/document/index.ts";
import { OwnPartFields } from "../../bench/OwnPartFields.tsx";
import { partName, viewOf } from "../../store/part-view.ts";
import { useWords } from "../../use-words.ts";
import { SymbolPicture } from "../SymbolPicture.tsx";
import { usePose } from "../use-pose.ts";
import { CardButtons } from "./CardButtons.tsx";
import { PartNow } from "./PartNow.tsx";
import { PartSettings } from "./PartSettings.tsx";
import { SnagsHere } from "./SnagsHere.tsx";
import { SwapKind } from "./SwapKind.tsx";
import { TerminalTable } from "./TerminalTable.tsx";

const MOST = { width: 96, height: 72 };

export function PartCard({ part }: { readonly part: Part }) {
  const words = useWords();
  const view = viewOf(part);
  const pose = usePose(part.id);
  return (
    <>
      <header className="card-head">
        <span className="card-picture">
          <SymbolPicture view={view} pose={pose} most={MOST} />
        </span>
        <div>
          <h3 className="card-title">{partName(part)}</h3>
          <p className="card-kind">{words(view.kind.title)}</p>
        </div>
      </header>
      <CardButtons commands={["turn", "flip", "duplicate", "delete"]} />
      <PartNow part={part} />
      <SnagsHere places={[part.id, ...view.terminals.map((terminal) => `${part.id}.${terminal.name}`)]} />
      <h4>Settings</h4>
      <PartSettings part={part} />
      <OwnPartFields part={part} />
      <h4>Terminals</h4>
      <TerminalTable part={part} />
      <SwapKind part={part} />
      <p className="card-about">{words(view.kind.about)}</p>
    </>
  );
}
