/**
 * What can't be undone: the table "Unsupported APIs" of "Undo support with the Excel JavaScript API" (OfficeDev/
 * office-js-docs-pr, docs/excel/excel-add-ins-undo-capabilities.md, 2025-05-15), for the objects that the stand-in has.
 */
import type { Platform } from "../profiles";

/** Neither on the web nor on the desktop. */
const NOWHERE: ReadonlySet<string> = new Set([
  "Workbook.close",
  "Workbook.insertWorksheetsFromBase64",
  "Workbook.save",
  "WorkbookProtection.protect",
  "WorkbookProtection.unprotect",
  "Worksheet.copy",
  "Worksheet.delete",
  "WorksheetCollection.addFromBase64",
  "WorksheetProtection.pauseProtection",
  "WorksheetProtection.protect",
  "WorksheetProtection.resumeProtection",
  "WorksheetProtection.setPassword",
  "WorksheetProtection.unprotect",
  "WorksheetProtection.updateOptions",
]);

const WEB_ONLY: ReadonlySet<string> = new Set(["Worksheet.name", "Worksheet.position", "Worksheet.visibility"]);

const DESKTOP_ONLY: ReadonlySet<string> = new Set([
  "DocumentProperties.author",
  "DocumentProperties.category",
  "DocumentProperties.comments",
  "DocumentProperties.company",
  "DocumentProperties.keywords",
  "DocumentProperties.manager",
  "DocumentProperties.revisionNumber",
  "DocumentProperties.subject",
  "DocumentProperties.title",
  "NamedItem.comment",
  "Worksheet.standardWidth",
]);

export function undoable(platform: Platform, member: string): boolean {
  if (NOWHERE.has(member)) return false;
  return platform === "web" ? !DESKTOP_ONLY.has(member) : !WEB_ONLY.has(member);
}

/** The user's undo list, as far as the add-in's changes go: one entry a step. */
export interface UndoList {
  readonly steps: string[];
  /** Notes a change: those of one group are one step, those of one request otherwise. What can't be undone empties it. */
  changed(platform: Platform, member: string, group: string): void;
}

export function undoList(): UndoList {
  const steps: string[] = [];
  return {
    steps,
    changed(platform, member, group) {
      if (!undoable(platform, member)) steps.length = 0;
      else if (steps.at(-1) !== group) steps.push(group);
    },
  };
}
