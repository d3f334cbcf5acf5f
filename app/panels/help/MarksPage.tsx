import type { Level } from "../../../core/rules/index.ts";
import { LevelMark, levelWords } from "../LevelMark.tsx";
import { TerminalMark } from "../TerminalMark.tsx";

const STANDINGS = [
  { hot: "always", words: "Always hot: has battery volts in every position of every control." },
  {
    hot: "at-rest",
    words: "Hot at rest: live with the key out and everything off, though some position makes it dead.",
  },
  { hot: "switched", words: "Switched: live only while something is operated." },
  { hot: "never", words: "Never hot: ground side, or joined to nothing." },
] as const;

const LEVELS: readonly Level[] = ["stop", "fix", "advice", "cant-check"];

export function MarksPage() {
  return (
    <>
      <h4>On terminals</h4>
      <ul className="legend">
        {STANDINGS.map(({ hot, words }) => (
          <li key={hot}>
            <TerminalMark standing={{ hot, via: null }} /> {words}
          </li>
        ))}
        <li>
          <TerminalMark standing={{ hot: "at-rest", via: "load" }} /> A stroke across: only through a load, lamp or
          coil. A meter shows volts; a dead short draws little.
        </li>
      </ul>
      <h4>On snags</h4>
      <ul className="legend">
        {LEVELS.map((level) => (
          <li key={level}>
            <LevelMark level={level} /> {levelWords(level)}
          </li>
        ))}
      </ul>
    </>
  );
}
