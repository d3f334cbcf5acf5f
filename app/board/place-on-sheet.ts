import { splitAddress } from "../../core/document/index.ts";
import { type Point, routeLength } from "../../core/geometry/index.ts";
import type { Scene } from "./paint/scene.ts";

/** Where a terminal, a part's middle or a wire's middle lies; `null` when it is not on the sheet. Grid steps. */
export function placeOnSheet(place: string, scene: Scene): Point | null {
  const terminal = scene.parts.get(splitAddress(place)[0])?.picture.terminals.find(({ address }) => address === place);
  if (terminal !== undefined) return terminal.at;
  const part = scene.parts.get(place)?.picture;
  if (part !== undefined) return [(part.box.left + part.box.right) / 2, (part.box.top + part.box.bottom) / 2];
  const wire = scene.wires.get(place)?.picture;
  return wire === undefined ? null : middleOf(wire.route);
}

function middleOf(route: readonly Point[]): Point {
  let left = routeLength(route) / 2;
  for (let i = 1; i < route.length; i++) {
    const [a, b] = [route[i - 1]!, route[i]!];
    const length = Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]);
    if (left <= length && length > 0)
      return [a[0] + ((b[0] - a[0]) * left) / length, a[1] + ((b[1] - a[1]) * left) / length];
    left -= length;
  }
  return route[0]!;
}
