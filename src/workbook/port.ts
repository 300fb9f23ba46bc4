/**
 * The port between the panel and a host's workbook. Two adapters implement it: Office.js (Excel) and the preview sheet.
 * No Office types and no sheet-engine types appear here. Rows and columns count from 0.
 */
import type { Fault } from "../../core";
import type { StarterSheet } from "../sheets/sheet";

/** One cell. */
export interface Address {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells. */
export interface Area extends Address {
  readonly rows: number;
  readonly columns: number;
}

/** A fault in a cell; the message is there where the host kept it. */
export type CellFault = Pick<Fault, "code"> & Partial<Fault>;

/** A calculated cell's value: null is an empty cell. */
export type CellValue = string | number | boolean | null | CellFault;

export const isCellFault = (value: CellValue): value is CellFault => typeof value === "object" && value !== null;

/** An area as read: `formulas` holds "" for a cell without a formula of its own (a spilled cell has none). */
export interface Block {
  readonly area: Area;
  readonly formulas: readonly (readonly string[])[];
  readonly values: readonly (readonly CellValue[])[];
}

export interface SheetFacts {
  readonly name: string;
  readonly visible: boolean;
  readonly protected: boolean;
}

/** A cell to write: a text that begins with "=" is a formula. */
export interface CellWrite extends Address {
  readonly content: string | number | boolean | null;
  /** The cell held a text: where its number format is Text, a formula would stay one, so the format becomes General. */
  readonly fromText?: true;
}

/** Values in place of the formulas of an area, from its first cell on. */
export interface ValueArea {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly CellValue[])[];
}

/** Sheets to copy within their workbook, each with the areas that hold values in the copy, and the record beside them. */
export interface SheetCopies {
  readonly sheets: readonly {
    readonly sheet: string;
    /** The name of the copy beside the original. */
    readonly title: string;
    readonly areas: readonly ValueArea[];
  }[];
  readonly record: StarterSheet;
}

/** A picture for a workbook. */
export interface PlacedPicture {
  /** Its name among a sheet's shapes, or as a file. */
  readonly name: string;
  /** What it shows, in a sentence, for people who can't see it. */
  readonly altText: string;
  /** A PNG in base 64. */
  readonly png: string;
  /** Its size on paper, points. */
  readonly width: number;
  readonly height: number;
}

/** What a reference text means on a sheet: `Inputs!B4`, a defined name, `Table[Column]`, `[@Column]`, `A1#`. */
export type ReferenceText = { readonly text: string; readonly from: Address };

export type Unsubscribe = () => void;

/** How long writing is followed and stopped. */
export interface InsertOptions {
  readonly signal?: AbortSignal;
  onProgress?(done: number, of: number): void;
  /** Says what is done from now on, where nobody knows how far it is. */
  onStage?(stage: string): void;
}

/** What a reader of formulas asks of a workbook: one that a host has open, or one as its file stores it. */
export interface BookReader {
  sheets(): Promise<readonly SheetFacts[]>;
  /** The used part of a sheet; undefined if the sheet is empty or missing. */
  used(sheet: string): Promise<Area | undefined>;
  /**
   * The rectangle around a sheet's formulas, undefined where it has none; missing where the host can't say that without
   * reading the sheet.
   */
  readonly formulaArea?: ((sheet: string) => Promise<Area | undefined>) | undefined;
  /** Formulas and values of several areas in one round trip. */
  read(areas: readonly Area[]): Promise<readonly Block[]>;
  /** The areas that reference texts mean, in one round trip; undefined for one without a meaning here. */
  resolve(references: readonly ReferenceText[]): Promise<readonly (Area | undefined)[]>;
}

/** Everything that the panel asks of the host. Every method is asynchronous and rejects with a plain sentence. */
export interface Workbook extends BookReader {
  readonly host: "excel" | "preview";
  selection(): Promise<Address | undefined>;
  /** All that is selected; undefined where that can't be asked. A host without it knows the selected cell alone. */
  selectedAreas?(): Promise<readonly Area[] | undefined>;
  /** Goes to the cell and shows it. */
  select(address: Address): Promise<void>;
  /** Writes cells, as one undo step if the host supports that. Cancelled, it leaves the workbook as it was. */
  write(cells: readonly CellWrite[], options?: InsertOptions): Promise<void>;
  /** Makes a sheet large enough for an area; missing where every sheet has all rows and columns. */
  readonly makeRoom?: ((area: Area) => Promise<void>) | undefined;
  /**
   * Adds a sheet from its description and shows it; returns its name (a taken name gets a number appended). Cancelled, it
   * leaves no sheet.
   */
  insert(sheet: StarterSheet, options?: InsertOptions): Promise<string>;
  /** The name of the workbook's file; "" where it has none yet. */
  documentName(): Promise<string>;
  /**
   * The workbook as an .xlsx file would hold it now.
   * @param signal stops it between two pieces
   */
  documentBytes(signal?: AbortSignal): Promise<Uint8Array>;
  /**
   * Gives a finished copy to the user.
   * @param name of its file
   * @returns where it went, as a whole sentence
   */
  deliverCopy(bytes: Uint8Array, name: string): Promise<string>;
  /**
   * The last way to hand over: copies of sheets within this workbook, which changes no sheet that is there. Missing if
   * the host can always give the workbook's bytes. Returns where they are, as the end of a sentence: "the new sheets …".
   */
  readonly copySheets?: ((copies: SheetCopies) => Promise<string>) | undefined;
  /**
   * Places a picture to the right of an area, over the cells; missing if the host can't. Returns where it is, as the end
   * of a sentence: "beside A1:C9".
   */
  readonly placePicture?: ((picture: PlacedPicture, beside: Area) => Promise<string>) | undefined;
  /** Saves a picture as a file, if the host can't place it. Returns "the file …". */
  readonly savePicture?: ((picture: PlacedPicture) => Promise<string>) | undefined;
  /** Marks areas dirty, so that the host recalculates them. */
  recalculate(areas: readonly Area[]): Promise<void>;
  /** Calls back when another cell is selected. */
  onSelection(call: (address: Address) => void): Unsubscribe;
  /** Calls back with the names of sheets whose cells or results changed. */
  onChange(call: (sheets: readonly string[]) => void): Unsubscribe;
}
