export { readClampAmps, readOhms, readVolts, type Leads, type MeterReading } from "./meter.ts";
