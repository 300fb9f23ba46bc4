/** Draws pictures. This folder is a script of its own, loaded when a picture is first shown. */
export { drawn } from "./draw";
export { onPaper, type Paper } from "./paper";
