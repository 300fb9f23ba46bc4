/**
 * What a blank cell means in each optional argument of each function: docs/blank-cells.md, made by trying it. Excel passes
 * a blank cell as 0 on the desktop and as null on the web, and null for an argument that was left out.
 */
import { format, resolveConfig } from "prettier";
import {
  CATALOGUE,
  type CellFunction,
  type CellInput,
  COMPILED,
  defaultText,
  exampleArgs,
  explain,
  fromBase,
  isFault,
  KINDS,
  type PlacedArg,
  placedArgs,
  rawByPlace,
  type System,
} from "../core";

/** What a call gives: its value or the fault's text, and the caution about zeros that may be blank cells. */
interface Outcome {
  readonly out: string;
  readonly refusal: string | undefined;
  readonly caution: string;
}

export interface BlankCellRow {
  readonly id: string;
  readonly name: string;
  readonly arg: PlacedArg[1];
  /** Arguments by place, null at the argument's own. */
  readonly inputs: readonly CellInput[];
  readonly place: number;
  readonly omitted: Outcome;
  readonly none: Outcome;
  readonly text: Outcome;
  readonly zero: Outcome;
}

export function triedCall(id: string, raw: readonly CellInput[]): Outcome {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`${id} is not in the catalogue`);
  const { out, cautions } = explain(compiled, raw, CATALOGUE, { steps: false });
  const caution = cautions.find(({ code }) => code === "ZERO-OR-BLANK")?.text ?? "";
  return { out: JSON.stringify(out), refusal: isFault(out) ? out.message : undefined, caution };
}

/** The arguments with a value at a place; those behind it that were left out stay null, as Excel passes them. */
export function inputsWith<T>(inputs: readonly T[], place: number, value: T): readonly (T | null)[] {
  const length = Math.max(place + 1, inputs.length);
  return Array.from({ length }, (_, at) => (at === place ? value : (inputs[at] ?? null)));
}

function withoutTrailing(inputs: readonly CellInput[]): readonly CellInput[] {
  let end = inputs.length;
  while (end > 0 && inputs[end - 1] === null) end--;
  return inputs.slice(0, end);
}

/** All sets of arguments that a definition brings, the example first. */
function inputSets(definition: CellFunction): readonly (readonly CellInput[])[] {
  const example = exampleArgs(definition);
  const others = [
    ...definition.checks.map((check) => check.inputs),
    ...definition.cautions.map((each) => each.raisedBy),
  ];
  return [...(example === undefined ? [] : [example]), ...others].map((at) => rawByPlace(definition, at));
}

function rowOf(definition: CellFunction, place: number): BlankCellRow {
  const [name, arg] = placedArgs(definition)[place] as PlacedArg;
  const { id } = definition;
  const sets = inputSets(definition).map((inputs) => inputsWith(inputs, place, null));
  const answers = (inputs: readonly CellInput[]): boolean => triedCall(id, inputs).refusal === undefined;
  const isAnswered = (inputs: readonly CellInput[]): boolean => answers(withoutTrailing(inputs));
  // Some arguments replace or need each other: where the example refuses one of the ways, another set may take them all.
  const takesZero = (inputs: readonly CellInput[]): boolean => answers(inputsWith(inputs, place, 0));
  const inputs = sets.find((each) => isAnswered(each) && takesZero(each)) ?? sets.find(isAnswered) ?? sets[0];
  if (inputs === undefined) throw new Error(`${id} has no example`);
  const omitted = triedCall(id, withoutTrailing(inputs));
  const given = (value: CellInput): Outcome => triedCall(id, inputsWith(inputs, place, value));
  return { id, name, arg, place, inputs, omitted, none: given(null), text: given(""), zero: given(0) };
}

const isOptional = ([, { presence, shape }]: PlacedArg): boolean => presence !== "required" && shape.type !== "repeat";

/** Every optional argument of every function, `units` among them, with what each kind of blank gives. */
export function blankCellRows(): readonly BlankCellRow[] {
  return CATALOGUE.flatMap((definition) =>
    placedArgs(definition).flatMap((placed, place) => (isOptional(placed) ? [rowOf(definition, place)] : [])),
  );
}

export type BlankMeaning = "as left out" | "taken as 0" | "taken as FALSE" | "another result" | `refused: ${string}`;

/** The caution's sentence about zeros that count: behind it may come one about those that don't. */
const takenAsZero = ({ caution }: Outcome): string => /Taken as 0: [^.]*\./.exec(caution)?.[0] ?? "";

export const namesArgument = ({ caution }: Outcome, name: string): boolean => caution.includes(`"${name}"`);

/** What a blank counts as, in words. */
export function meaningOf({ name, arg, omitted }: BlankCellRow, blank: Outcome): BlankMeaning {
  if (takenAsZero(blank).includes(`"${name}"`)) return arg.shape.type === "yes/no" ? "taken as FALSE" : "taken as 0";
  if (blank.out === omitted.out) return "as left out";
  return blank.refusal === undefined ? "another result" : `refused: ${blank.refusal}`;
}

/** Whether 0 in a system's unit is within a quantity's limits: 0 °F and 0 °C are two temperatures. */
function zeroIsWithin({ arg: { shape } }: BlankCellRow, system: System): boolean | undefined {
  if (shape.type !== "quantity" || typeof shape.kind !== "string") return undefined;
  const unit = KINDS[shape.kind][system];
  const [above, from, below, to] = [shape.above, shape.from, shape.below, shape.to].map((limit) =>
    limit === undefined ? undefined : Number(fromBase(limit, unit).toFixed(9)),
  );
  return (above ?? -1) < 0 && (from ?? 0) <= 0 && (below ?? 1) > 0 && (to ?? 0) >= 0;
}

/** What a 0 counts as in SI, where that is another thing than in US units. */
export function meaningInSi(row: BlankCellRow): BlankMeaning | undefined {
  const within = zeroIsWithin(row, "SI");
  if (within === zeroIsWithin(row, "US")) return undefined;
  return within === true ? "taken as 0" : "as left out";
}

function omittedText({ arg }: BlankCellRow): string {
  const [us, si] = [defaultText(arg, "US"), defaultText(arg, "SI")];
  if (us === "") return "not given";
  return us === si ? us : `${us} (SI: ${si})`;
}

function cellsOf(row: BlankCellRow): readonly string[] {
  const [none = "", text = "", zero = ""] = [row.none, row.text, row.zero].map((blank) => meaningOf(row, blank));
  const si = meaningInSi(row);
  const means = [none, text, si === undefined ? zero : `${zero} (SI: ${si})`];
  return [`\`${row.name}\``, omittedText(row), ...means, namesArgument(row.zero, row.name) ? "yes" : "no"];
}

/** Rows as a Markdown table; the argument `units` once for all functions that have it. */
function table(rows: readonly BlankCellRow[]): string {
  const units = rows.filter(({ name }) => name === "units");
  const lines = new Map(units.map((row) => [cellsOf(row).join(" | "), `the ${String(units.length)} with units`]));
  const own = rows.filter(({ name }) => name !== "units");
  return [
    '| function | argument | left out | `null`: blank cell, web | `""`: blank text | `0`: blank cell, Windows and Mac | caution |',
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...[...lines].map(([cells, functions]) => `| ${functions} | ${cells} |`),
    ...own.map((row) => `| \`${row.id}\` | ${cellsOf(row).join(" | ")} |`),
  ].join("\n");
}

const INTRODUCTION = `# Blank cells in optional arguments

This table is made by trying every optional argument of every function: \`npm run blank-cells\`. A test fails when it is out of date, and makes the same calls through the runtime of Excel on the web, on Windows and on a Mac.

A formula that leaves an argument out means the same everywhere. One that points at a blank cell doesn't: Excel on the web passes \`null\`, Excel on Windows and on a Mac passes 0. So leave the argument out; don't point at a blank cell.

- "as left out": the same result as without the argument. A 0 counts so if 0 is outside the argument's limits, in the units of the call: 0 °F and 0 °C are two temperatures.
- "taken as 0": 0 can be meant, so it counts. A blank cell then gives another result on Windows and on a Mac than on the web, and the caution ZERO-OR-BLANK names the argument.
- "caution": whether ZERO-OR-BLANK names the argument if it gets 0. It doesn't where 0 and leaving the argument out mean the same by the default, nor for an argument that takes a word: no word is 0, and an altitude of 0 counts as gauge pressure does.
`;

/** The whole page of all rows, formatted like the repository's files. */
export async function blankCellsPage(rows: readonly BlankCellRow[]): Promise<string> {
  const text = `${INTRODUCTION}\n${table(rows)}\n`;
  return format(text, { ...(await resolveConfig("docs/blank-cells.md")), parser: "markdown" });
}
