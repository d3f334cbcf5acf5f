import type { Pose } from "../../core/parts/index.ts";
import { useEditor } from "../app-context.tsx";

/** How a part's symbol stands at this moment. */
export function usePose(id: string): Pose {
  const position = useEditor((state) => state.positions[id]);
  const pulledIn = useEditor((state) => state.present?.parts[id]?.pulledIn ?? undefined);
  const on = useEditor((state) => state.present?.parts[id]?.on ?? undefined);
  return {
    ...(position !== undefined && { position }),
    ...(pulledIn !== undefined && { pulledIn }),
    ...(on !== undefined && { on }),
  };
}
