export { formatDays } from "./days.ts";
export { formatLength, parseLengthM, type UnitSystem } from "./length.ts";
export { formatNumber, parseNumber } from "./number.ts";
export { formatQuantity, parseQuantity, unitSymbol, type Unit } from "./quantity.ts";
export { typedErrorText, type Typed } from "./typed.ts";
export { formatWireSize, parseWireSize, wireSizeText, type WireSize } from "./wire-size.ts";
