import type { Address, Area, Block, CellWrite, SheetFacts, Unsubscribe } from "../../workbook/port";
import type { CallRecord } from "./callSites";
import type { BookData, KeptFormula, NameData, SheetData, ValidationData } from "../file/bookData";

/** Long work that shares its thread and reports how far it is. */
export interface SlicedWork {
  pause(): Promise<void> | undefined;
  readonly onProgress?: ((done: number, of: number) => void) | undefined;
}

/** How a sheet is added. */
export interface AddingWork {
  pause(): Promise<void> | undefined;
  /** Asked when the sheet is made. */
  isStale(): boolean;
}

/** A workbook in the sheet engine, without the engine's types: what evaluator, page and port adapter work on. */
export interface SheetBook {
  /** Another one for each workbook that is opened. */
  id(): string;
  sheets(): readonly SheetFacts[];
  names(): readonly NameData[];
  /** The used part of a sheet, spilled cells included. */
  used(sheet: string): Area | undefined;
  /** Formulas and full-precision values; an error value carries the message of the call that gave it. */
  read(area: Area): Block;
  /** The area over which a cell's formula spills. */
  spill(cell: Address): Area | undefined;
  /** The calls that a cell's formula made when it calculated last. */
  calls(cell: Address): readonly CallRecord[];
  /** What may be typed into a cell, undefined where anything may. */
  validation(cell: Address): ValidationData | undefined;
  /** The file's formula that a cell can't work out: it keeps the file's result. */
  kept(cell: Address): KeptFormula | undefined;
  /** Replaces the workbook. */
  load(data: BookData): void;
  /** Replaces the workbook by one that holds its results, which aren't calculated again. */
  show(data: BookData, pause: () => Promise<void> | undefined): Promise<void>;
  /**
   * Cells of a workbook that was shown whose formulas may give something else than it holds; undefined where only a whole
   * calculation can say it.
   */
  outdated(work: SlicedWork): Promise<readonly Area[] | undefined>;
  recalculateAll(): void;
  data(): BookData;
  /** The same once all is calculated, with pauses. */
  dataInSlices(pause: () => Promise<void> | undefined): Promise<BookData>;
  /**
   * Writes cells as one undo step.
   * @throws a sentence while cells are written in pieces
   */
  write(cells: readonly CellWrite[]): void;
  /**
   * The same with pauses. Nobody else changes the workbook meanwhile.
   * @throws what a pause throws, once the workbook is as it was
   */
  writeInPieces(cells: readonly CellWrite[], work: SlicedWork): Promise<void>;
  /** Resolves when no cells are being written in pieces. */
  whenWritten(): Promise<void>;
  /** Calls back with a sentence for whoever changes the workbook while cells are written in pieces. */
  onRefusal(call: (sentence: string) => void): void;
  /** Calls back with a sentence on how far a large step is undone or redone. */
  onStepProgress(call: (sentence: string) => void): void;
  /** Adds rows and columns behind the last ones where an area goes beyond them. */
  makeRoom(area: Area): void;
  /** Adds a sheet and its names behind the others as one undo step, and shows it; answers the name it got. */
  addSheet(sheet: SheetData, names: readonly NameData[]): string;
  /**
   * The same with pauses before the sheet is there; undefined where it is no longer wanted by then.
   */
  addSheetInSlices(sheet: SheetData, names: readonly NameData[], work: AddingWork): Promise<string | undefined>;
  /** Takes the sheet that was added last away again, with its names and its undo step; other changes stay. */
  takeBack(sheet: string): Promise<void>;
  /**
   * From now on sheets, rows and columns that are there stay where they are; who tries is refused with a sentence.
   * Undefined lets them go.
   */
  keepStructure(refused: ((sentence: string) => void) | undefined): void;
  /** How formulas that are typed from now on are written for the engine; the cell keeps what was typed. */
  readTyped(read: ((formula: string, at: Address) => string | undefined) | undefined): void;
  /** Marks areas dirty. */
  recalculate(areas: readonly Area[]): void;
  selection(): Address | undefined;
  selectedAreas(): readonly Area[];
  select(cell: Address): void;
  undo(): void;
  redo(): void;
  /** How often something was changed that a file would hold. */
  edits(): number;
  /** Resolves when every change made so far is calculated and the cells hold the results. */
  whenCalculated(): Promise<void>;
  onSelection(call: (cell: Address) => void): Unsubscribe;
  /** Calls back with the names of sheets whose cells or results changed, once per burst of changes. */
  onChange(call: (sheets: readonly string[]) => void): Unsubscribe;
  /** Why a formula can't be read; undefined if it can. */
  unreadable(formula: string): string | undefined;
  dispose(): void;
}
