/** Jobs on the page's file, which need neither the sheet engine nor the core. */
import type { JobQueue } from "../../../taskpane/jobs/jobQueue";
import type { BookFacts } from "../../../workbook/package";
import type { Address } from "../../../workbook/port";
import type { NameData } from "../bookData";
import type { FormulaTexts } from "../formulaTexts";
import type { SavedFile } from "../savedFile";
import type { BookChanges } from "./bookChanges";
import type { PackedSheet } from "./packedCells";

/** What is behind formula texts, as plain data. */
export type OurFunctions = FormulaTexts["ours"];

export interface HeldFile {
  /** Another one for every file: who has read it needn't do so again. */
  readonly number: number;
  readonly bytes: Uint8Array;
}

export interface ReadFile {
  readonly facts: BookFacts;
  /** Sheets with hidden rows. */
  readonly hiding: readonly string[];
  readonly sheets: readonly PackedSheet[];
  readonly names: readonly NameData[];
}

/** By kind of job: its input and its result. */
export interface FileJobTypes {
  readonly open: {
    readonly input: { readonly file: HeldFile; readonly ours: OurFunctions };
    readonly result: ReadFile;
  };
  readonly save: {
    readonly input: {
      readonly file: HeldFile;
      readonly ours: OurFunctions;
      /** Cells of circles that keep the file's result. */
      readonly circles: readonly Address[];
      readonly changes: BookChanges;
    };
    readonly result: SavedFile;
  };
  /** Saves a workbook that no file holds. */
  readonly write: {
    readonly input: {
      readonly sheets: readonly PackedSheet[];
      readonly names: readonly NameData[];
      readonly ours: OurFunctions;
    };
    readonly result: SavedFile;
  };
}

export type FileJobs = JobQueue<FileJobTypes>;
