export { freeSpot } from "./free-spot.ts";
export { placeMissing, tidyUp } from "./place-missing.ts";
