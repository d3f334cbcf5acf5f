/**
 * Ranges of what a person may enter, wide enough for any working vehicle and its mains gear, narrow enough to catch a slip of
 * the decimal point. Each range is the number's minimum and maximum in the published schema.
 */
export const volts = { min: 0, max: 100 };
/** A load may hang on an inverter. */
export const loadVolts = { min: 0, max: 500 };
export const ratedVolts = { min: 0.5, max: 500 };
export const ratingAmps = { min: 0.05, max: 2000 };
export const spareAmps = { min: 0, max: 2000 };
export const loadAmps = { min: 0.0001, max: 5000 };
export const watts = { min: 0.001, max: 100000 };
export const milliohms = { min: 0, max: 1e6 };
export const ohms = { min: 0.0001, max: 1e8 };
export const seconds = { min: 0, max: 3600 };
export const count = { min: 1, max: 64 };
