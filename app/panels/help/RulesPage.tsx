import { rules } from "../../../core/rules/index.ts";
import { useWords } from "../../use-words.ts";
import { LevelMark } from "../LevelMark.tsx";

/** Every rule: what it means and where its limit comes from. */
export function RulesPage() {
  const words = useWords();
  return (
    <dl className="rules">
      {rules.map((rule) => (
        <div key={rule.id}>
          <dt>
            <LevelMark level={rule.level} /> <code>{rule.id}</code>
          </dt>
          <dd>
            {words(rule.about)} <span className="quiet">{rule.source}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
