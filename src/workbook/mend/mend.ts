/** Writes mended formulas in one undo step, and reads the outcome of each from the host. */
import type { Address, Area, Block, CellValue, InsertOptions, Workbook } from "../port";
import { isCellFault } from "../port";
import { timeSlices, type NextSlice, type SliceOptions } from "../timeSlices";
import { walkTree } from "../reader/calls";
import { plainName } from "../reader/evaluate";
import type { Engine } from "../reader/prepare";
import { readCells } from "../reader/read";
import { boundValue } from "../reader/scope";
import { groupsOf } from "../reader/sheets";
import { isRefusal } from "../reader/tokens";
import { parse } from "../reader/tree";
import { isOutcomeFault } from "../values";
import { coveringAreas } from "./coveringAreas";
import type { Damage } from "./damage";

export interface MendOutcome {
  readonly address: Address;
  readonly formula: string;
  /** `value`: what the cell shows now. `failing`: its error, with the reason. `left`: why the cell wasn't written. */
  readonly outcome:
    { readonly value: CellValue } | { readonly failing: string; readonly message: string } | { readonly left: string };
}

export interface MendOptions extends InsertOptions {
  readonly slices?: SliceOptions;
  /** The cells are written, which can't be cancelled any more: only their results are read. */
  onWritten?(): void;
}

const cellArea = ({ sheet, row, column }: Address): Area => ({ sheet, row, column, rows: 1, columns: 1 });

/** The cells one by one, out of few areas of the host. */
async function read(book: Workbook, cells: readonly Address[], pause: NextSlice): Promise<readonly Block[]> {
  if (cells.length === 0) return [];
  const { areas, areaOf } = coveringAreas(cells);
  const blocks: Block[] = [];
  for (const group of groupsOf(areas)) {
    for (const block of await book.read(group)) blocks.push(block);
    await pause();
  }
  return cells.map((cell, at) => {
    const block = blocks[areaOf[at] ?? -1];
    const [down, over] = [cell.row - (block?.area.row ?? 0), cell.column - (block?.area.column ?? 0)];
    return {
      area: cellArea(cell),
      formulas: [[block?.formulas[down]?.[over] ?? ""]],
      values: [[block?.values[down]?.[over] ?? null]],
    };
  });
}

const formulaOf = (block: Block | undefined): string => block?.formulas[0]?.[0] ?? "";
const valueOf = (block: Block | undefined): CellValue => block?.values[0]?.[0] ?? null;

const isUnfinished = (value: CellValue): boolean =>
  isCellFault(value) && ["#BUSY!", "#GETTING_DATA"].includes(value.code);

/** How often the host is asked whether it is done, and the wait between, in milliseconds. */
const LOOKS = { most: 40, every: 250 };

/** The cells once the host has calculated them, or as they are after ten seconds. */
async function calculated(book: Workbook, cells: readonly Address[], pause: NextSlice): Promise<readonly Block[]> {
  for (let looks = 1; ; looks++) {
    const blocks = await read(book, cells, pause);
    if (looks >= LOOKS.most || !blocks.some((block) => isUnfinished(valueOf(block)))) return blocks;
    await new Promise((resolve) => setTimeout(resolve, LOOKS.every));
  }
}

/** Names and table references of a formula that mean nothing in this workbook. */
async function unknownReferences(book: Workbook, address: Address, formula: string): Promise<readonly string[]> {
  const tree = parse(formula);
  if (isRefusal(tree)) return [];
  const texts = new Set<string>();
  walkTree(tree, (node, scope) => {
    if (node.kind !== "reference" || (scope && boundValue(scope, plainName(node.text))) !== undefined) return;
    texts.add(node.text);
  });
  const all = [...texts];
  const areas = all.length === 0 ? [] : await book.resolve(all.map((text) => ({ text, from: address })));
  return all.filter((_, at) => areas[at] === undefined);
}

/** Why a mended cell still fails: the host's message, else the call's own, else the names that it doesn't know. */
async function messageFor(book: Workbook, engine: Engine, cell: Damage, value: CellValue): Promise<string> {
  if (!isCellFault(value)) return "";
  if (value.message !== undefined && value.message !== "") return value.message;
  const { address, meant: formula } = cell;
  const [reading] = await readCells(book, [{ address, formula, value }], engine);
  for (const { outcome } of reading?.calls ?? [])
    if (outcome !== undefined && isOutcomeFault(outcome) && outcome.message !== undefined) return outcome.message;
  const unknown = await unknownReferences(book, address, formula);
  if (unknown.length > 0) return `${unknown.join(", ")} can't be followed here`;
  return value.code === "#NAME?" ? "another name in the formula isn't known here" : "its inputs give this error";
}

/** More failing cells than these get no reason of their own: each costs the host a question. */
const MOST_EXPLAINED = 200;

async function outcomes(
  book: Workbook,
  engine: Engine,
  cells: readonly Damage[],
  blocks: readonly Block[],
  pause: NextSlice,
): Promise<readonly MendOutcome[]> {
  const found: MendOutcome[] = [];
  let explained = 0;
  for (const [at, cell] of cells.entries()) {
    await pause();
    const { address, meant: formula } = cell;
    const value = valueOf(blocks[at]);
    if (formulaOf(blocks[at]) === "")
      found.push({ address, formula, outcome: { left: "the cell keeps it as a text" } });
    else if (!isCellFault(value)) found.push({ address, formula, outcome: { value } });
    else {
      const message =
        explained++ < MOST_EXPLAINED ? await messageFor(book, engine, cell, value) : (value.message ?? "");
      found.push({ address, formula, outcome: { failing: value.code, message } });
    }
  }
  return found;
}

const holds = (block: Block | undefined, { kind, now }: Damage): boolean =>
  kind === "text" ? formulaOf(block) === "" && valueOf(block) === now : formulaOf(block) === now;

/** Writes what is meant, which the preview calculates at once; Excel calculates when asked. */
async function write(book: Workbook, due: readonly Damage[], options: MendOptions): Promise<void> {
  if (due.length === 0) return;
  const { signal, onProgress, onStage } = options;
  await book.write(
    due.map(({ address: { sheet, row, column }, meant, kind }) => ({
      ...{ sheet, row, column, content: meant },
      ...(kind === "text" && { fromText: true as const }),
    })),
    {
      ...(signal && { signal }),
      ...(onProgress && { onProgress: onProgress.bind(options) }),
      ...(onStage && { onStage: onStage.bind(options) }),
    },
  );
  options.onWritten?.();
  if (book.host !== "preview") await book.recalculate(due.map(({ address }) => cellArea(address)));
}

/**
 * Mends the listed cells that still hold what the list says, in one write, which is one undo step if the host supports
 * that, and calculates them again.
 * @throws CANCELLED where it was cancelled before all was written: the workbook is as it was
 */
export async function mendCells(
  book: Workbook,
  engine: Engine,
  cells: readonly Damage[],
  options: MendOptions = {},
): Promise<readonly MendOutcome[]> {
  const { slices = {}, signal } = options;
  const before = await read(
    book,
    cells.map(({ address }) => address),
    timeSlices(slices, signal ? [signal] : []),
  );
  const due = cells.filter((cell, at) => holds(before[at], cell));
  const changed = cells.filter((cell, at) => !holds(before[at], cell));
  await write(book, due, options);
  const addresses = due.map(({ address }) => address);
  const pause = timeSlices(slices, []);
  const after = await outcomes(book, engine, due, await calculated(book, addresses, pause), pause);
  const left = changed.map(({ address, meant }): MendOutcome => {
    return { address, formula: meant, outcome: { left: "it was changed since the list was made" } };
  });
  return [...after, ...left];
}
