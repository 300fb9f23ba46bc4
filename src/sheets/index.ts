/** The starter sheets, in the order of the job. */
import { recoverySizing } from "./recoverySizing";
import type { StarterSheet } from "./sheet";

export const STARTER_SHEETS: readonly StarterSheet[] = [recoverySizing];
