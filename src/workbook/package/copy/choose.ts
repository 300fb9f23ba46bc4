/** A copy of a workbook with chosen sheets, in which what was dropped leaves no trace. */
import type { Area } from "../../port";
import type { BookFacts, NameEntry, SheetEntry } from "../book/facts";
import { nameKey, resolver } from "../formula/resolve";
import type { Package } from "../parts/package";
import type { CellChange } from "../patch/changes";
import { patchCells } from "../patch/patch";
import type { PackageWork } from "../work";
import { copyPart, type Assembly, type CopiedSheet } from "./assemble";
import { activeOf } from "./bookText";
import { keptByChoice, keptPivots } from "./chosenSheets";
import { isKept, type CopyChoice, type CopyReport, type FrozenFormula } from "./choice";
import { lostRules, sharedUse } from "./cleanSheet";
import { finish } from "./finish";
import { lostNames } from "./lostNames";
import { judgeSheet, verdicts, type Verdict } from "./frozen";
import { hiddenCells } from "./hiddenCells";
import { commentsId, nameId } from "./ids";
import { frameReader, framesAfter, type OnCopiedSheet } from "./copiedFrames";
import type { KeptFrame, SheetChoice } from "./keptSheets";

export interface ChosenCopy {
  readonly pack: Package;
  readonly report: CopyReport;
}

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

function emptiedCells({ kept }: SheetChoice, choice: CopyChoice): readonly Area[] {
  return kept.flatMap((frame) =>
    hiddenCells(frame.entry.name, frame)
      .filter((item) => !isKept(item, choice))
      .map(({ area }) => area),
  );
}

interface Judged {
  readonly changes: readonly CellChange[];
  readonly frozen: readonly FrozenFormula[];
  readonly usedNames: ReadonlySet<string>;
  readonly linkedValues: number;
}

async function judge(
  pack: Package,
  book: BookFacts,
  kept: readonly KeptFrame[],
  emptied: readonly Area[],
  verdict: Verdict,
  work: PackageWork,
): Promise<Judged> {
  const changes: CellChange[] = [];
  const frozen: FrozenFormula[] = [];
  const usedNames = new Set<string>();
  let linkedValues = 0;
  for (const frame of kept) {
    const { entry } = frame;
    if (entry.kind !== "worksheet") continue;
    const areas = emptied.filter(({ sheet }) => sheet === entry.name);
    const found = await judgeSheet(pack, book, frame, areas, verdict, work);
    for (const change of found.changes) changes.push(change);
    for (const one of found.frozen) frozen.push(one);
    for (const name of found.usedNames) usedNames.add(name);
    linkedValues += frame.linkedValues;
  }
  return { changes, frozen, usedNames, linkedValues };
}

/** Names in the formulas that the columns of kept tables still have. */
function namesOfTables(book: BookFacts, kept: readonly SheetEntry[], verdict: Verdict): readonly string[] {
  const titles = new Set(kept.map(({ name }) => name));
  return book.tables
    .filter(({ sheet }) => titles.has(sheet))
    .flatMap(({ sheet, columns }) =>
      columns.flatMap(({ calculated = "", totals = "" }) => [calculated, totals].map((text) => verdict(text, sheet))),
    )
    .flatMap((found) => ("names" in found ? [...found.names] : []));
}

/** Names of the copy: those that something kept uses, those that somebody chose, and the print areas of kept sheets. */
function keptNames(
  book: BookFacts,
  used: ReadonlySet<string>,
  lost: ReadonlySet<string>,
  choice: CopyChoice,
): readonly NameEntry[] {
  return book.names.filter((entry) => {
    const key = nameKey(entry);
    if (lost.has(key)) return false;
    return used.has(key) || entry.builtIn !== undefined || choice.keep?.has(nameId(entry)) === true;
  });
}

function sentences(linkedValues: number, rules: number, book: BookFacts): readonly string[] {
  return [
    ...(book.macros ? ["The macros aren't in the copy."] : []),
    ...(book.signed ? ["The digital signature isn't in the copy: it covers the file as it was."] : []),
    ...(book.externalLinks.length > 0 ? ["The links to other workbooks aren't in the copy."] : []),
    ...(linkedValues > 0
      ? [
          `${count(linkedValues, "cell holds", "cells hold")} a picture or linked data: the copy has the plain value, often #VALUE!.`,
        ]
      : []),
    ...(rules > 0
      ? [
          `${count(rules, "validation, conditional format or sparkline", "validations, conditional formats or sparklines")} leaned on something that isn't in the copy and went.`,
        ]
      : []),
  ];
}

function copied(
  { entry, ...frame }: KeptFrame,
  emptied: readonly Area[],
  active: SheetEntry | undefined,
  verdict: Verdict,
  choice: CopyChoice,
): CopiedSheet {
  return {
    path: entry.path,
    kind: entry.kind,
    frame,
    active: entry === active,
    emptied: emptied.filter(({ sheet }) => sheet === entry.name),
    keepsComments: choice.keep?.has(commentsId(entry.name)) === true,
    stays: (formula) => "names" in verdict(formula, entry.name),
  };
}

/**
 * @returns a new package; the one given stays as it was
 * @throws a refusal where no sheet, or one that can't be copied, is chosen
 */
export async function chooseSheets(
  pack: Package,
  book: BookFacts,
  choice: CopyChoice,
  work: PackageWork = {},
  onSheet?: OnCopiedSheet,
): Promise<ChosenCopy> {
  const resolve = resolver(book);
  const pivots = await keptPivots(pack, book, choice);
  const framesIn = await frameReader(pack, book, onSheet, work);
  const sheets = await keptByChoice(pack, book, choice, resolve, pivots, framesIn(pack));
  const droppedSheets = new Set(sheets.dropped.map((name) => name.toLowerCase()));
  const emptied = emptiedCells(sheets, choice);
  const lost = lostNames(book, resolve, droppedSheets, choice);
  const verdict = verdicts({ book, resolve, droppedSheets, lostNames: lost, emptied });
  const judged = await judge(pack, book, sheets.kept, emptied, verdict, work);
  const source = (await patchCells(pack, book, judged.changes, { ours: "ignore" }, work)).pack;
  const entries = sheets.kept.map(({ entry }) => entry);
  const active = entries[activeOf(book, entries)];
  const assembly: Assembly = {
    source,
    book,
    parts: new Map(),
    texts: [],
    use: sharedUse(),
    pivots,
    work,
  };
  const frames = await framesAfter(sheets.kept, pack, source, framesIn(source));
  const all = frames.map((frame) => copied(frame, emptied, active, verdict, choice));
  for (const [at, sheet] of all.entries()) {
    work.onProgress?.(at, all.length);
    await copyPart(sheet.kind, sheet.path, sheet, assembly);
  }
  const ofTables = namesOfTables(book, entries, verdict);
  const names = keptNames(book, new Set([...judged.usedNames, ...sheets.names, ...ofTables]), lost, choice);
  const rules = all.reduce((sum, { frame, stays }) => sum + lostRules(frame.elements, stays), 0);
  return {
    pack: await finish(assembly, entries, names, choice),
    report: {
      sheets: sheets.reasons,
      droppedSheets: sheets.dropped,
      frozen: judged.frozen,
      sentences: sentences(judged.linkedValues, rules, book),
    },
  };
}
