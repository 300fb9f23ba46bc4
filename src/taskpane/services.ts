/** What the views share. */
import type { StarterSheet } from "../sheets/sheet";
import type { Address, Workbook } from "../workbook/port";
import type { PanelEngine } from "./engine";
import type { MathSource } from "./mathml";
import type { SymbolSource } from "./note/symbols";
import type { FinderTexts } from "./model/search";
import type { CellLabels } from "./model/cellLabels";
import type { MarkedList } from "./model/markedList";
import type { JobQueue } from "./jobs/jobQueue";

export interface PanelServices {
  readonly workbook: Workbook;
  /** A heavy call throws `Pending`: run it through `resumeWhenReady`. */
  readonly engine: PanelEngine;
  readonly jobs: JobQueue;
  readonly math: MathSource;
  readonly symbols: SymbolSource;
  readonly starters: readonly StarterSheet[];
  readonly finderTexts: FinderTexts;
  readonly labels: CellLabels;
  /** The cells that the user marked. */
  readonly marked: MarkedList;
  /** Shows a sentence and has it read out. */
  announce(text: string): void;
  /** Has a sentence read out that repeats what is visible. */
  readOut(text: string): void;
  /** Goes to a cell; announces a refusal. */
  goTo(address: Address): Promise<void>;
  /** Runs an action on the workbook; announces a refusal. Resolves to whether it succeeded. */
  attempt(work: () => Promise<void>): Promise<boolean>;
}

/** One of the panel's views. It is active only while it shows. */
export interface View {
  readonly root: HTMLElement;
  show(): void;
  hide(): void;
}

export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
