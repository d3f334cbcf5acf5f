import { useId } from "react";
import type { ControlFacts } from "../../store/controls-of.ts";
import { KeyPicture, PushPicture, RockerPicture, SignalPicture, EnginePicture } from "./control-pictures.tsx";

interface Props {
  readonly control: ControlFacts;
  readonly position: string;
  readonly onMove: (position: string) => void;
}

/** One control as a thing to operate: held while pressed, flipped between two positions, or turned through several. */
export function ControlTile(props: Props) {
  if (props.control.momentary) return <PushTile {...props} />;
  return props.control.positions.length === 2 ? <FlipTile {...props} /> : <TurnTile {...props} />;
}

function FlipTile({ control, position, onMove }: Props) {
  const [rest, operated] = control.positions as readonly [string, string];
  const isOn = position === operated;
  return (
    <button
      type="button"
      role="switch"
      aria-checked={isOn}
      className="control"
      data-on={isOn || undefined}
      onClick={() => onMove(isOn ? rest : operated)}
    >
      {pictureOf(control, isOn)}
      <span className="control-name">{control.name}</span>
      <span className="control-position">{position}</span>
    </button>
  );
}

function pictureOf(control: ControlFacts, isOn: boolean) {
  if (control.id === "engine") return <EnginePicture isOn={isOn} />;
  return control.noun === "vehicle signal" ? <SignalPicture isOn={isOn} /> : <RockerPicture isOn={isOn} />;
}

function PushTile({ control, position, onMove }: Props) {
  const [rest, operated] = control.positions as readonly [string, string];
  const isOn = position !== rest;
  const press = () => onMove(operated);
  const letGo = () => onMove(rest);
  return (
    <button
      type="button"
      aria-pressed={isOn}
      className="control"
      data-on={isOn || undefined}
      title="Works while it is held"
      onPointerDown={press}
      onPointerUp={letGo}
      onPointerLeave={() => isOn && letGo()}
      onPointerCancel={letGo}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if ((event.key === " " || event.key === "Enter") && !event.repeat) press();
      }}
      onKeyUp={(event) => {
        if (event.key === " " || event.key === "Enter") letGo();
      }}
      onBlur={() => isOn && letGo()}
    >
      <PushPicture isOn={isOn} />
      <span className="control-name">{control.name}</span>
      <span className="control-position">{isOn ? "held" : "push"}</span>
    </button>
  );
}

function TurnTile({ control, position, onMove }: Props) {
  const name = useId();
  return (
    <fieldset className="control control-turn" data-on={position !== control.positions[0] || undefined}>
      <legend className="control-name">{control.name}</legend>
      <KeyPicture count={control.positions.length} at={control.positions.indexOf(position)} />
      <div className="control-stops" data-own-keys>
        {control.positions.map((one) => (
          <label key={one} className="control-stop">
            <input type="radio" name={name} value={one} checked={one === position} onChange={() => onMove(one)} />
            <span>{one}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
