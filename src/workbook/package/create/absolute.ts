/** References as the parts of a workbook write them. */
import { addressText } from "../../reader/reference";

/** "'Pool loop'!" */
export const sheetPrefix = (sheet: string): string => addressText({ sheet, row: 0, column: 0 }).slice(0, -"A1".length);

/** "B2:C9" → "$B$2:$C$9" */
export const absoluteCells = (area: string): string => area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
