/** Short ways for tests that ask the client themselves. */
import type { Host } from "./host/objects";
import type { ExcelStandIn } from "./index";

export function run<T>(
  { Excel }: ExcelStandIn,
  batch: (context: Excel.RequestContext) => Promise<T>,
  options: Excel.RunOptions = { delayForCellEdit: true },
): Promise<T> {
  return Excel.run(options, batch);
}

/** The code that a promise is rejected with; undefined where it is kept. */
export async function codeOf(promise: Promise<unknown>): Promise<string | undefined> {
  try {
    await promise;
    return undefined;
  } catch (error) {
    return String((error as { code?: unknown }).code ?? error);
  }
}

/** What a load of one range gives. */
export async function loaded(excel: ExcelStandIn, address: string, ...names: readonly string[]): Promise<Excel.Range> {
  const [sheet = "", cells = ""] = address.split("!");
  return run(excel, async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(cells);
    range.load(names.join(","));
    await context.sync();
    return range;
  });
}

/** Until every request has its answer and none has come for a while of turns. */
export async function quiet(host: Host): Promise<void> {
  for (let turns = 0; turns < 10; turns++) {
    await new Promise((resolve) => setTimeout(resolve, 1));
    if (host.pending() > 0) turns = 0;
  }
}
