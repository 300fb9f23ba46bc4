/** Every object that the stand-in knows. */
import type { Types } from "../host/objects";
import { CHART_TYPES } from "./charts";
import { CONDITIONAL_TYPES } from "./conditional";
import { FORMAT_TYPES } from "./format";
import { RANGE_TYPES } from "./range";
import { SERVICE_TYPES } from "./services";
import { SHEET_PART_TYPES } from "./sheetParts";
import { TABLE_TYPES } from "./tables";
import { BOOK_TYPES } from "./workbook";
import { SHEET_TYPES } from "./worksheet";

export const TYPES: Types = {
  ...BOOK_TYPES,
  ...SHEET_TYPES,
  ...SHEET_PART_TYPES,
  ...RANGE_TYPES,
  ...FORMAT_TYPES,
  ...CHART_TYPES,
  ...CONDITIONAL_TYPES,
  ...TABLE_TYPES,
  ...SERVICE_TYPES,
};
