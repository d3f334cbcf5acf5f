import fc from "fast-check";

/** One seed for every random test, so that a run can be repeated; another one: SEED=12 npm run unit. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env["SEED"] ?? 20_260_314) });
