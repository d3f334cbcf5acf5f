import { awningLamps, awningLampsPutRight } from "./awning-lamps.ts";
import { camper, camperPutRight } from "./camper.ts";
import type { Example } from "./example.ts";
import { groomingVan, groomingVanPutRight } from "./grooming-van.ts";
import { orchardTractor, orchardTractorPutRight } from "./orchard-tractor.ts";
import { recoveryBed, recoveryBedPutRight } from "./recovery-bed.ts";
import { tipper, tipperPutRight } from "./tipper.ts";

export type { Example } from "./example.ts";

/** Every demo, each followed by its put-right twin; the first opens on a first visit. */
export const EXAMPLES: readonly Example[] = [
  awningLamps,
  awningLampsPutRight,
  camper,
  camperPutRight,
  orchardTractor,
  orchardTractorPutRight,
  tipper,
  tipperPutRight,
  recoveryBed,
  recoveryBedPutRight,
  groomingVan,
  groomingVanPutRight,
];
