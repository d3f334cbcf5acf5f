import type { Setting } from "../../core/parts/index.ts";

export interface SettingFieldProps {
  readonly setting: Setting<unknown>;
  /** As the file gives it; `undefined`: nothing said. */
  readonly given: unknown;
  readonly onCommit: (value: unknown) => void;
}
