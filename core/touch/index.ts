export { touchTest, type Touch } from "./touch-test.ts";
