import { chassis } from "./chassis.ts";
import { diode } from "./diode.ts";
import { fuse } from "./fuse.ts";
import { onOffSwitch } from "./switch.ts";

/** Kinds the program itself puts into a drawing, when a remedy asks for one. */
export const fitted = { fuse, diode, switch: onOffSwitch, chassis } as const;

/** Settings that turn a part into the better one of its family; they hold for any part that has the setting. */
export const changedTo = {
  /** A relay without the contact that is closed at rest. */
  withoutRestContact: { contact: "make" },
  suppressedEitherWay: { suppression: "resistor" },
  resetByHand: { reset: "manual" },
  socketsOnFedHalf: { fedSide: "sockets" },
} as const;
