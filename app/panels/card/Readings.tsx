import { useEditor } from "../../app-context.tsx";

export type ReadingRow = readonly [name: string, value: string];

/** Values of the present situation; greyed while a newer answer is on its way. */
export function Readings({ rows }: { readonly rows: readonly ReadingRow[] }) {
  const isLate = useEditor((state) => state.analysis !== "done");
  if (rows.length === 0) return null;
  return (
    <dl className="readings" data-late={isLate || undefined} aria-label="Now">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
