/** Breaks commands off at chosen actions and says what each leaves behind. */
import { excelHost, install, type Profile } from "./index";
import type { Host } from "./host/objects";
import { quiet } from "./running";
import type { BookModel, SheetModel } from "./model/workbook";

/** A command of the product's, and the workbook that it meets. */
export interface Command {
  readonly name: string;
  prepare(host: Host): void;
  run(host: Host): Promise<unknown>;
}

const SHEETS = ["Sheet1", "Data"];

/** Letting go of objects is the client's own business, and retried by it. */
const counts = (label: string): boolean => !label.endsWith("._RemoveReference") && label !== "trace";

/** Labels of all actions that a command sends, in their order. */
export async function actionsOf(profile: Profile, command: Command): Promise<readonly string[]> {
  const labels: string[] = [];
  await broken(profile, command, ({ label }) => {
    labels.push(label);
    return false;
  });
  return labels;
}

/** Places of the first action of each label, the first and the last of all. */
export function distinct(labels: readonly string[]): readonly number[] {
  const firsts = labels.flatMap((label, at) => (labels.indexOf(label) === at ? [at] : []));
  return [...new Set([0, ...firsts, labels.length - 1])].filter((at) => at >= 0);
}

export interface Outcome {
  /** The sentence of the refusal; undefined where the command went through all the same. */
  readonly refused: string | undefined;
  /** What is there that wasn't before, or gone, or changed. */
  readonly left: readonly string[];
  /** Rejections that nobody handled. */
  readonly unhandled: readonly string[];
  /** Members that the stand-in doesn't know. */
  readonly unknown: readonly string[];
}

const cellsOf = ({ cells }: SheetModel): string =>
  JSON.stringify([...cells].sort(([a], [b]) => a - b).map(([key, cell]) => [key, cell.formula, cell.value]));

function differences(
  before: ReadonlyMap<string, string>,
  { sheets, names }: BookModel,
  known: readonly string[],
): string[] {
  const titles = sheets.map(({ name }) => name);
  return [
    ...titles.filter((title) => !before.has(title)).map((title) => `the sheet ${title} is left`),
    ...[...before.keys()].filter((title) => !titles.includes(title)).map((title) => `the sheet ${title} is gone`),
    ...sheets
      .filter((sheet) => before.has(sheet.name) && before.get(sheet.name) !== cellsOf(sheet))
      .map(({ name }) => `cells of ${name} are changed`),
    ...[...names.keys()].filter((name) => !known.includes(name)).map((name) => `the name ${name} is left`),
  ];
}

/** Takes rejections that nobody handles in the test runner's place, until the returned function is called. */
function catchUnhandled(): () => string[] {
  const caught: string[] = [];
  const others = process.listeners("unhandledRejection");
  process.removeAllListeners("unhandledRejection");
  process.on("unhandledRejection", (reason) => caught.push(reason instanceof Error ? reason.message : String(reason)));
  return () => {
    process.removeAllListeners("unhandledRejection");
    for (const other of others) process.on("unhandledRejection", other);
    return caught;
  };
}

type Hits = (met: { label: string; at: number }) => boolean;

async function broken(profile: Profile, command: Command, hits: Hits, code = "InvalidArgument"): Promise<Outcome> {
  const excel = excelHost(profile, SHEETS);
  const { host } = excel;
  command.prepare(host);
  // What the preparation set off is told before the command begins.
  await quiet(host);
  const before = new Map(host.book.sheets.map((sheet) => [sheet.name, cellsOf(sheet)]));
  const names = [...host.book.names.keys()];
  const restore = install(excel);
  let at = 0;
  let done = false;
  host.fault = ({ label }) => {
    if (done || !counts(label)) return undefined;
    if (!hits({ label, at: at++ })) return undefined;
    done = true;
    return code;
  };
  const unhandled = catchUnhandled();
  try {
    const refused = await command.run(host).then(
      () => undefined,
      (error: unknown) => (error instanceof Error ? error.message : String(error)),
    );
    await quiet(host);
    const caught = unhandled();
    return { refused, left: differences(before, host.book, names), unhandled: caught, unknown: [...host.unknown] };
  } finally {
    host.unknown.length = 0;
    restore();
  }
}

/** The same, broken off at one action. */
export const brokenAt = (profile: Profile, command: Command, place: number, code?: string): Promise<Outcome> =>
  broken(profile, command, ({ at }) => at === place, code);
