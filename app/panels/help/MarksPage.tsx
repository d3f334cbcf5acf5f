import type { Level } from "../../../core/rules/index.ts";
import { LevelMark, levelWords } from "../LevelMark.tsx";
import { useWords } from "../../use-words.ts";
import { MarkPicture } from "../TerminalMark.tsx";

const STANDINGS = [
  { mark: "always", words: "Always hot: has battery volts in every position of every control." },
  {
    mark: "at-rest",
    words: "Hot at rest: live with the key out and everything off, though some position makes it dead.",
  },
  { mark: "switched", words: "Switched: live only while something is operated." },
  { mark: "ground", words: "Ground side: joined to battery negative by wires alone." },
  { mark: "dead", words: "Never hot in any position." },
] as const;

const LEVELS: readonly Level[] = ["stop", "fix", "advice", "cant-check"];

export function MarksPage() {
  const say = useWords();
  return (
    <>
      <h4>On terminals</h4>
      <ul className="legend">
        {STANDINGS.map(({ mark, words }) => (
          <li key={mark}>
            <MarkPicture mark={mark} /> {say(words)}
          </li>
        ))}
        <li>
          <MarkPicture mark="at-rest" viaLoad /> Hollow with a bar under it: only through a load, lamp or coil. A meter
          shows volts; a dead short draws little.
        </li>
        <li>A ring around a mark: live at this moment, in the situation the Controls stand in.</li>
        <li>A warning triangle: bare metal that a snag names.</li>
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
