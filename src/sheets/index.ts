/** The starter sheets, in the order of the job. */
import { commissioning } from "./commissioning";
import { exchangerInquiry } from "./exchangerInquiry";
import { otherSinks } from "./otherSinks";
import { poolLoop } from "./poolLoop";
import { project } from "./project";
import { recoverySizing } from "./recoverySizing";
import { refrigerantSide } from "./refrigerantSide";
import type { StarterSheet } from "./sheet";
import { survey } from "./survey";
import { takeOff } from "./takeOff";
import { whatIf } from "./whatIf";

export const STARTER_SHEETS: readonly StarterSheet[] = [
  project,
  recoverySizing,
  survey,
  exchangerInquiry,
  poolLoop,
  refrigerantSide,
  takeOff,
  otherSinks,
  whatIf,
  commissioning,
];
