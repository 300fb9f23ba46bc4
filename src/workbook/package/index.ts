/**
 * The .xlsx file as what it is: a zip of parts. Nothing here builds a file out of a model; parts stay byte for byte, and
 * only what is meant is rewritten. Pure: no Office, no sheet engine, no DOM; it runs on a page, in a worker and in Node.
 *
 * A `Package` never changes: each step gives a new one, so a step that is refused or ended leaves everything as it was.
 * Steps cut their work into slices (`PackageWork`: signal, progress, length of a slice) and throw `ENDED` of ../slices
 * once the signal is aborted. What a user did wrong is a `PackageRefusal` whose message is a whole sentence.
 *
 *     const pack = await openPackage(bytes);          // bounds, encryption, damage
 *     const book = await readBook(pack);              // sheets, names, tables, calculation, links, number formats
 *     const context = await cellContext(pack, book);  // shared texts and dynamic arrays, once for all sheets
 *     const facts = await readSheet(pack, book, "Loop", context, (cell) => …);
 *
 * `evaluate` reads with these four: formulas come in their stored form, each with its kind and its stored value.
 *
 * The page saves an opened file with `patchCells` and `packageBytes`: `result` for cells whose formula stays, `value`
 * and `formula` for those that were typed, `format` for a number format. It saves one of its own with `newWorkbook`.
 *
 * Hand-over, in the page and with the bytes that Excel gives, is `listHidden` for the user's choice, then
 * `handOverPackage`: cells frozen, sheets chosen, nothing left of the rest, Read me and Record behind them. Its three
 * steps can be called alone: `patchCells`, `chooseSheets`, `addSheets`.
 */
export { isPackageRefusal } from "./refusal";
export type { PackageWork } from "./work";
export { forgetUnpacked, openParts as openPackage, packageBytes, type Package } from "./parts/package";
export { PACKAGE_LIMITS } from "./zip/limits";
export { readBook } from "./book/read";
export type * from "./book/facts";
export { cellContext, readStoredSheet } from "./sheet/read";
export type * from "./sheet/facts";
export { readLooks } from "./styles/looks";
export { callsUs, usesOf } from "./formula/uses";
export { patchCells } from "./patch/patch";
export type * from "./patch/changes";
export { listHidden } from "./copy/inventory";
export { sheetsOfCopy } from "./copy/chosenSheets";
export { chooseSheets, type ChosenCopy } from "./copy/choose";
export { readFrame, type FrameCell, type SheetFrame, type SheetFrames } from "./copy/sheetFrame";
export { handOverPackage, type HandOverPlan } from "./copy/handOver";
export type { CopyChoice, CopyReport, FrozenFormula, HiddenItem, KeptSheet } from "./copy/choice";
export { addSheets } from "./create/addSheets";
export { newWorkbook } from "./create/newBook";
export { cellsFromRows } from "./create/newSheet";
export type * from "./create/newSheet";
