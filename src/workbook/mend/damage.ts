/** Lists the damaged formulas of a workbook, with the formula that each means or the reason why it can't be mended. */
import type { Address, Block, CellValue, Workbook } from "../port";
import { isCellFault } from "../port";
import { addressText } from "../reader/reference";
import { readCalls } from "../reader/calls";
import { readFormulas } from "../reader/sheets";
import { timeSlices, type NextSlice } from "../timeSlices";
import type { MendKnowledge } from "./knowledge";
import { repairFormula, type Repair } from "./repair";

export interface Damage {
  readonly address: Address;
  /** The formula, or the text that looks like one. */
  readonly now: string;
  readonly meant: string;
  /** `text`: the cell holds the formula as a text. `again`: the formula is sound, but shows #NAME? until it is entered. */
  readonly kind: "formula" | "text" | "again";
  readonly notes: readonly string[];
}

export interface Unmendable {
  readonly address: Address;
  readonly now: string;
  readonly why: string;
}

export interface DamageList {
  readonly damaged: readonly Damage[];
  readonly unmendable: readonly Unmendable[];
}

export interface FindOptions {
  readonly signal?: AbortSignal | undefined;
  onProgress?(done: number, of: number): void;
}

/** A cell whose text holds the namespace. */
interface Candidate {
  readonly address: Address;
  readonly formula: string;
  readonly value: CellValue;
}

const OURS = /warmback[._]/i;
const DAMAGE = /_xl[a-z]+[._]|#REF!/i;

const isNameless = (value: CellValue): boolean => isCellFault(value) && value.code === "#NAME?";

/** The first cell of a hand-over's record and of a calculation note: their texts document formulas. */
const DOCUMENTS = /^(?:Record of the calculation|Calculation note)/;

async function candidatesIn(blocks: readonly Block[], pause: NextSlice): Promise<readonly Candidate[]> {
  const found: Candidate[] = [];
  for (const { area, formulas, values } of blocks) {
    const texts = DOCUMENTS.test(String(values[0]?.[0] ?? "")) ? undefined : values;
    for (let down = 0; down < formulas.length; down++) {
      if (down % 64 === 0) await pause();
      for (let over = 0; over < area.columns; over++) {
        const formula = formulas[down]?.[over] ?? "";
        const value = values[down]?.[over] ?? null;
        const text = formula === "" && typeof value === "string" ? (texts?.[down]?.[over] ?? "") : formula;
        if (typeof text !== "string" || !OURS.test(text)) continue;
        found.push({
          address: { sheet: area.sheet, row: area.row + down, column: area.column + over },
          formula,
          value,
        });
      }
    }
  }
  return found;
}

const folded = (formula: string): string => formula.replace(/\s+/g, "").toUpperCase();

/** What is wrong with a formula, in words; undefined if nothing is. */
function judgeFormula(
  { address, formula, value }: Candidate,
  knowledge: MendKnowledge,
): Damage | Unmendable | undefined {
  const repair: Repair = repairFormula(formula, knowledge, isNameless(value));
  if (repair.state === "mended")
    return { address, now: formula, meant: repair.formula, kind: "formula", notes: repair.notes };
  if (repair.state === "refused")
    return isCellFault(value) || DAMAGE.test(formula) ? { address, now: formula, why: repair.why } : undefined;
  const again = isNameless(value) && readCalls(formula, knowledge.known).length > 0;
  return again ? { address, now: formula, meant: formula, kind: "again", notes: [] } : undefined;
}

/** A text that begins as a formula does: the formula that it means. */
function judgeText({ address, value }: Candidate, knowledge: MendKnowledge): Damage | Unmendable | undefined {
  const now = String(value);
  const typed = now.trim().replace(/^'/, "");
  if (!/^\{?\s*=/.test(typed)) return undefined;
  const repair = repairFormula(typed, knowledge);
  if (repair.state === "refused") return { address, now, why: `it is a text, and ${repair.why}` };
  if (repair.state === "mended") return { address, now, meant: repair.formula, kind: "text", notes: repair.notes };
  return readCalls(typed, knowledge.known).length === 0
    ? undefined
    : { address, now, meant: typed, kind: "text", notes: [] };
}

export const isDamage = (one: Damage | Unmendable): one is Damage => "meant" in one;

/** Texts that repeat a formula that calculates elsewhere document it. */
function withoutQuotations(
  found: readonly (Damage | Unmendable)[],
  live: ReadonlyMap<string, Address>,
): readonly (Damage | Unmendable)[] {
  return found.map((one) => {
    const original = isDamage(one) && one.kind === "text" ? live.get(folded(one.meant)) : undefined;
    if (original === undefined) return one;
    return { address: one.address, now: one.now, why: `this text repeats the formula of ${addressText(original)}` };
  });
}

function behindProtection(one: Damage | Unmendable, shut: ReadonlySet<string>): Damage | Unmendable {
  const { sheet } = one.address;
  if (!isDamage(one) || !shut.has(sheet)) return one;
  return { address: one.address, now: one.now, why: `the sheet ${sheet} is protected: take the protection off first` };
}

/**
 * Reads the whole workbook and changes nothing.
 * @throws CANCELLED once the signal is aborted
 */
export async function findDamage(
  book: Workbook,
  knowledge: MendKnowledge,
  { signal, onProgress }: FindOptions = {},
): Promise<DamageList> {
  const pause = timeSlices({}, signal === undefined ? [] : [signal]);
  const sheets = await book.sheets();
  const names = sheets.map(({ name }) => name);
  const shut = new Set(sheets.filter((one) => one.protected).map(({ name }) => name));
  const candidates: Candidate[] = [];
  // A call typed as a text may lie anywhere.
  for (const { blocks } of (await readFormulas(book, names, pause, true)).values())
    for (const one of await candidatesIn(blocks, pause)) candidates.push(one);
  const found: (Damage | Unmendable)[] = [];
  const live = new Map<string, Address>();
  for (const [at, one] of candidates.entries()) {
    const waiting = pause();
    if (waiting !== undefined) {
      onProgress?.(at, candidates.length);
      await waiting;
    }
    const judged = one.formula === "" ? judgeText(one, knowledge) : judgeFormula(one, knowledge);
    if (judged !== undefined) found.push(judged);
    if (one.formula !== "")
      live.set(folded(judged !== undefined && isDamage(judged) ? judged.meant : one.formula), one.address);
  }
  const all = withoutQuotations(found, live).map((one) => behindProtection(one, shut));
  return { damaged: all.filter(isDamage), unmendable: all.filter((one): one is Unmendable => !isDamage(one)) };
}
