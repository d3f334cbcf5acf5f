import { useDeferredValue, useMemo, useState } from "react";
import { systemOf } from "../../core/document/index.ts";
import { formatQuantity } from "../../core/units/index.ts";
import { useDrawing } from "../app-context.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { troublesOf } from "./check-symbol.ts";
import type { BenchSymbol } from "./symbol.ts";
import { tryOut, type Lead, type TryOutAnswer } from "./try-out.ts";

const LEADS = [
  { value: "open", label: "open" },
  { value: "plus", label: "to plus" },
  { value: "minus", label: "to minus" },
];

/** What the symbol does while it is being made: a battery on its terminals, or what keeps it from being tried. */
export function TryOut({ symbol }: { readonly symbol: BenchSymbol }) {
  const tried = useDeferredValue(symbol);
  const troubles = useMemo(() => troublesOf(tried), [tried]);
  return (
    <section className="bench-try" aria-label="Try it">
      <h3 className="sleeve">Try it</h3>
      {troubles.length === 0 ? (
        <Tried symbol={tried} />
      ) : (
        <ul className="bench-troubles">
          {troubles.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The symbol must be one without troubles. */
function Tried({ symbol }: { readonly symbol: BenchSymbol }) {
  const { nominalV } = systemOf(useDrawing());
  const [chosen, setChosen] = useState<Readonly<Record<string, Lead>>>({});
  const [position, setPosition] = useState("off");
  const leads = useMemo(() => ({ ...usualLeads(symbol), ...chosen }), [symbol, chosen]);
  const answer = useMemo(() => tryOut(symbol, { leads, position, nominalV }), [symbol, leads, position, nominalV]);
  return (
    <div className="bench-readings">
      <ul className="bench-leads" aria-label="At the terminals">
        {symbol.terminals.map(({ name }) => (
          <li key={name}>
            <ChoiceField
              label={`Terminal ${name}`}
              value={leads[name] ?? "open"}
              options={LEADS}
              onCommit={(lead) => setChosen({ ...chosen, [name]: lead as Lead })}
            />
            <strong>{terminalWords(answer.terminals[name])}</strong>
          </li>
        ))}
        {symbol.positions.length > 0 && (
          <li>
            <ChoiceField
              label="Control"
              value={symbol.positions.includes(position) ? position : "off"}
              options={symbol.positions.map((one) => ({ value: one, label: one }))}
              onCommit={setPosition}
            />
          </li>
        )}
      </ul>
      <ul className="bench-inside" aria-label="What each does">
        {!answer.settled && (
          <li data-bad>Nothing settles: plus meets minus with nothing between them, or a contact chatters.</li>
        )}
        {answer.inside.map(({ text, isBad }, index) => (
          <li key={index} data-bad={isBad || undefined}>
            {text}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Plus on the first terminal, minus on the last one. */
function usualLeads({ terminals }: BenchSymbol): Record<string, Lead> {
  const [first] = terminals;
  const last = terminals.at(-1);
  if (first === undefined || last === undefined || first === last) return {};
  return { [first.name]: "plus", [last.name]: "minus" };
}

/** Less than the tester's own leads lose is nothing. */
const NOTHING_V = 0.005;
const NOTHING_A = 1e-6;

function terminalWords(at: TryOutAnswer["terminals"][string] | undefined): string {
  if (at === undefined || at.volts === null) return "joined to nothing";
  const volts = formatQuantity(Math.abs(at.volts) < NOTHING_V ? 0 : at.volts, "V");
  if (Math.abs(at.amps) < NOTHING_A) return `${volts}, no current`;
  return `${volts}, ${formatQuantity(Math.abs(at.amps), "A")} ${at.amps > 0 ? "in" : "out"}`;
}
