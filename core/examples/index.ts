import { awningLamps, awningLampsPutRight } from "./awning-lamps.ts";
import { camper, camperPutRight } from "./camper.ts";
import type { Example } from "./example.ts";

export type { Example } from "./example.ts";

/** Every demo, each followed by its put-right twin; the first opens on a first visit. */
export const EXAMPLES: readonly Example[] = [awningLamps, awningLampsPutRight, camper, camperPutRight];
