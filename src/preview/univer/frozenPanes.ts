/** Frozen rows and columns, which give way where a small window would hold nothing else; a narrow one shows cells smaller. */
import {
  ICommandService,
  IUniverInstanceService,
  LifecycleService,
  LifecycleStages,
  UniverInstanceType,
} from "@univerjs/core";
import type { Nullable, Univer, Workbook, Worksheet } from "@univerjs/core";
import { SetFrozenMutation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { SetZoomRatioOperation } from "@univerjs/sheets-ui";
import type { BookData } from "../file/bookData";

/** At this ratio a phone shows a starter sheet's labels and its values side by side. */
const NARROW_RATIO = 0.8;

interface Frozen {
  readonly rows: number;
  readonly columns: number;
}

export interface FrozenPanes {
  /** Whether rows and columns may be frozen now. */
  allow(rows: boolean, columns: boolean): void;
  /** The workbook's data with the panes that the sheets have of their own. */
  restored(data: BookData): BookData;
}

export function frozenPanes(univer: Univer): FrozenPanes {
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService);
  const instances = injector.get(IUniverInstanceService);
  /** What sheets had when it was taken from them. */
  const taken = new Map<string, Frozen>();
  let allowed = { rows: true, columns: true };
  const book = (): Nullable<Workbook> => instances.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  const adapt = (sheet: Worksheet): void => {
    const { xSplit, ySplit } = sheet.getFreeze();
    const own = taken.get(sheet.getSheetId()) ?? { rows: ySplit, columns: xSplit };
    const rows = allowed.rows ? own.rows : 0;
    const columns = allowed.columns ? own.columns : 0;
    if (rows === own.rows && columns === own.columns) taken.delete(sheet.getSheetId());
    else taken.set(sheet.getSheetId(), own);
    const place = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() };
    // Who chose another ratio keeps it.
    const [from, to] = allowed.columns ? [NARROW_RATIO, 1] : [1, NARROW_RATIO];
    if (sheet.getZoomRatio() === from) {
      commands.syncExecuteCommand(SetZoomRatioOperation.id, { ...place, zoomRatio: to });
    }
    if (rows === ySplit && columns === xSplit) return;
    commands.syncExecuteCommand(
      SetFrozenMutation.id,
      {
        ...place,
        startRow: rows > 0 ? rows : -1,
        startColumn: columns > 0 ? columns : -1,
        ySplit: rows,
        xSplit: columns,
      },
      { onlyLocal: true },
    );
  };
  let rendered = false;
  const adaptActive = (): void => {
    if (!rendered) return;
    const sheet = book()?.getActiveSheet(true);
    if (sheet !== null && sheet !== undefined) adapt(sheet);
  };
  // Before that the engine has nothing to draw on, and throws.
  void injector
    .get(LifecycleService)
    .onStage(LifecycleStages.Rendered)
    .then(() => {
      rendered = true;
      adaptActive();
    });
  commands.onCommandExecuted(({ id }) => {
    if (id === SetWorksheetActiveOperation.id) adaptActive();
  });
  instances.getCurrentTypeOfUnit$(UniverInstanceType.UNIVER_SHEET).subscribe(() => setTimeout(adaptActive));
  return {
    allow: (rows, columns) => {
      allowed = { rows, columns };
      adaptActive();
    },
    restored: (data) => {
      const own = new Map(
        (book()?.getSheets() ?? []).flatMap((sheet) => {
          const frozen = taken.get(sheet.getSheetId());
          return frozen === undefined ? [] : [[sheet.getName(), frozen] as const];
        }),
      );
      const sheets = data.sheets.map((sheet) => {
        const frozen = own.get(sheet.name);
        return frozen === undefined ? sheet : { ...sheet, frozenRows: frozen.rows, frozenColumns: frozen.columns };
      });
      return { ...data, sheets };
    },
  };
}
