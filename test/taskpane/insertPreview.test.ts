/** Every function of the catalogue inserted into the page's workbook. */
import { afterAll, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core";
import { metadataOf } from "../../scripts/metadata";
import { cellCall } from "../../src/functions/call";
import { emptySheet } from "../../src/preview/file/bookData";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { CustomFunction } from "../../src/preview/host/hostValues";
import { createShim } from "../../src/preview/host/customFunctionsShim";
import { startHeadless, type FunctionSet } from "../../src/preview/univer/start";
import { CARDS, CROWDED, EMPTY, insertedWrongly, LAST_COLUMN } from "./insertEverywhere";

const before = (globalThis as { CustomFunctions?: unknown }).CustomFunctions;
const shim = createShim();
Object.assign(globalThis, { CustomFunctions: shim.CustomFunctions });
afterAll(() => Object.assign(globalThis, { CustomFunctions: before }));

const OURS: FunctionSet = {
  namespace: "WARMBACK",
  metadata: metadataOf(CATALOGUE, (id) => id),
  associated: new Map([...COMPILED].map(([id, compiled]) => [id, cellCall(compiled) as CustomFunction])),
};

test("every function but those about functions has a card to insert", () => {
  const ids = new Set(CARDS.map(({ definition }) => definition.id));
  expect(CATALOGUE.filter(({ id, topic }) => !ids.has(id) && topic !== "note")).toEqual([]);
});

test.each([EMPTY, CROWDED, LAST_COLUMN].map((place) => [place.name, place] as const))(
  "every card inserted on %s of the page shows a result",
  { timeout: 300_000 },
  async (_, place) => {
    const sheets = CARDS.map((_, at) => emptySheet(`S${String(at)}`));
    const book = startHeadless(OURS, { sheets, names: [] });
    await book.whenCalculated();
    const wrong = await insertedWrongly(previewWorkbook(book), place, (card) => `S${String(CARDS.indexOf(card))}`);
    book.dispose();
    expect(wrong).toEqual([]);
  },
);
