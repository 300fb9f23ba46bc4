/** The page with the mixed workbook open: drives it and reads its cells. */
import type { CDPSession, Page } from "playwright-core";
import type { CellValue, CellWrite } from "../src/workbook/port";
import type {} from "../src/preview/page";
import { CALLS, COLUMN, FIRST_ROW, INPUTS, rowOf, SHARED_COLUMN } from "./mixedSheets";

const WAIT = { timeout: 120_000 };

/** A text: what runs programs here would add a helper to a function's parts that the page doesn't have. */
const COUNTING = `
  globalThis.warmbackCalls = 0;
  let shim;
  Object.defineProperty(globalThis, "CustomFunctions", {
    configurable: true,
    get: () => shim,
    set(made) {
      const count = (call) => (...args) => {
        globalThis.warmbackCalls += 1;
        return call(...args);
      };
      shim = { ...made, associate: (id, call) => made.associate(id, count(call)) };
    },
  });
`;

/** Counts calls of the associated functions: to be called before the page is loaded. */
export const countCalls = (page: Page): Promise<unknown> => page.addInitScript({ content: COUNTING });

export const callCount = (page: Page): Promise<number> =>
  page.evaluate(() => (globalThis as unknown as { readonly warmbackCalls: number }).warmbackCalls);

export async function openBook(page: Page, path: string): Promise<void> {
  await page.locator("#said", { hasText: /^A1 / }).waitFor(WAIT);
  await page.locator("#save:enabled").waitFor(WAIT);
  await page.locator("#file").setInputFiles(path);
  await page.locator("#status", { hasText: /is open\./ }).waitFor(WAIT);
}

/** Waits until the engine has calculated all changes. */
export const calculated = (page: Page): Promise<void> =>
  page.evaluate(() => globalThis.warmbackPreview?.workbook.recalculate([]));

export async function write(page: Page, cells: readonly CellWrite[]): Promise<void> {
  await page.evaluate(async (all) => globalThis.warmbackPreview?.workbook.write(all), cells);
}

/** The panel has looked through the changed sheets, and the page keeps the workbook in the browser's store. */
export async function quiet(page: Page): Promise<void> {
  await page.waitForTimeout(2_500);
  await page.locator("#panel .view:not([hidden]):not([aria-busy])").first().waitFor(WAIT);
  await page.waitForTimeout(500);
}

/** All lines as the sheet shows them, by column. */
export const readLines = (page: Page, count: number): Promise<readonly (readonly CellValue[])[]> =>
  page.evaluate(async (area) => (await globalThis.warmbackPreview?.workbook.read([area]))?.[0]?.values ?? [], {
    sheet: CALLS,
    row: FIRST_ROW,
    column: 0,
    rows: count,
    columns: COLUMN.largest + 1,
  });

export const inputCell = (at: number, content: number): CellWrite => ({
  sheet: CALLS,
  row: rowOf(at),
  column: COLUMN.input,
  content,
});

export const sharedCell = (at: number, content: number): CellWrite => ({
  sheet: INPUTS,
  row: FIRST_ROW + at,
  column: SHARED_COLUMN,
  content,
});

export interface HeapState {
  readonly heapMb: number;
  /** Nodes that scripts hold and that aren't in the page. */
  readonly detached: number;
  readonly listeners: number;
}

interface TreeNode {
  readonly childNodeCount?: number;
  readonly children?: readonly TreeNode[];
}

const nodesIn = ({ children, childNodeCount = 0 }: TreeNode): number =>
  1 + (children?.reduce((sum, child) => sum + nodesIn(child), 0) ?? childNodeCount);

/** What scripts hold alone: the browser itself keeps a node of every typed entry, to undo it. */
async function detachedNodes(session: CDPSession): Promise<number> {
  await session.send("DOM.enable");
  // What is asked of the page's nodes is known of those that have been asked for.
  await session.send("DOM.getDocument");
  const { detachedNodes: trees } = await session.send("DOM.getDetachedDomNodes");
  await session.send("DOM.disable");
  return trees.reduce((sum, { treeNode }) => sum + nodesIn(treeNode), 0);
}

/** After the garbage is collected. */
export async function heapState(session: CDPSession): Promise<HeapState> {
  await session.send("HeapProfiler.collectGarbage");
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  const { metrics } = await session.send("Performance.getMetrics");
  const listeners = metrics.find(({ name }) => name === "JSEventListeners")?.value ?? Number.NaN;
  return { heapMb: usedSize / 1e6, detached: await detachedNodes(session), listeners };
}

/** Types a number into the input of a line, as a person does; the keyboard must be in the grid. */
export async function typeInput(page: Page, at: number, content: number): Promise<void> {
  await page.evaluate((cell) => globalThis.warmbackPreview?.workbook.select(cell), {
    sheet: CALLS,
    row: rowOf(at),
    column: COLUMN.input,
  });
  await page.keyboard.type(String(content));
  await page.keyboard.press("Enter");
}

/** Moves the keyboard into the grid. */
export async function enterGrid(page: Page): Promise<void> {
  const isThere = (): Promise<boolean> =>
    page.evaluate(() => document.getElementById("sheet")?.contains(document.activeElement) === true);
  for (let area = 0; area < 4 && !(await isThere()); area++) await page.keyboard.press("F6");
  if (!(await isThere())) throw new Error("F6 doesn't lead into the grid");
}
