import type { PartKind } from "../../core/parts/index.ts";

/** Props that show a kind in all its forms: nothing said, each choice and flag the other way, its counts at both ends. */
export function variants(kind: PartKind): Record<string, unknown>[] {
  const each = Object.entries(kind.settings).flatMap(([key, setting]): Record<string, unknown>[] => {
    if (setting.type === "choice") return (setting.options ?? []).map(({ value }) => ({ [key]: value }));
    if (setting.type === "flag") return [{ [key]: !setting.fallback }];
    if (setting.type === "whole") return [setting.min, setting.max].map((count) => ({ [key]: count }));
    if (setting.type === "quantity") return [{ [key]: Math.min(setting.max ?? 1, Math.max(setting.min ?? 1, 14.2)) }];
    if (setting.type === "list")
      return [{ [key]: [{}] }, { [key]: Array.from({ length: 12 }, () => falseRow(setting.row)) }];
    return [];
  });
  return [{}, ...each];
}

/** A row with every flag the other way. */
function falseRow(row: PartKind["settings"] | undefined): Record<string, unknown> {
  const flags = Object.entries(row ?? {}).filter(([, setting]) => setting.type === "flag");
  return Object.fromEntries(flags.map(([key, { fallback }]) => [key, !fallback]));
}
