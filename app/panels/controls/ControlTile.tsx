import { useId, type ComponentProps } from "react";
import type { ControlFacts } from "../../store/controls-of.ts";
import { KeyPicture, PushPicture, RockerPicture, SignalPicture, EnginePicture } from "./control-pictures.tsx";

interface Props {
  readonly control: ControlFacts;
  readonly position: string;
  readonly onMove: (position: string) => void;
}

/** One control as a thing to operate: held while pressed, flipped between two positions, or turned through several. */
export function ControlTile(props: Props) {
  const isTwoWay = props.control.positions.length === 2;
  if (props.control.momentary) return isTwoWay ? <PushTile {...props} /> : <SpringTile {...props} />;
  return isTwoWay ? <FlipTile {...props} /> : <TurnTile {...props} />;
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
  return (
    <button
      type="button"
      aria-pressed={isOn}
      className="control"
      data-on={isOn || undefined}
      title="Works while it is held"
      {...whileHeld(
        isOn,
        () => onMove(operated),
        () => onMove(rest),
      )}
    >
      <PushPicture isOn={isOn} />
      <span className="control-name">{control.name}</span>
      <span className="control-position">{isOn ? "held" : "push"}</span>
    </button>
  );
}

/** Springs back from each of its positions: every one is a place to press and hold. */
function SpringTile({ control, position, onMove }: Props) {
  const [rest, ...ways] = control.positions as readonly [string, ...string[]];
  return (
    <fieldset className="control control-turn" data-on={position !== rest || undefined}>
      <legend className="control-name">{control.name}</legend>
      <KeyPicture count={control.positions.length} at={control.positions.indexOf(position)} />
      <div className="control-stops">
        {ways.map((way) => (
          <button
            key={way}
            type="button"
            className="control-hold"
            aria-pressed={position === way}
            title={`${way} while it is held, then back to ${rest}`}
            {...whileHeld(
              position === way,
              () => onMove(way),
              () => onMove(rest),
            )}
          >
            {way}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** What a button listens to that works only while pointer or key holds it down. */
function whileHeld(isHeld: boolean, press: () => void, letGo: () => void): ComponentProps<"button"> {
  const letGoIfHeld = () => isHeld && letGo();
  return {
    onPointerDown: press,
    onPointerUp: letGo,
    onPointerLeave: letGoIfHeld,
    onPointerCancel: letGo,
    onContextMenu: (event) => event.preventDefault(),
    onKeyDown: (event) => {
      if ((event.key === " " || event.key === "Enter") && !event.repeat) press();
    },
    onKeyUp: (event) => {
      if (event.key === " " || event.key === "Enter") letGo();
    },
    onBlur: letGoIfHeld,
  };
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
