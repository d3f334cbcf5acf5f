export * from "./types.ts";
export { pictureOf } from "./picture-of.ts";
export { partPicture } from "./part-picture.ts";
export { extentOf } from "./extent-of.ts";
