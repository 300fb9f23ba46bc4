/** Input blocks and rows: units beside values and in headers, headings, blanks that hosts pass as 0, and refusals. */
import { describe, expect, test } from "vitest";
import { block, choice, either, quantity, rows, several, text, type Args } from "../../core/kernel/define/argument";
import { us } from "../../core/kernel/values/quantity";
import { admittedRange } from "./oneArgument";

const COVER = choice("Cover", ["none", "bubble"], "the cover");
const INPUTS: Args = {
  poolArea: quantity("area", "the surface", { above: 0 }).optional(),
  depths: several("depth", "depths", [1, 2]).optional(),
  shade: either(choice("Shade", ["none", "half"], "shade"), quantity("length", "shade"), "shade").optional(),
  cover: COVER.optional(),
  rating: quantity("COP", "a rating").optional(),
  pressure: quantity("pressure", "a reading", { reading: true }).optional(),
  title: text("a title").optional(),
};
const admitBlock = (...lines: readonly unknown[]) => admittedRange(block(INPUTS, "inputs"), lines);
const admitRows = (columns: Args, least: number, most: number, ...lines: readonly unknown[]) =>
  admittedRange(rows(columns, "rows", { least, most }), lines);

describe("The unit beside a value of a block", () => {
  test.each<[string, readonly unknown[], unknown]>([
    ["belongs to a number", ["pool area", 50, " m2 "], 50],
    ["belongs to a text of a number", ["pool area", "1 1/2", "m2"], 1.5],
    ["yields to the value's own", ["pool area", "50 m2", "ft2"], 50],
    ["belongs to several values", ["depths", "1; 2", "m"], [1, 2]],
    ["belongs to a number in a word's place", ["shade", 2, "m"], 2],
    ["leaves a word alone", ["shade", "half", "m"], "half"],
    ["leaves a list's word alone", ["cover", "bubble", "type"], "bubble"],
    ["leaves a number alone whose kind has none", ["rating", 3, "W/W"], 3],
    ["leaves a text alone", ["title", 12, "m"], "12"],
  ])("%s", (_, line, value) =>
    expect(Object.values(admitBlock(line, ["pool area", null]))).toContainEqual(
      typeof value === "number" ? (expect.closeTo(value, 9) as number) : value,
    ),
  );

  test("of a pressure may be absolute: the reading counts over the standard atmosphere", () => {
    const over = (kPa: number) => expect.closeTo(kPa * 1000, 6) as number;
    expect(admitBlock(["pressure", 201.325, "kPa abs"], [])["pressure"]).toEqual(over(100));
    expect(admitBlock(["pressure", 100, "kPa gauge"], [])["pressure"]).toEqual(over(100));
    expect(admitBlock(["pressure", 100, "kPa"], [])["pressure"]).toEqual(over(100));
  });
});

describe("A line of a block", () => {
  test.each(["label", "Input", "INPUTS", "name", "quantity", "item"])("with the head %s is a heading", (head) =>
    expect(admitBlock([head, "value", "unit"], ["rating", 3])["rating"]).toBe(3),
  );

  test("with a number beside a heading's word is refused", () =>
    expect(admitBlock(["name", 5], ["rating", 3])).toMatch(/no label "name" here/));

  test("with a text beside an unknown label is refused", () =>
    expect(admitBlock(["owner", "the hall"], ["rating", 3])).toMatch(/no label "owner" here; NOTE\.INPUTS lists them/));

  test("of blanks is passed over, whether empty or 0, but not a number without label", () => {
    expect(admitBlock(["rating", 3], ["", 5], [null, 7], [0, 0], [0, null])["rating"]).toBe(3);
    expect(admitBlock(["rating", 3], [0, 5])).toMatch(/no label "0" here/);
  });

  test("with a blank leaves its label out, so that the label may come again", () =>
    expect(admitBlock(["rating", null], ["rating", 3], ["rating", ""])["rating"]).toBe(3));

  test("that is shorter than the others counts as blank", () =>
    expect(admitBlock(["rating", 3], ["cover"], [])["cover"]).toBeUndefined());

  test("with an error value passes the error on", () => {
    expect(admitBlock(["#REF!", 3], ["rating", 3])).toMatch(/holds #REF!/);
    expect(admitBlock(["rating", "#N/A"], ["cover", null])).toMatch(/holds #N\/A/);
  });

  test("that holds the word of another argument is refused without its place: a block has none", () =>
    expect(admitBlock(["cover", "SI"], [])).toBe('cover: expected "none" or "bubble", got "SI"'));
});

describe("A header of rows", () => {
  const COLUMNS: Args = {
    flow: quantity("water flow", "flow"),
    head: quantity("head", "head").default(0),
    note: text("a note").optional(),
  };
  const gpm = us("water flow", 1);

  test.each<[string, readonly unknown[]]>([
    ["Flow (m³/h)", [3600]],
    ["flow, m³/h", [3600]],
    [" FLOW(m³/h) ", [3600]],
    ["flow ( m³/h )", [3600]],
  ])("%s gives name and unit", (head, line) =>
    expect(admitRows(COLUMNS, 1, 3, [head], line)).toEqual([expect.objectContaining({ flow: expect.closeTo(1, 12) })]),
  );

  test("may have a unit with brackets", () =>
    expect(admitRows({ sun: quantity("irradiance", "sun") }, 1, 1, ["sun (BTU/(h·ft²))"], [1])).toEqual([
      { sun: expect.closeTo(us("irradiance", 1), 12) as number },
    ]));

  test("may leave columns out, and cells blank above columns that don't count", () =>
    expect(admitRows(COLUMNS, 1, 3, ["note", "", "flow"], ["a", 7, 1])).toEqual([{ flow: gpm, head: 0, note: "a" }]));

  test("with a number in it is a row", () =>
    expect(admitRows(COLUMNS, 1, 3, ["flow", 3], [1, 3])).toMatch(
      /row 1, flow: expected water flow in gpm, got "flow"/,
    ));

  test("that names a column twice or an unknown one is refused", () => {
    expect(admitRows(COLUMNS, 1, 3, ["flow", "Flow (gpm)"], [1, 2])).toBe(
      'value, header: the column "flow" appears twice',
    );
    expect(admitRows(COLUMNS, 1, 3, ["flow", "hed"], [1, 2])).toBe(
      'value, header: no label "hed" here; the nearest is "head"',
    );
    expect(admitRows(COLUMNS, 1, 3, ["flow", "hed (ft)"], [1, 2])).toBe(
      'value, header: no label "hed (ft)" here; the nearest is "head"',
    );
  });

  test("is missing where no cell names a column: the columns come in their order", () =>
    expect(admitRows(COLUMNS, 1, 3, ["1 gpm", "2 m", "x"], [1, 2, "y"])).toEqual([
      { flow: gpm, head: 2, note: "x" },
      { flow: gpm, head: us("head", 2), note: "y" },
    ]));
});

describe("Lines of rows", () => {
  const FLOW: Args = { flow: quantity("number", "flow") };
  const FITTING: Args = { what: choice("What", ["elbow", "tee"], "what"), count: quantity("number", "count") };

  test("of blanks are passed over, and refusals keep count of them", () => {
    expect(admitRows(FLOW, 1, 2, [1], [null], [""], [2])).toEqual([{ flow: 1 }, { flow: 2 }]);
    expect(admitRows(FLOW, 1, 2, [1], [null], ["x"])).toMatch(/^value, row 3, flow: expected/);
  });

  test("of zeros are blank where a word is needed, and rows where none is", () => {
    expect(admitRows(FITTING, 1, 2, ["tee", 2], [0, 0], [0, null])).toEqual([{ what: "tee", count: 2 }]);
    expect(admitRows(FLOW, 1, 2, [1], [0])).toEqual([{ flow: 1 }, { flow: 0 }]);
    expect(admitRows(FITTING, 1, 2, ["tee", 2], [0, 3])).toMatch(/row 2, what: expected "elbow" or "tee", got 0/);
    expect(admitRows({ ...FLOW, cover: COVER.default("none") }, 1, 2, [1], [0])).toHaveLength(2);
  });

  test("of zeros are blank where a text, or a word in a number's place, is needed", () => {
    const share = either(COVER, quantity("fraction", "share"), "share");
    expect(admitRows({ title: text("a title"), ...FLOW }, 1, 2, ["a", 1], [0, 0])).toEqual([{ title: "a", flow: 1 }]);
    expect(admitRows({ share, ...FLOW }, 1, 2, ["bubble", 1], [0, null])).toEqual([{ share: "bubble", flow: 1 }]);
    expect(admitRows({ share: share.optional(), ...FLOW }, 1, 2, ["bubble", 1], [0, 0])).toHaveLength(2);
    expect(admitRows({ title: text("a title").optional(), ...FLOW }, 1, 2, ["a", 1], [0, 0])).toHaveLength(2);
  });

  test("of zeros are blank where a quantity must be above 0", () =>
    expect(admitRows({ size: quantity("length", "size", { above: 0 }) }, 1, 2, [1], [0])).toHaveLength(1));

  test("are counted", () => {
    expect(admitRows(FLOW, 2, 3, [1], [2], [3])).toHaveLength(3);
    expect(admitRows(FLOW, 2, 3, [1])).toBe("value: expected 2 to 3 rows, got 1");
    expect(admitRows(FLOW, 2, 2, [1], [2], [3])).toBe("value: expected 2 rows, one below the other, got 3");
    expect(admitRows(FLOW, 1, 1, [1], [2])).toBe("value: expected 1 row, one below the other, got 2");
  });

  test("may be one cell", () => expect(admitRows(FLOW, 1, 2, [5])).toEqual([{ flow: 5 }]));
});
