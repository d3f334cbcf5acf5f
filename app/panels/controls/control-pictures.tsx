interface Flipped {
  readonly isOn: boolean;
}

const BOX = { className: "control-picture", width: 44, height: 44, viewBox: "0 0 44 44", "aria-hidden": true } as const;

/** A rocker seen from the front: the pressed half lies in shade, a bar or a ring tells which half that is. */
export function RockerPicture({ isOn }: Flipped) {
  return (
    <svg {...BOX}>
      <rect x="10" y="3" width="24" height="38" rx="4" className="body" />
      <path d={isOn ? "M12 6 H32 L30 22 H14 Z" : "M14 22 H30 L32 38 H12 Z"} className="pressed" />
      <path d={isOn ? "M14 22 H30 L33 39 H11 Z" : "M11 5 H33 L30 22 H14 Z"} className="raised" />
      <path d="M22 9 V16" className="sign" />
      <circle cx="22" cy="32" r="3.4" className="sign" />
    </svg>
  );
}

/** A push button in its collar, down while held. */
export function PushPicture({ isOn }: Flipped) {
  return (
    <svg {...BOX}>
      <circle cx="22" cy="22" r="18" className="body" />
      <circle cx="22" cy="22" r={isOn ? 11 : 13} className={isOn ? "pressed" : "raised"} />
    </svg>
  );
}

/** A key in its barrel; stops spread over the upper half. */
export function KeyPicture({ count, at }: { readonly count: number; readonly at: number }) {
  const angle = (stop: number) => -60 + (stop * 120) / Math.max(1, count - 1);
  return (
    <svg {...BOX}>
      <circle cx="22" cy="24" r="16" className="body" />
      {Array.from({ length: count }, (_, stop) => (
        <path key={stop} d="M22 4 V8" className="sign" transform={`rotate(${angle(stop)} 22 24)`} />
      ))}
      <g transform={`rotate(${angle(Math.max(0, at))} 22 24)`}>
        <rect x="18" y="10" width="8" height="28" rx="3" className={at > 0 ? "pressed" : "raised"} />
        <path d="M22 12 V22" className="sign" />
      </g>
    </svg>
  );
}

/** A wire of the vehicle: live it shows the step up, dead the flat line. */
export function SignalPicture({ isOn }: Flipped) {
  return (
    <svg {...BOX}>
      <rect x="4" y="9" width="36" height="26" rx="4" className="body" />
      <path d={isOn ? "M9 29 H17 V15 H35" : "M9 29 H35"} className="trace" />
    </svg>
  );
}

/** A belt over two pulleys, drawn in motion lines while it runs. */
export function EnginePicture({ isOn }: Flipped) {
  return (
    <svg {...BOX}>
      <path d="M13 12 H33 A7 7 0 0 1 35 25 L16 38 A10 10 0 0 1 13 12 Z" className="body" />
      <circle cx="14" cy="26" r="8" className={isOn ? "pressed" : "raised"} />
      <circle cx="32" cy="18" r="4.5" className={isOn ? "pressed" : "raised"} />
      {isOn && <path d="M24 6 H36 M27 2 H39 M26 38 H38" className="trace" />}
    </svg>
  );
}
