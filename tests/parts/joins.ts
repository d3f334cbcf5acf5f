import { kindOf, settingsOf } from "../../core/parts/index.ts";
import { model } from "./model.ts";

/** Which terminals each position joins, as "30-75". */
export function joins(kind: string): Record<string, string[]> {
  const control = kindOf(kind)!.control!(settingsOf({ id: "s", kind }))!;
  const elements = model(kind);
  return Object.fromEntries(
    control.positions.map((position) => [
      position,
      elements.flatMap((element) =>
        element.type === "contact" && "positions" in element.movedBy && element.movedBy.positions.includes(position)
          ? [`${element.a}-${element.b}`]
          : [],
      ),
    ]),
  );
}
