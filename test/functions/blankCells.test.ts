/** What blank cells mean in optional arguments: by trial, on every platform, and as docs/blank-cells.md prints it. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import type { CellInput } from "../../core";
import { evaluate, type Compiled } from "../../core/kernel/call/evaluate";
import { kindOf } from "../../core/kernel/call/admit";
import { KINDS, toBase } from "../../core/kernel/values/quantity";
import {
  blankCellRows,
  blankCellsPage,
  inputsWith,
  meaningInSi,
  meaningOf,
  namesArgument,
  triedCall,
} from "../../scripts/blankCells";
import type { BlankCellRow } from "../../scripts/blankCells";
import { metadataOf } from "../../scripts/metadata";
import { cellCall } from "../../src/functions/call";
import { BLANK, type Argument } from "../excelHost/host/cellCalls";
import { excelHost, install, MAC_20, WEB, WINDOWS_20, type Profile } from "../excelHost";

const ROWS = blankCellRows();
const titleOf = ({ id, name }: BlankCellRow): string => `${id}, ${name}`;
/** Without units: where every example is in SI, its numbers are refused without them, alike each way. */
const OWN = ROWS.filter(({ name }) => name !== "units");
const CASES = ROWS.map((row) => [titleOf(row), row] as const);

/** Whether 0 in US units is within the argument's limits, by the definition alone. */
function zeroIsWithin({ arg }: BlankCellRow): boolean {
  const { shape } = arg;
  if (shape.type === "yes/no") return true;
  if (shape.type !== "quantity") return false;
  const { kind, above = -Infinity, from = -Infinity, below = Infinity, to = Infinity } = shape;
  const zero = toBase(0, KINDS[kindOf(kind, {})].US);
  return zero > above && zero >= from && zero < below && zero <= to;
}

/** Whether leaving the argument out means 0 or FALSE by its default. */
const zeroIsDefault = ({ arg: { fallback } }: BlankCellRow): boolean => fallback === 0 || fallback === false;

it("docs/blank-cells.md is up to date: npm run blank-cells", async () => {
  expect(readFileSync("docs/blank-cells.md", "utf8")).toBe(await blankCellsPage(ROWS));
});

/** Needed, and behind an optional argument: Excel takes no required one there. */
const BY_FORM = new Set(["NOTE.VERDICT, computed"]);

it("the table holds every optional argument, numbers and words, and each is answered when left out", () => {
  expect(new Set(ROWS.map(({ arg }) => arg.shape.type))).toEqual(
    new Set(["quantity", "choice", "either", "yes/no", "block", "rows", "text"]),
  );
  expect(OWN.filter((row) => row.omitted.refusal !== undefined && !BY_FORM.has(titleOf(row))).map(titleOf)).toEqual([]);
  expect(ROWS.filter(zeroIsWithin).length).toBeGreaterThan(23);
});

it("a 0 in SI counts as the table says, wherever the same numbers are answered in SI", () => {
  const told: string[] = [];
  for (const row of OWN) {
    const compiled = COMPILED.get(row.id) as Compiled;
    if (compiled.unitsAt < 0) continue;
    const inputs = inputsWith(row.inputs, compiled.unitsAt, "SI");
    const outcome = (value: CellInput) => triedCall(row.id, inputsWith(inputs, row.place, value));
    const omitted = outcome(null);
    if (omitted.refusal !== undefined) continue;
    const expected = meaningInSi(row) ?? meaningOf(row, row.zero);
    expect(meaningOf({ ...row, omitted }, outcome(0)), titleOf(row)).toBe(expected);
    if (meaningInSi(row) !== undefined) told.push(titleOf(row));
  }
  expect(told).toContain("PIPE.HEADLOSS, water");
});

/** Given alone they are refused in words: each needs a second argument. */
const NEEDS_ANOTHER = new Set(["POOL.WARMUP, air", "CLIMATE.MONTHS, latitude", "CLIMATE.MONTHS, longitude"]);

it("a 0 is refused only where the argument needs another one, and the message names both", () => {
  const refused = OWN.filter(({ zero }) => zero.refusal !== undefined);
  expect(new Set(refused.map(titleOf))).toEqual(NEEDS_ANOTHER);
  for (const { zero } of refused)
    expect(zero.refusal).toMatch(
      /^(?:area: is needed with air:|latitude: is blank: a posit|longitude: is blank: a posit)/,
    );
});

describe.each(CASES)("A blank in %s", (_, row) => {
  const zero = meaningOf(row, row.zero);

  it("as null or a blank text gives what leaving the argument out gives", () => {
    expect(row.none).toEqual(row.omitted);
    expect(row.text).toEqual(row.omitted);
  });

  it.runIf(!zeroIsWithin(row))("as 0 counts as left out, and ZERO-OR-BLANK names a quantity", () => {
    expect(row.zero.out).toBe(row.omitted.out);
    expect(namesArgument(row.zero, row.name)).toBe(row.arg.shape.type === "quantity");
  });

  it.runIf(zeroIsWithin(row) && !NEEDS_ANOTHER.has(titleOf(row)))(
    "as 0 counts as 0, and ZERO-OR-BLANK names it unless the default means the same",
    () => {
      expect(zero).toMatch(zeroIsDefault(row) ? /^as left out$/ : /^taken as (?:0|FALSE)$/);
      expect(namesArgument(row.zero, row.name)).toBe(!zeroIsDefault(row));
    },
  );
});

it.each(CASES.filter(([, { name }]) => name === "basis"))(
  "an altitude of 0 ft in %s is what a 0 counts as",
  (_, row) => {
    const out = evaluate(COMPILED.get(row.id) as Compiled, inputsWith(row.inputs, row.place, "0 ft"), CATALOGUE);
    expect(JSON.stringify(out)).toBe(row.omitted.out);
  },
);

describe.each([WEB, WINDOWS_20, MAC_20])("On $name", (profile: Profile) => {
  const METADATA = new Map(metadataOf(CATALOGUE, (id) => id).functions.map((entry) => [entry.id, entry]));

  /** The cells' results of calls through the runtime of this Excel, in their order. */
  async function results(calls: readonly { readonly id: string; readonly args: readonly Argument[] }[]) {
    const excel = excelHost(profile, ["Data"]);
    const restore = install(excel);
    const associate = excel.client.CustomFunctions["associate"] as (id: string, call: unknown) => void;
    for (const [id, compiled] of COMPILED) associate(id, cellCall(compiled));
    try {
      // Far apart: a spill must find its cells empty.
      const cells = calls.map(({ id, args }, at) => {
        const facts = METADATA.get(id);
        if (facts === undefined) throw new Error(`no function ${id}`);
        return excel.host.functions.call(excel.host.book.active.sheet, { row: 100 * at, column: 0 }, facts, args);
      });
      return (await Promise.all(cells)).map(({ value, message }) => JSON.stringify([value, message]));
    } finally {
      restore();
    }
  }

  const withValue = ({ id, inputs, place }: BlankCellRow, value: Argument) => ({
    id,
    args: inputsWith(inputs as readonly Argument[], place, value),
  });

  it("a blank cell gives what the table says: the same as on every other platform, or the caution names it", async () => {
    const [omitted, text, blank] = [
      await results(ROWS.map((row) => withValue(row, null))),
      await results(ROWS.map((row) => withValue(row, ""))),
      await results(ROWS.map((row) => withValue(row, BLANK))),
    ];
    expect(text).toEqual(omitted);
    for (const [at, row] of ROWS.entries()) {
      const told = profile.blank === 0 ? meaningOf(row, row.zero) : meaningOf(row, row.none);
      if (told === "as left out") expect(blank?.[at], titleOf(row)).toBe(omitted?.[at]);
      else if (NEEDS_ANOTHER.has(titleOf(row))) expect(blank?.[at], titleOf(row)).toContain(row.zero.refusal);
      else expect(namesArgument(row.zero, row.name), titleOf(row)).toBe(true);
    }
  });
});
