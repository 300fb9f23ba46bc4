/** Runs batches in Excel: tries again what is refused for a moment, and turns the rest into plain sentences. */
import { codeOf, isElsewhere, isPassing, sentence } from "./sentences";

export const supports = (version: string): boolean => Office.context.requirements.isSetSupported("ExcelApi", version);

type Batch<T> = (context: Excel.RequestContext) => Promise<T>;

/** Waits between attempts while Excel turns requests away, milliseconds. */
const BACK_OFF = [200, 600, 1_800];
/** How often Excel is asked whether the workbook is in front again, and how many times. */
const FRONT = { every: 500, most: 120 };

const rest = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function patiently<T>(run: () => Promise<T>): Promise<T> {
  let refusals = 0;
  for (let looks = 0; ;) {
    try {
      return await run();
    } catch (error) {
      const wait = isPassing(error) ? BACK_OFF[refusals++] : undefined;
      if (wait !== undefined) await rest(wait);
      else if (isElsewhere(error) && looks++ < FRONT.most) await rest(FRONT.every);
      else throw error;
    }
  }
}

async function plainly<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    const said = sentence(error);
    throw error instanceof Error && error.message === said ? error : new Error(said, { cause: error });
  }
}

/**
 * Reads, or does what may be done twice. Waits until the user has finished typing in a cell and until the workbook is in
 * front, where Excel asks for that.
 */
export function reading<T>(batch: Batch<T>): Promise<T> {
  return plainly(() => patiently(() => Excel.run({ delayForCellEdit: true }, batch)));
}

/** Changes what Excel can't undo, such as sheets: in no undo group, which would refuse it, and once only. */
export function changing<T>(batch: Batch<T>): Promise<T> {
  return plainly(() => Excel.run({ delayForCellEdit: true }, batch));
}

/**
 * Makes all changes of the batch one undo step where Excel can do that.
 * @param takeBack undoes what a broken batch left; the batch is made once more where only the undo group was refused
 */
export function writing<T>(batch: Batch<T>, takeBack: () => Promise<void>): Promise<T> {
  const once = async (options: Excel.RunOptions): Promise<T> => {
    try {
      return await Excel.run(options, batch);
    } catch (error) {
      // The first error is the true one.
      await takeBack().catch(() => undefined);
      throw error;
    }
  };
  return plainly(async () => {
    const plain = (): Promise<T> => once({ delayForCellEdit: true });
    if (!supports("1.20")) return patiently(plain);
    try {
      return await patiently(() => once({ delayForCellEdit: true, mergeUndoGroup: true }));
    } catch (error) {
      if (codeOf(error) !== "UndoNotSupported") throw error;
      return patiently(plain);
    }
  });
}

/**
 * Gives a range that is used within one request only. Excel then keeps no reference to it, which the client would have to
 * let go of with a request of its own.
 */
export function brief<T extends Excel.Range | Excel.RangeAreas>(range: T): T {
  range.untrack();
  return range;
}
