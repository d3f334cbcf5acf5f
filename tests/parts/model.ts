import { modelOf, terminalsOf, type Element, type Surroundings } from "../../core/parts/index.ts";

type Props = Readonly<Record<string, unknown>>;

/** Elements of a part of this kind with these props, on a 12 V vehicle unless said otherwise. */
export function model(kind: string, props: Props = {}, surroundings: Partial<Surroundings> = {}): readonly Element[] {
  return modelOf({ id: "p", kind, props }, { nominalV: 12, seriesUpper: false, ...surroundings });
}

/** The only element of one type; fails when there is none or more than one. */
export function only<T extends Element["type"]>(elements: readonly Element[], type: T): Extract<Element, { type: T }> {
  const found = elements.filter((element) => element.type === type);
  if (found.length !== 1) throw new Error(`wanted one ${type}, got ${found.length}`);
  return found[0] as Extract<Element, { type: T }>;
}

/** Terminal name to its covers, wired and unwired. */
export function covers(kind: string, props: Props = {}): Record<string, string> {
  return Object.fromEntries(
    terminalsOf({ id: "p", kind, props }).map(({ name, cover }) => [name, `${cover.wired} ${cover.unwired}`]),
  );
}
