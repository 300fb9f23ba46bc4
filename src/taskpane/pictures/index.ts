/** Draws pictures. This folder is a script of its own, loaded when a picture is first shown. */
export { drawn, drawnWithScale } from "./draw";
export { onPaper, type Paper } from "./paper";
export { drawnScheme } from "./scheme";
export { lightPictures } from "./lightPictures";
