/**
 * A copy of a workbook for people without the add-in: values in place of every formula that needs us, chosen sheets,
 * nothing left of the rest, and sheets that explain it. The workbook itself is only read.
 */
import { boundedMemo } from "../../../core";
import {
  callsUs,
  handOverPackage,
  packageBytes,
  readBook,
  type CellChange,
  type ChosenCopy,
  type CopyChoice,
  type CopyReport,
  type NewSheet,
  type PatchReport,
} from "../package";
import type { Address } from "../port";
import { mentionsUs } from "../reader/calls";
import { freeName } from "../starterCells";
import type { CopyFacts } from "./copyFacts";
import { packageWork, pauseIn, type CopyWork } from "./copyWork";
import { leftOut } from "./leftOut";
import { nameValues } from "./nameValues";
import { newRecord, newSheetOf } from "./newSheetOf";
import { readMePage, type CopySummary } from "./readMe";
import { recordLines } from "./recordSheet";
import type { CallDescription, Describe, RecordingEngine } from "./recordTypes";
import { storedSheets, type StoredBook, type StoredSheets } from "./storedBook";
import { supplierLines, supplierPage } from "./supplierPage";
import type { Survey } from "./survey";

export interface CopyPlan {
  readonly choice: CopyChoice;
  /** What becomes of formulas that need nothing of ours. */
  readonly others: "live" | "frozen";
  readonly facts: Omit<CopyFacts, "edition">;
}

export interface FinishedCopy {
  readonly bytes: Uint8Array;
  readonly summary: CopySummary;
  readonly report: CopyReport;
  /** Titles of the sheets that were added. */
  readonly added: readonly string[];
}

const FROZEN = { kind: "frozen" } as const;

/** Each cell once: those that need us, and all other formulas where they are frozen too. */
function changesFor({ cells, stored }: Survey, { others }: CopyPlan): readonly CellChange[] {
  const frozen = others === "frozen" ? stored.formulas : cells;
  return frozen.map(({ address: { sheet, row, column } }) => ({ sheet, row, column, content: FROZEN }));
}

const BOUNDS = { entries: 100_000, cells: 2_000_000 };

/** Equal calls are described once. */
function cachedDescribe(describe: Describe): Describe {
  const known = boundedMemo<{ readonly of: CallDescription | undefined }>(BOUNDS);
  return (id, args) => known.getOrCompute(id, args, () => ({ of: describe(id, args) })).of;
}

/** @throws where the copy still needs us: it would show #NAME? to its reader */
function refuseCalls({ facts, formulas }: StoredBook): void {
  const left = formulas.find(({ formula }) => mentionsUs(formula));
  const name = facts.names.find(({ formula }) => callsUs(formula));
  if (left !== undefined || name !== undefined)
    throw new Error(`a call of ours is left in the copy (${left?.formula ?? name?.name ?? ""}): please report this`);
}

/** What else was changed, without a word on what isn't in the copy. */
function sentencesOf(
  { sentences }: CopyReport,
  { outside }: PatchReport,
  kept: ReadonlySet<string>,
): readonly string[] {
  const inCopy = outside.filter(({ sheet }) => sheet === undefined || kept.has(sheet));
  const rules = inCopy.filter(({ kind }) => kind !== "name").length;
  return [
    ...sentences,
    ...(rules === 0
      ? []
      : [
          `Validations, conditional formats and calculated columns with a function of the add-in were taken out: ${rules}.`,
        ]),
  ];
}

interface Making {
  readonly survey: Survey;
  readonly plan: CopyPlan;
  readonly engine: RecordingEngine;
  readonly work: CopyWork;
  /** The sheets of the workbook as they go into the copy. */
  readonly sheets: StoredSheets;
  readonly finished: (summary: CopySummary, report: CopyReport, added: readonly string[]) => void;
}

function summaryOf(
  { survey, plan, engine }: Making,
  copied: StoredBook,
  { report }: ChosenCopy,
  patch: PatchReport,
  titles: Pick<CopySummary, "record" | "supplierPage">,
): CopySummary {
  const sheets = new Set(copied.facts.sheets.map(({ name }) => name));
  const kept = <T extends Address>(addresses: readonly T[]): readonly T[] =>
    addresses.filter((address) => sheets.has(address.sheet) && copied.holds(address));
  const inCopy = survey.cells.filter(({ address }) => sheets.has(address.sheet) && copied.holds(address));
  const ours = inCopy.filter(({ formula }) => mentionsUs(formula)).length;
  const all = plan.others === "frozen" ? kept(survey.stored.formulas.map(({ address }) => address)).length : 0;
  return {
    facts: { ...plan.facts, edition: engine.edition },
    sheets: [...sheets],
    ...titles,
    ours,
    dependent: inCopy.length - ours,
    othersFrozen: Math.max(0, all - inCopy.length),
    cutOff: report.frozen.length,
    live: copied.formulas.length,
    droppedSheets: report.droppedSheets.length,
    failing: copied.failing,
    failingBefore: survey.stored.failing.filter(({ sheet }) => sheets.has(sheet)).length,
    differing: kept(survey.differing),
    unreadable: kept(survey.unreadable),
    sentences: sentencesOf(report, patch, sheets),
  };
}

/** Read me, Record and the supplier's page of what the copy holds. */
async function ownSheets(making: Making, chosen: ChosenCopy, patch: PatchReport): Promise<readonly NewSheet[]> {
  const { survey, engine, work, sheets } = making;
  work.onProgress?.({ done: 0, total: 1, text: "checking the copy" });
  await pauseIn(work)();
  const copied = sheets.book(await readBook(chosen.pack));
  refuseCalls(copied);
  const titles = copied.facts.sheets.map(({ name }) => name);
  const [readMe = "", record = "", page = ""] = ["Read me", "Record", "For the supplier"].map((name) => {
    const title = freeName(name, titles);
    titles.push(title);
    return title;
  });
  const summary = summaryOf(making, copied, chosen, patch, { record, supplierPage: page });
  const { facts } = summary;
  const inCopy = new Set(summary.sheets);
  const cells = survey.cells.filter(({ address }) => inCopy.has(address.sheet) && copied.holds(address));
  const describe = cachedDescribe(engine.describe);
  const formulaOf = leftOut(survey.stored.facts, copied.facts);
  const words = { labelOf: copied.labelOf, formulaOf };
  const forSupplier = supplierLines(copied.labelOf);
  const lines = await recordLines(cells, survey.readings, describe, words, work, forSupplier.onCall);
  making.finished(summary, chosen.report, [readMe, record, page]);
  return [
    newSheetOf(readMePage(summary), readMe),
    newRecord(facts, lines, record),
    newSheetOf(supplierPage(facts, forSupplier.lines(), record), page),
  ];
}

/**
 * @returns the file of the copy and what is in it
 * @throws a sentence where the choice can't be carried out; CANCELLED once the signal is aborted
 */
export async function makeCopy(
  survey: Survey,
  plan: CopyPlan,
  engine: RecordingEngine,
  work: CopyWork = {},
): Promise<FinishedCopy> {
  let record: Omit<FinishedCopy, "bytes"> | undefined;
  const making: Making = {
    ...{ survey, plan, engine, work, sheets: storedSheets() },
    finished: (summary, report, added) => void (record = { summary, report, added }),
  };
  const copy = await handOverPackage(
    survey.pack,
    {
      choice: plan.choice,
      changes: changesFor(survey, plan),
      nameValues: await nameValues(survey.stored, engine, work),
      onSheet: making.sheets.sheet,
      sheets: (chosen, patch) => ownSheets(making, chosen, patch),
    },
    packageWork(work, "writing the copy"),
  );
  const bytes = await packageBytes(copy.pack, packageWork(work, "packing the copy"));
  if (record === undefined) throw new Error("the copy has no record");
  return { bytes, ...record };
}
