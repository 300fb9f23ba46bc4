/** What the panel and the command line make copies with; the panel loads it when a copy is first asked for. */
export { listHidden, sheetsOfCopy } from "../package";
export { copyName } from "./copyName";
export { makeCopy } from "./handOver";
export { sheetCopies } from "./sheetCopies";
export { surveyBook } from "./survey";
