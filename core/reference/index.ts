export { awgAreaMm2, circularMils } from "./awg.ts";
export { wireCapacity, wireCapacityA, type WireCapacity, type WireInPlace } from "./capacity.ts";
export { parseWireColour, wireColourName, wireColours, type WireColour } from "./colours.ts";
export { fuseMilliohm } from "./fuse-resistance.ts";
export { wireAreaMm2, wireOhmPerM, type WireConductor } from "./wire-ohm.ts";
