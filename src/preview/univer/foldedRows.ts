/** Rows that fold: the sheet engine has no outline, but it can hide rows and show them again, and undo that. */
import { ICommandService, IUniverInstanceService, RANGE_TYPE, UniverInstanceType } from "@univerjs/core";
import type { Nullable, Univer, Workbook, Worksheet } from "@univerjs/core";
import { SetRowHiddenCommand, SetSpecificRowsVisibleCommand } from "@univerjs/sheets";
import { cellsText, parseCells } from "../../workbook/reader/reference";
import { plainValue } from "./cellValue";
import { sheetGroups } from "./sheetData";

/** A group of rows of the sheet in front, counted from 0. */
export interface FoldingRows {
  /** What the cell above them says. */
  readonly label: string;
  /** The cell above them: "A11". */
  readonly heading: string;
  readonly first: number;
  readonly last: number;
  readonly isFolded: boolean;
  /** They lie in no other group. */
  readonly isOutermost: boolean;
}

export interface FoldScreen {
  /** The groups of the sheet in front, one before those within it. */
  groups(): readonly FoldingRows[];
  /** Hides rows of the sheet in front, or shows them, as one step to undo. */
  fold(groups: readonly FoldingRows[], folded: boolean): void;
}

function isHidden(sheet: Worksheet, first: number, last: number): boolean {
  for (let row = first; row <= last; row++) if (sheet.getRowRawVisible(row)) return false;
  return true;
}

function groupsOf(sheet: Worksheet): readonly FoldingRows[] {
  const spans = sheetGroups(sheet.getConfig()).flatMap((area) => {
    const cells = parseCells(area);
    return cells === undefined || cells.row === 0 ? [] : [{ first: cells.row, last: cells.row + cells.rows - 1 }];
  });
  return spans.map(({ first, last }) => ({
    first,
    last,
    label: String(plainValue(sheet.getCellRaw(first - 1, 0)) ?? ""),
    heading: cellsText({ row: first - 1, column: 0, rows: 1, columns: 1 }),
    isFolded: isHidden(sheet, first, last),
    isOutermost: !spans.some((other) => other.first < first && last <= other.last),
  }));
}

export function foldScreen(univer: Univer): FoldScreen {
  const injector = univer.__getInjector();
  const front = (): Nullable<Worksheet> =>
    injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)
      ?.getActiveSheet(true);
  return {
    groups() {
      const sheet = front();
      return sheet ? groupsOf(sheet) : [];
    },
    fold(groups, folded) {
      const sheet = front();
      if (!sheet || groups.length === 0) return;
      const ranges = groups.map(({ first, last }) => ({
        startRow: first,
        endRow: last,
        startColumn: 0,
        endColumn: sheet.getColumnCount() - 1,
        rangeType: RANGE_TYPE.ROW,
      }));
      const place = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() };
      const { id } = folded ? SetRowHiddenCommand : SetSpecificRowsVisibleCommand;
      injector.get(ICommandService).syncExecuteCommand(id, { ...place, ranges });
    },
  };
}
