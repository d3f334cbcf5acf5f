import { cautions } from "../../../core/reference/index.ts";
import { useWords } from "../../use-words.ts";

export function CautionsPage() {
  const words = useWords();
  return (
    <>
      <p>
        <strong>A plan is not an inspection.</strong> Follow the vehicle maker's instructions and local code, and have
        licensed people do what the law gives to them.
      </p>
      <ul className="cautions">
        {cautions.map((caution) => (
          <li key={caution.id}>
            {words(caution.text)}
            <span className="quiet"> {caution.fromMemory ? "From memory." : `Seen in: ${caution.source}.`}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
