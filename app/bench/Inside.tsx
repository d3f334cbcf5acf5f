import { ChoiceField } from "../fields/ChoiceField.tsx";
import { FlagField } from "../fields/FlagField.tsx";
import { TextField } from "../fields/TextField.tsx";
import {
  changedElement,
  coilsOf,
  elementTitle,
  endsOf,
  placeOf,
  placesFor,
  placeWords,
  RECIPES,
  withCoilNamed,
  withElement,
  withoutElement,
  withRecipe,
} from "./behaviour.ts";
import { ElementSettings } from "./ElementSettings.tsx";
import type { BenchElement, BenchSymbol } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  readonly onChange: (symbol: BenchSymbol) => void;
}

/** What is between the terminals: plain elements by their trade names. */
export function Inside({ symbol, onChange }: Props) {
  return (
    <section className="bench-group" aria-label="Inside">
      <h3>Inside</h3>
      {symbol.elements.length === 0 && <p className="quiet">Nothing yet: no current goes through it.</p>}
      <ol className="bench-list">
        {symbol.elements.map((element, index) => (
          <li key={index} aria-label={`${elementTitle(element)}, ${index + 1}`}>
            <ElementFields symbol={symbol} index={index} element={element} onChange={onChange} />
          </li>
        ))}
      </ol>
      <fieldset>
        <legend className="quiet">Put inside</legend>
        <div className="row-buttons">
          {RECIPES.map((recipe) => (
            <button
              key={recipe.label}
              type="button"
              disabled={symbol.terminals.length === 0}
              onClick={() => onChange(withRecipe(symbol, recipe))}
            >
              {recipe.label}
            </button>
          ))}
        </div>
      </fieldset>
    </section>
  );
}

interface ElementProps extends Props {
  readonly index: number;
  readonly element: BenchElement;
}

function ElementFields({ symbol, index, element, onChange }: ElementProps) {
  const set = (change: Readonly<Record<string, unknown>>) => onChange(withElement(symbol, index, change));
  const places = placesFor(symbol);
  return (
    <>
      <h4>{elementTitle(element)}</h4>
      {endsOf(element).map(([name, words]) => {
        const value = placeOf(element, name);
        const isListed = places.some((place) => place.value === value);
        return (
          <ChoiceField
            key={name}
            label={words}
            value={value}
            options={isListed ? places : [{ value, label: `${placeWords(value)}: choose` }, ...places]}
            onCommit={(place) => set({ [name]: place })}
          />
        );
      })}
      {element.type === "coil" && <CoilName symbol={symbol} index={index} element={element} onChange={onChange} />}
      {(element.type === "contact" || element.type === "source") && (
        <MovedBy symbol={symbol} index={index} element={element} onChange={onChange} />
      )}
      <ElementSettings element={element} onChange={set} />
      <p className="row-buttons">
        <button type="button" onClick={() => onChange(withoutElement(symbol, index))}>
          Take out
        </button>
      </p>
    </>
  );
}

function CoilName({ symbol, index, element, onChange }: ElementProps) {
  const rename = (name: string) => {
    if (!/^[A-Za-z0-9+_-]{1,16}$/.test(name)) return `Got "${name.slice(0, 20)}", wanted 1 to 16 letters or digits`;
    if (coilsOf(symbol).filter((one) => one === name).length > 0) return `There is a coil ${name} already`;
    onChange(withCoilNamed(symbol, index, name));
    return null;
  };
  return <TextField label="Coil's name" value={element.name ?? "coil"} onCommit={rename} />;
}

const OWN_CONTROL = "its own control";

/** What closes a contact, or in which positions a source gives. */
function MovedBy({ symbol, index, element, onChange }: ElementProps) {
  const coils = coilsOf(symbol);
  const { positions = [], coil } = element;
  const put = (changed: BenchElement) =>
    onChange({ ...symbol, elements: symbol.elements.map((one, at) => (at === index ? changed : one)) });
  const move = (by: string) =>
    put(
      changedElement(element, by === OWN_CONTROL ? { coil: undefined, positions } : { coil: by, positions: undefined }),
    );
  return (
    <>
      {element.type === "contact" && (
        <ChoiceField
          label="Moved by"
          value={coil ?? OWN_CONTROL}
          options={[
            { value: OWN_CONTROL, label: "The symbol's own control" },
            ...(coil === "" ? [{ value: "", label: "nothing yet: choose" }] : []),
            ...coils.map((name) => ({ value: name, label: `Coil ${name}` })),
          ]}
          onCommit={move}
        />
      )}
      {coil === undefined &&
        symbol.positions.map((position) => (
          <FlagField
            key={position}
            label={element.type === "source" ? `Gives at "${position}"` : `Closed at "${position}"`}
            value={positions.includes(position)}
            onCommit={(isClosed) => {
              const kept = symbol.positions.filter((one) => (one === position ? isClosed : positions.includes(one)));
              // A source that names no position gives always.
              put(
                changedElement(element, {
                  positions: element.type === "source" && kept.length === 0 ? undefined : kept,
                }),
              );
            }}
          />
        ))}
      {coil === undefined && symbol.positions.length === 0 && element.type === "contact" && (
        <p className="quiet">The symbol has no control yet: give it positions below.</p>
      )}
    </>
  );
}
