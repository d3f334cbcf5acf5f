import type { Level } from "../../core/rules/index.ts";

const LEVEL_WORDS: Readonly<Record<Level, string>> = {
  stop: "Stop: do not power up",
  fix: "Put right before use",
  advice: "Advice",
  "cant-check": "Can't check",
};

const SHAPES: Readonly<Record<Level, string>> = {
  stop: "M-3.3 -8 H3.3 L8 -3.3 V3.3 L3.3 8 H-3.3 L-8 3.3 V-3.3 Z",
  fix: "M0 -8.5 L8.5 6.5 H-8.5 Z",
  advice: "M0 -8 A8 8 0 1 1 -0.01 -8 Z",
  "cant-check": "M-7 -7 H7 V7 H-7 Z",
};

const SIGNS: Readonly<Record<Level, string>> = { stop: "–", fix: "!", advice: "i", "cant-check": "?" };

/** A snag's level by shape and sign, its words for those who hear the page. */
export function LevelMark({ level }: { readonly level: Level }) {
  return (
    <svg
      className={`level-mark level-${level}`}
      role="img"
      aria-label={LEVEL_WORDS[level]}
      width="20"
      height="20"
      viewBox="-10 -10 20 20"
    >
      <path d={SHAPES[level]} />
      <text y={level === "fix" ? 5 : 4.2} textAnchor="middle" aria-hidden="true">
        {SIGNS[level]}
      </text>
    </svg>
  );
}

export function levelWords(level: Level): string {
  return LEVEL_WORDS[level];
}
