import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { fieldsOf, fieldUnit, filledCall, takenText, blankText, type Filling } from "../../src/taskpane/model/form";
import { insertChosen } from "../../src/taskpane/model/insertChosen";
import { insertionOf } from "../../src/taskpane/model/insertion";
import { CARDS, ENGINE } from "./insertEverywhere";
import { makeBook, type Book } from "./page/book";

const AT = { sheet: "Loop", row: 9, column: 4 };

const formOf = (id: string): { book: Book; filling: Filling; texts: string[] } => {
  const card = CARDS.find(({ definition }) => definition.id === id);
  const fields = card && fieldsOf(card.definition, card.example);
  if (card === undefined || fields === undefined) throw new Error(`${id} has no form`);
  const book = makeBook(["Loop", "Pool data"], ENGINE);
  return {
    book,
    filling: { book: book.workbook, engine: ENGINE, ...card, fields },
    texts: fields.map(({ text }) => text),
  };
};

describe("A function's form", () => {
  test("filled with the example gives the example's formula and result, for every card", async () => {
    for (const { definition, example } of CARDS) {
      const fields = fieldsOf(definition, example);
      if (fields === undefined) continue;
      const book = makeBook(["Loop"], ENGINE);
      const filling = { book: book.workbook, engine: ENGINE, definition, example, fields };
      const chosen = await filledCall(
        filling,
        fields.map(({ text }) => text),
        AT,
      );
      expect(chosen.example.formula, definition.id).toBe(example.formula);
      expect(chosen.example.outcome, definition.id).toEqual(example.outcome);
    }
  });

  test("only functions of any number of arguments have none", () => {
    const without = CARDS.filter(({ definition, example }) => fieldsOf(definition, example) === undefined);
    expect(without.map(({ definition }) => definition.topic).filter((topic) => topic !== "note")).toEqual([]);
    expect(CATALOGUE.length).toBeGreaterThan(without.length);
  });

  test("takes an argument from the selected cell, with its sheet where that is another", async () => {
    const { book, filling, texts } = formOf("PIPE.VELOCITY");
    book.type("Pool data", "B4", 55);
    book.click("Pool data", "B4");
    const [flow] = filling.fields;
    if (flow === undefined) throw new Error("no field");
    texts[0] = await takenText(book.workbook, flow);
    expect(texts[0]).toBe("='Pool data'!B4");
    const chosen = await filledCall(filling, texts, AT);
    expect(chosen.example.raw[0]).toBe(55);
    const at = (sheet: string): string =>
      insertionOf(chosen.definition, chosen.example, { ...AT, sheet }, chosen.references).formula;
    expect(at("Loop")).toMatch(/^=WARMBACK\.PIPE\.VELOCITY\('Pool data'!B4,/);
    const same = await filledCall(filling, texts, { ...AT, sheet: "Pool data" });
    expect(same.references?.get(0)).toBe("B4");
    await insertChosen(filling, chosen, AT, { times: 1, every: 1 });
    expect(book.value("Loop", "E10")).toBe(
      chosen.example.outcome !== undefined && "value" in chosen.example.outcome ? chosen.example.outcome.value : "",
    );
  });

  test("takes a range from its first cell on", async () => {
    const { book, filling, texts } = formOf("PIPE.LOOP");
    const place = filling.fields.findIndex(({ range }) => range);
    const field = filling.fields[place];
    if (field === undefined) throw new Error("no range");
    const matrix = filling.example.raw[place] as readonly (readonly (string | number | null)[])[];
    for (const [down, row] of matrix.entries())
      for (const [over, value] of row.entries())
        book.type("Loop", `${"ABCDEFGHIJ"[over] ?? ""}${String(down + 1)}`, value);
    book.click("Loop", "A1");
    texts[place] = await takenText(book.workbook, field);
    expect(texts[place]).toMatch(new RegExp(`^=Loop!A1:[A-J]${String(matrix.length)}$`));
    const chosen = await filledCall(filling, texts, AT);
    expect(chosen.example.outcome).toEqual(filling.example.outcome);
  });

  test("shows units of the chosen system and defaults in its greyed texts", () => {
    const { filling } = formOf("PIPE.HEADLOSS");
    const [flow] = filling.fields;
    if (flow === undefined) throw new Error("no field");
    expect(fieldUnit(flow, "US", () => "")).toBe("gpm");
    expect(fieldUnit(flow, "SI", () => "")).toBe("m³/h");
    expect(blankText(flow, "US")).toBe("needed");
    const water = filling.fields.find(({ name }) => name === "water");
    expect(water && blankText(water, "US")).toMatch(/^\d+ °F$/);
  });

  test("says what an argument gets wrong, a cell's error and a reference to nothing", async () => {
    const { book, filling, texts } = formOf("PIPE.VELOCITY");
    const chosen = await filledCall(filling, ["-5", ...texts.slice(1)], AT);
    expect(chosen.example.outcome).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^flow: /) as string,
    });
    book.hold("Loop", "A1", { code: "#N/A" });
    await expect(filledCall(filling, ["=A1", ...texts.slice(1)], AT)).rejects.toThrow("flow: the cell holds #N/A.");
    await expect(filledCall(filling, ["=1+", ...texts.slice(1)], AT)).rejects.toThrow("=1+ is no cell or range");
    await expect(filledCall(filling, ["=A1:B2", ...texts.slice(1)], AT)).rejects.toThrow();
  });
});
