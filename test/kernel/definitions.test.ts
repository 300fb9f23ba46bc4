/** What a definition is made of: labels, arguments, results; and how a function is found. */
import { describe, expect, test } from "vitest";
import * as argument from "../../core/kernel/define/argument";
import { catalogueOf, lookUp } from "../../core/kernel/define/catalogue";
import { SEVERITIES } from "../../core/kernel/define/caution";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { withNoteParts, type NoteParts } from "../../core/kernel/define/noteParts";
import * as result from "../../core/kernel/define/result";
import { singlesOf } from "../../core/kernel/define/unitsArgument";
import { doubling, reading, tooLong } from "./sample";

const { block, choice, either, labelOf, literalDefaults, normalizeKey, quantity, rows, several, sheet, text, yesNo } =
  argument;
const { gridResult, listResult, quantityResult, rowResult, tableResult, wordResult } = result;

describe("A key as a label", () => {
  test.each([
    ["flow", "flow"],
    ["waterTemperature", "water temperature"],
    ["windAt10m", "wind at 10 m"],
    ["poolArea", "pool area"],
    ["ratedCOP", "rated COP"],
    ["size2Inch", "size 2 inch"],
    ["part12", "part 12"],
    ["R22Mass", "R22 mass"],
    ["Title", "title"],
  ])("%s reads %s, the first time and again", (key, label) =>
    expect([labelOf(key), labelOf(key)]).toEqual([label, label]),
  );

  test.each([
    [" Wind at 10 m: ", "windat10m"],
    ["1/2 in.", "1/2in."],
    ["Übergang--Stück", "übergangstück"],
  ])("%s is compared as %s", (label, key) => expect(normalizeKey(label)).toBe(key));
});

describe("An argument", () => {
  const length = quantity("length", "a length", { above: 0, whole: true });
  const seen = ({ shape, description, presence, fallback }: argument.ArgData) => ({
    shape,
    description,
    presence,
    fallback,
  });
  const shape = { type: "quantity", kind: "length", above: 0, whole: true };

  test("is needed unless it has a default or is optional, and keeps its kind and limits in every form", () => {
    const base = { shape, description: "a length", fallback: undefined };
    expect(seen(length)).toEqual({ ...base, presence: "required" });
    expect(length).not.toHaveProperty("fallback");
    expect(seen(length.default(2))).toEqual({ ...base, presence: "default", fallback: 2 });
    expect(seen(length.default(2).optional())).toEqual({ ...base, presence: "optional" });
    expect(seen(length.default(2).describedAs("another"))).toEqual({
      ...base,
      description: "another",
      presence: "default",
      fallback: 2,
    });
    expect(seen(length.optional().describedAs("more")).presence).toBe("optional");
  });

  test("has the shape of its builder", () => {
    const scale = choice("Scale", ["once", "twice"], "how often");
    expect(scale.shape).toEqual({ type: "choice", name: "Scale", words: ["once", "twice"] });
    expect(choice("Scale", ["once"], "how often", { one: "once" }, { two: "type 2" }).shape).toEqual({
      type: "choice",
      name: "Scale",
      words: ["once"],
      aliases: { one: "once" },
      instead: { two: "type 2" },
    });
    expect(several("length", "lengths", [1, 2], { above: 0 }).shape).toEqual({
      type: "several",
      kind: "length",
      counts: [1, 2],
      above: 0,
    });
    expect([text("a name").shape, text("a name", 9).shape]).toEqual([
      { type: "text", longest: 255 },
      { type: "text", longest: 9 },
    ]);
    expect(yesNo("whether").shape).toEqual({ type: "yes/no" });
    expect(either(scale, length, "either").shape).toEqual({ type: "either", choice: scale.shape, quantity: shape });
    expect(block({ length }, "inputs").shape).toEqual({ type: "block", entries: { length } });
    expect(rows({ length }, "rows", { least: 1, most: 3 }).shape).toEqual({
      type: "rows",
      columns: { length },
      least: 1,
      most: 3,
    });
    expect(sheet("a range", 12).shape).toEqual({ type: "sheet", mostCells: 12 });
    expect(argument.repeat("the rest").shape).toEqual({ type: "repeat" });
  });

  test("of every builder is described in its own words and needed", () => {
    const made = [
      choice("Scale", ["once"], "w"),
      several("length", "w", [1]),
      text("w"),
      yesNo("w"),
      either(choice("Scale", ["once"], "x"), length, "w"),
      block({ length }, "w"),
      rows({ length }, "w", { least: 1, most: 3 }),
      sheet("w", 12),
      argument.repeat("w"),
    ];
    for (const { description, presence } of made) expect([description, presence]).toEqual(["w", "required"]);
  });

  test("of a block that is left out whole has the defaults of its labels", () =>
    expect(literalDefaults({ length: length.default(3), cover: yesNo("cover").default(false) })).toEqual({
      length: 3,
      cover: false,
    }));
});

describe("A result", () => {
  const size = quantityResult("length", "a size", { or: "none", optional: true });
  const note = wordResult("a note");

  test("has the shape of its builder", () => {
    expect(size).toEqual({ type: "quantity", kind: "length", description: "a size", or: "none", optional: true });
    expect(quantityResult("length", "a size")).toEqual({ type: "quantity", kind: "length", description: "a size" });
    expect(note).toEqual({ type: "word", description: "a note" });
    expect(listResult("a list", { size })).toEqual({ type: "list", rows: { size }, description: "a list" });
    expect(tableResult("a table", { size })).toEqual({ type: "table", columns: { size }, description: "a table" });
    expect(tableResult("a table", { size }, { total: true })).toMatchObject({ total: true });
    expect(rowResult("a row", { size })).toEqual({ type: "row", cells: { size }, description: "a row" });
    expect(gridResult("a grid")).toEqual({ type: "grid", description: "a grid" });
    expect(result.NO_VALUE).toBe("");
  });

  test("is made of its single values; one by itself is the answer", () => {
    const both = [
      ["size", size],
      ["note", note],
    ];
    expect(singlesOf(listResult("a list", { size, note }))).toEqual(both);
    expect(singlesOf(tableResult("a table", { size, note }))).toEqual(both);
    expect(singlesOf(rowResult("a row", { size, note }))).toEqual(both);
    expect(singlesOf(size)).toEqual([["answer", size]]);
    expect(singlesOf(note)).toEqual([["answer", note]]);
    expect(singlesOf(gridResult("a grid"))).toEqual([]);
  });
});

describe("A catalogue", () => {
  const catalogue = catalogueOf([doubling], [reading]);

  test("holds the topics' functions in their order", () => expect(catalogue).toEqual([doubling, reading]));

  test.each([
    ["SAMPLE.READING"],
    ["sample.reading"],
    ["  Sample.Reading "],
    ["WARMBACK.SAMPLE.READING"],
    ["=WARMBACK.SAMPLE.READING(120, A1(2))"],
    ["=sample.reading("],
  ])("finds a function by %j", (name) => expect(lookUp(catalogue, name)).toBe(reading));

  test.each([
    "",
    "READING",
    "SAMPLE.",
    "SAMPLE.READINGS",
    "X=SAMPLE.READING",
    "SAMPLE.WARMBACK.READING",
    "SAMPLE=.READING",
  ])("finds none by %j", (name) => expect(lookUp(catalogue, name)).toBeUndefined());

  test("gets its parts for notes by id, and refuses a function without", () => {
    const bare: CellFunction = { ...doubling, cautions: [], checks: [] };
    const parts: NoteParts = { id: doubling.id, cautions: doubling.cautions, checks: doubling.checks };
    const [first] = withNoteParts([bare], [{ ...parts, id: "OTHER" }, parts]);
    expect(first).toEqual(doubling);
    expect(first).not.toHaveProperty("example");
    expect(first).not.toHaveProperty("bibliography");
    const bibliography = {} as NonNullable<NoteParts["bibliography"]>;
    const [second] = withNoteParts([bare], [{ ...parts, example: { length: 3 }, bibliography }]);
    expect(second).toEqual({ ...doubling, example: { length: 3 }, bibliography });
    expect(() => withNoteParts([reading], [parts])).toThrow("SAMPLE.READING: its cautions and checks are missing");
  });

  test("has cautions in four degrees, the worst first, each as it was declared", () => {
    expect(SEVERITIES).toEqual(["Danger", "Warning", "Caution", "Notice"]);
    expect(tooLong).toMatchObject({ code: "SAMPLE-LONG", needs: { length: "length", doubled: "length" } });
  });
});
