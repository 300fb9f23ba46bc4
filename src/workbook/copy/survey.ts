/** Looks a workbook over before a copy is handed over: what needs us, which sheets belong to it, what is doubtful. */
import { callsUs, openPackage, type Package, type SheetKind, type SheetState } from "../package";
import type { Address, Area, CellValue } from "../port";
import { isCellFault } from "../port";
import { resumeWhenReady } from "../pending";
import { mentionsUs } from "../reader/calls";
import { prepare, wantedBy } from "../reader/prepare";
import { readOne, type Reading } from "../reader/read";
import { addressText } from "../reader/reference";
import { resolveFormulaReferences } from "../reader/resolve";
import { isMatrix, isOutcomeFault } from "../values";
import { packageWork, pauseIn, type CopyWork } from "./copyWork";
import { needingUs, type DependentCell } from "./dependents";
import { areasReader } from "./formulaShapes";
import type { RecordingEngine } from "./recordTypes";
import { readStoredBook, type StoredBook, type StoredFormula } from "./storedBook";

export interface SurveyedSheet {
  readonly name: string;
  readonly kind: SheetKind;
  readonly state: SheetState;
  /** Cells that call our functions. */
  readonly ours: number;
  /** Cells that show an error. */
  readonly failing: number;
}

export interface Survey {
  readonly pack: Package;
  readonly stored: StoredBook;
  /** Cells that use us or depend on such a cell. */
  readonly cells: readonly DependentCell[];
  /** By cell, those with calls of ours. */
  readonly readings: ReadonlyMap<DependentCell, Reading>;
  readonly sheets: readonly SurveyedSheet[];
  /** Sheets with our functions and those that our functions refer to. */
  readonly proposed: readonly string[];
  /** Cells whose value differs from what their formula gives now. */
  readonly differing: readonly Address[];
  /** Cells with a formula that can't be read, or with an argument that can't. */
  readonly unreadable: readonly Address[];
}

/** What a host shows in a cell that has no value yet. */
const UNFINISHED = new Set(["#BUSY!", "#GETTING_DATA"]);
const MOST_NAMED = 5;

/** @throws a sentence where cells have no value yet that could be handed over */
export function refuseUnfinished(cells: readonly Address[]): void {
  if (cells.length === 0) return;
  const named = cells.slice(0, MOST_NAMED).map((address) => addressText(address));
  const more = cells.length > MOST_NAMED ? ` and ${String(cells.length - MOST_NAMED)} more` : "";
  throw new Error(`Excel is still calculating ${named.join(", ")}${more}: wait until it is done, then make the copy`);
}

export const isUnfinished = (value: CellValue): boolean => isCellFault(value) && UNFINISHED.has(value.code);

/**
 * The format has no #BUSY!: a file holds another error in its place and says elsewhere what it means. A single value that
 * comes out sound here is such a cell; an array may also be one that can't spill.
 */
function mayBeBusy(reading: Reading | undefined): boolean {
  const whole = reading?.calls.find(({ whole: is }) => is)?.outcome;
  return whole !== undefined && !isOutcomeFault(whole) && !isMatrix(whole.value);
}

async function readingsOf(
  stored: StoredBook,
  cells: readonly DependentCell[],
  engine: RecordingEngine,
  work: CopyWork,
): Promise<ReadonlyMap<DependentCell, Reading>> {
  const pause = pauseIn(work);
  const ours = cells.filter(({ formula }) => mentionsUs(formula));
  const prepared: (readonly [DependentCell, ReturnType<typeof prepare>])[] = [];
  const resolved = resolveFormulaReferences(stored.reader);
  for (const cell of ours) {
    prepared.push([cell, prepare(cell, engine.known)]);
    await (pause() ?? undefined);
  }
  await resolved.load(prepared.flatMap(([, one]) => wantedBy(one)));
  const found = new Map<DependentCell, Reading>();
  for (const [cell, one] of prepared) {
    const wait = pause();
    if (wait !== undefined) {
      work.onProgress?.({
        done: found.size,
        total: ours.length,
        text: `${found.size} of ${ours.length} calls worked out`,
      });
      await wait;
    }
    found.set(cell, await resumeWhenReady(() => readOne(one, resolved, engine), { signal: work.signal }));
  }
  return found;
}

async function readsOf(stored: StoredBook, work: CopyWork): Promise<readonly (readonly Area[] | undefined)[]> {
  const pause = pauseIn(work);
  const { formulas, meanings } = stored;
  const areasOf = areasReader(meanings);
  const found: (readonly Area[] | undefined)[] = [];
  for (const { formula, address, opaque } of formulas) {
    const wait = pause();
    if (wait !== undefined) {
      work.onProgress?.({
        done: found.length,
        total: formulas.length,
        text: `${found.length} of ${formulas.length} formulas read`,
      });
      await wait;
    }
    found.push(opaque ? undefined : areasOf(formula, address));
  }
  return found;
}

const isUnreadable = ({ refusal, calls }: Reading): boolean =>
  refusal !== undefined ||
  calls.some(({ outcome, args }) => outcome === undefined && args.some((one) => "unreadable" in one));

const KEPT_KINDS: ReadonlySet<SheetKind> = new Set(["worksheet", "chartsheet"]);

/** Sheets with our functions and those that our functions refer to, in the order of their tabs. */
function proposedSheets(
  { facts, formulas }: StoredBook,
  reads: readonly (readonly Area[] | undefined)[],
): readonly string[] {
  const wanted = new Set<string>();
  formulas.forEach(({ formula, address }, at) => {
    if (!mentionsUs(formula)) return;
    wanted.add(address.sheet);
    for (const { sheet } of reads[at] ?? []) wanted.add(sheet);
  });
  return facts.sheets.filter(({ name, kind }) => wanted.has(name) && KEPT_KINDS.has(kind)).map(({ name }) => name);
}

function counts(addresses: readonly Address[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { sheet } of addresses) found.set(sheet, (found.get(sheet) ?? 0) + 1);
  return found;
}

function sheetsOf({ facts, failing, formulas }: StoredBook): readonly SurveyedSheet[] {
  const ours = counts(formulas.filter(({ formula }) => mentionsUs(formula)).map(({ address }) => address));
  const errors = counts(failing);
  return facts.sheets
    .filter(({ kind }) => KEPT_KINDS.has(kind))
    .map(({ name, kind, state }) => ({
      ...{ name, kind, state },
      ours: ours.get(name) ?? 0,
      failing: errors.get(name) ?? 0,
    }));
}

/**
 * @param bytes the workbook's own
 * @returns undefined if no cell of the workbook uses us
 * @throws a sentence where the file can't be read or Excel is still calculating; CANCELLED once the signal is aborted
 */
export async function surveyBook(
  bytes: Uint8Array,
  engine: RecordingEngine,
  work: CopyWork = {},
): Promise<Survey | undefined> {
  const pack = await openPackage(bytes, packageWork(work, "opening the workbook"));
  return surveyPackage(pack, engine, work);
}

async function surveyPackage(pack: Package, engine: RecordingEngine, work: CopyWork): Promise<Survey | undefined> {
  const stored = await readStoredBook(pack, packageWork(work, "reading the sheets"));
  const { formulas } = stored;
  const used =
    formulas.some(({ formula }) => mentionsUs(formula)) || stored.facts.names.some((name) => callsUs(name.formula));
  if (!used) return undefined;
  const reads = await readsOf(stored, work);
  const cells = await needingUs(
    { cells: formulas, reads, filled: (those) => (those as readonly StoredFormula[]).map(({ area }) => area) },
    pauseIn(work),
  );
  refuseUnfinished(cells.filter(({ value }) => isUnfinished(value)).map(({ address }) => address));
  const readings = await readingsOf(stored, cells, engine, work);
  const newer = new Set(formulas.filter(({ newerError }) => newerError).map(({ address }) => addressText(address)));
  const busy =
    newer.size === 0
      ? []
      : [...readings].filter(([{ address }, reading]) => newer.has(addressText(address)) && mayBeBusy(reading));
  refuseUnfinished(busy.map(([{ address }]) => address));
  const opaque = formulas.filter((one) => one.opaque).map(({ address }) => address);
  return {
    pack,
    stored,
    cells,
    readings,
    sheets: sheetsOf(stored),
    proposed: proposedSheets(stored, reads),
    differing: [...readings].filter(([, { stale }]) => stale).map(([{ address }]) => address),
    unreadable: [...opaque, ...[...readings].filter(([, one]) => isUnreadable(one)).map(([{ address }]) => address)],
  };
}
