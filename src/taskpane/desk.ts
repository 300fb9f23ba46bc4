/** What the views share. */
import type { StarterSheet } from "../sheets/sheet";
import type { Address, Workbook } from "../workbook/port";
import type { PanelEngine } from "./engine";
import type { MathSource } from "./mathml";
import type { FinderTexts } from "./model/search";
import type { Runs } from "./runs/runs";

export interface Desk {
  readonly workbook: Workbook;
  /** Its heavy calls are awaited: they come through `settled`. */
  readonly engine: PanelEngine;
  readonly runs: Runs;
  readonly math: MathSource;
  readonly starters: readonly StarterSheet[];
  readonly finderTexts: FinderTexts;
  /** Tells a sentence: it is shown and read out. */
  say(text: string): void;
  /** Has a sentence read out that says what can be seen already. */
  readOut(text: string): void;
  /** Goes to a cell; a refusal is told. */
  goTo(address: Address): Promise<void>;
  /** Does something with the workbook; a refusal is told. Answers whether it went well. */
  attempt(work: () => Promise<void>): Promise<boolean>;
}

/** One of the panel's views. It works only while it shows. */
export interface View {
  readonly root: HTMLElement;
  show(): void;
  hide(): void;
}

export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
