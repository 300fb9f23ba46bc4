/** What the jobs of a hand-over make copies with: loaded when a copy is first asked for. */
export { listHidden, sheetsOfCopy } from "../package";
export { makeCopy } from "./handOver";
export { nameValues } from "./nameValues";
export { surveyBook } from "./survey";
export { madeCopy, packedSurvey } from "./surveyFacts";
