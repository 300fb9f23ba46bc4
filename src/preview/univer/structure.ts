import { CustomCommandExecutionError } from "@univerjs/core";

import type { OpenBook } from "./open";

/** Keeps an opened file's sheets, rows and columns where they are: what saving can't write is refused at once. */

/** Commands and mutations that insert, delete or move cells of a sheet. */
const CELLS =
  /^sheet\.(?:command|mutation)\.(?:insert-(?:row|col|range|multi)|remove-(?:rows?\b|col\b)|delete-range-move|move-(?:rows|cols|columns|range)|append-row|reorder-range|split-text)/;
const SHEETS =
  /^sheet\.(?:command\.(?:insert-sheet|copy-sheet)|(?:command|mutation)\.(?:remove-sheet|set-worksheet-(?:name|order)))/;
const NAMES = /^sheet\.command\.(?:set|insert|remove)-defined-name/;
/** Looks other than number formats. */
const LOOKS =
  /^sheet\.command\.(?:set-(?:bold|italic|underline|stroke|overline|style|border|background-color|font|text-(?:color|wrap|rotation)|horizontal-text|vertical-text|range-(?:bold|italic|underline|stroke|font|text|sub|super)|tab-color|worksheet-(?:hidden|show))|reset-|add-worksheet-merge|remove-worksheet-merge|apply-format|set-(?:once|infinite)-format)/;

const STAYS = "in an opened file only values, formulas and number formats can be changed here";

function refusalFor(id: string): string | undefined {
  if (CELLS.test(id)) return `Rows, columns and cells can't be inserted, deleted or moved: ${STAYS}.`;
  if (SHEETS.test(id)) return `Sheets can't be inserted, deleted, moved or renamed: ${STAYS}.`;
  if (NAMES.test(id)) return `Names can't be changed: ${STAYS}.`;
  return LOOKS.test(id) ? `Looks can't be changed: ${STAYS}.` : undefined;
}

export type OnRefusal = (sentence: string) => void;

export interface StructureGuard {
  /** From now on the sheets that are there keep their structure; undefined lets them go. */
  keep(refused: OnRefusal | undefined): void;
  /** Does work of the page's own, which may add sheets and names. */
  freely(work: () => void): void;
  dispose(): void;
}

export function structureGuard(open: OpenBook): StructureGuard {
  let refused: OnRefusal | undefined;
  let free = false;
  let kept: ReadonlySet<string> = new Set();
  const listener = open.services.commands.beforeCommandExecuted(({ id, params }) => {
    if (refused === undefined || free || open.replacing()) return;
    const sentence = refusalFor(id);
    if (sentence === undefined) return;
    const named = (params as { subUnitId?: string } | undefined)?.subUnitId;
    const sheet = named ?? open.workbook().getActiveSheet(true)?.getSheetId() ?? "";
    const adds = /^sheet\.command\.(?:insert|copy)-sheet/.test(id) || NAMES.test(id);
    // Sheets that the page added are its own.
    if (!adds && !kept.has(sheet)) return;
    refused(sentence);
    throw new CustomCommandExecutionError(sentence);
  });
  return {
    keep: (call) => {
      refused = call;
      kept = new Set(
        open
          .workbook()
          .getSheets()
          .map((sheet) => sheet.getSheetId()),
      );
    },
    freely: (work) => {
      const before = free;
      free = true;
      try {
        work();
      } finally {
        free = before;
      }
    },
    dispose: () => listener.dispose(),
  };
}
