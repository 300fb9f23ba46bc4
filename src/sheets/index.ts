/** The starter sheets, in the order of the job. */
import { commissioning } from "./commissioning";
import { recoverySizing } from "./recoverySizing";
import { refrigerantSide } from "./refrigerantSide";
import type { StarterSheet } from "./sheet";
import { survey } from "./survey";

export const STARTER_SHEETS: readonly StarterSheet[] = [recoverySizing, survey, refrigerantSide, commissioning];
