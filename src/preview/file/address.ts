import type { Area } from "../../workbook/port";
import { addressText, cellsText, parseReference } from "../../workbook/reader/reference";
import { isRefusal, tokens } from "../../workbook/reader/tokens";

/** The area that a plain reference text means on a sheet, undefined where it is none. */
export const areaOf = (text: string, sheet: string): Area | undefined => {
  const meaning = parseReference(text.trim().replace(/^=/, ""));
  return meaning?.kind === "cells" && !meaning.spill ? { sheet: meaning.sheet ?? sheet, ...meaning.area } : undefined;
};

/** The plain references in a formula, in order. */
export const referencesIn = (formula: string, sheet: string): readonly Area[] => {
  const found = tokens(formula);
  if (isRefusal(found)) return [];
  return found.flatMap(({ kind, text }) => (kind === "reference" ? (areaOf(text, sheet) ?? []) : []));
};

/** An area with its sheet, in absolute references: 'Recovery sizing'!$B$4:$C$9. */
export const absoluteText = (area: Area): string => {
  const sheet = addressText({ ...area, row: 0, column: 0 }).slice(0, -"A1".length);
  return sheet + cellsText(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
};
