/** A copy to hand over: cells frozen, sheets chosen, nothing left of the rest, sheets of our own behind them. */
import type { CellValue } from "../../port";
import { readBook } from "../book/read";
import { addSheets } from "../create/addSheets";
import type { NewName, NewSheet } from "../create/newSheet";
import type { Package } from "../parts/package";
import type { CellChange, PatchReport } from "../patch/changes";
import { patchCells } from "../patch/patch";
import type { PackageWork } from "../work";
import type { CopyChoice, CopyReport } from "./choice";
import { chooseSheets, type ChosenCopy } from "./choose";
import type { OnCopiedSheet } from "./copiedFrames";

export interface HandOverPlan {
  readonly choice: CopyChoice;
  /** Cells that hold values in the copy: mostly `frozen`, in sheets that are kept. */
  readonly changes: readonly CellChange[];
  /** Values for names with calls of ours, by the name in lower case. */
  readonly nameValues?: ReadonlyMap<string, CellValue>;
  /** Read me, Record, notes; they may say what the copy holds. */
  readonly sheets: readonly NewSheet[] | ((chosen: ChosenCopy, patch: PatchReport) => Promise<readonly NewSheet[]>);
  readonly names?: readonly NewName[];
  /** Called as the sheets of the workbook go into the copy. */
  readonly onSheet?: OnCopiedSheet;
}

export interface HandedOver {
  readonly pack: Package;
  readonly patch: PatchReport;
  readonly copy: CopyReport;
}

/** @returns a new package; the one given stays as it was */
export async function handOverPackage(pack: Package, plan: HandOverPlan, work: PackageWork = {}): Promise<HandedOver> {
  const { choice, changes, nameValues = new Map<string, CellValue>(), sheets, names = [], onSheet } = plan;
  const patched = await patchCells(pack, await readBook(pack), changes, { ours: "freeze", nameValues }, work);
  const chosen = await chooseSheets(patched.pack, await readBook(patched.pack), choice, work, onSheet);
  const own = typeof sheets === "function" ? await sheets(chosen, patched.report) : sheets;
  const whole = await addSheets(chosen.pack, own, names, work);
  return { pack: whole, patch: patched.report, copy: chosen.report };
}
