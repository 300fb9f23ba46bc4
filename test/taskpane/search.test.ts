import { expect, test, describe } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { finderTextsOf } from "../../core/help";
import { STARTER_SHEETS } from "../../src/sheets";
import { TRADE_WORDS } from "../../src/taskpane/model/tradeWords";
import { indexOf, search, searchStarters, wordsIn } from "../../src/taskpane/model/search";

const INDEX = indexOf(CATALOGUE, finderTextsOf(CATALOGUE));
const ids = (question: string): readonly string[] => search(INDEX, question).map(({ id }) => id);

/** What a user types → the function that must stand among the first three. */
const TASKS: readonly (readonly [string, string])[] = [
  ["How much head is lost in my pipes?", "PIPE.HEADLOSS"],
  ["pressure drop pipe", "PIPE.HEADLOSS"],
  ["Hazen-Williams", "PIPE.HEADLOSS"],
  ["frict", "PIPE.HEADLOSS"],
  ["choose pipe", "PIPE.SIZE"],
  ["smallest pipe for a flow", "PIPE.SIZE"],
  ["flow speed", "PIPE.VELOCITY"],
  ["inside diameter", "PIPE.BORE"],
  ["superheat", "REFRIG.SUPERHEAT"],
  ["saturation temperature of a refrigerant", "REFRIG.TEMPERATURE"],
  ["input block", "NOTE.INPUTS"],
  ["R22", "REFRIG.PRESSURE"],
  ["R-410A", "REFRIG.PRESSURE"],
  ["hotgas", "LINE.VALVE"],
  ["chiller", "AIRCON.REJECTED"],
  ["glue", "PIPE.CEMENT"],
  ["TDH", "PIPE.OPERATING"],
  ["payback", "COST.PAYBACK"],
  ["pool heater payback", "COST.PAYBACK"],
  ["lineset", "LINE.DROP"],
  ["desuperheater", "EXCHANGER.ZONES"],
  ["PT chart", "REFRIG.CHART"],
  ["microns", "LINE.BOILING"],
  ["water hammer", "PIPE.HAMMER"],
];

describe("A search", () => {
  test.each(TASKS)("a search for “%s” finds %s among the first three", (question, id) => {
    expect(ids(question).slice(0, 3)).toContain(id);
  });

  test("a search for a function's name puts that function first, whatever is written before it", () => {
    for (const { id } of CATALOGUE) {
      expect(ids(id)[0]).toBe(id);
      expect(ids(`=warmback.${id.toLowerCase()}`)[0]).toBe(id);
    }
  });

  test("a search for nothing gives every function in the catalogue's order", () => {
    expect(ids("  ")).toEqual(CATALOGUE.map(({ id }) => id));
  });

  test("a search for words that no function has gives none", () => {
    expect(ids("zebra xylophone")).toEqual([]);
  });

  test("a search leaves out far weaker matches", () => {
    expect(ids("friction in pipes")).not.toContain("NOTE.WORKING");
  });

  test("a search for stop words only finds the functions whose texts have them", () => {
    const found = ids("how much is it");
    expect(found).toContain("CYCLE.COP");
    expect(found.length).toBeLessThan(CATALOGUE.length);
  });
});

test("Words are read without case, accents, punctuation and plural endings", () => {
  expect(wordsIn("Pools' Café-losses: R-410A")).toEqual(["pool", "cafe", "losse", "r", "410a"]);
});

describe("A search for starter sheets", () => {
  const names = (question: string): readonly string[] =>
    searchStarters(STARTER_SHEETS, question).map(({ name }) => name);

  test("finds a sheet by the words of its name", () => {
    for (const { name } of STARTER_SHEETS) expect(names(name)[0]).toBe(name);
  });

  test.each([
    ["commissioning", "Commissioning"],
    ["pump and pipes of the loop", "Pool loop"],
    ["price", "Take-off and price"],
  ])("a search for “%s” finds %s", (question, name) => expect(names(question)).toContain(name));

  test("a search for nothing gives all sheets, one for words of no sheet gives none", () => {
    expect(names("")).toHaveLength(STARTER_SHEETS.length);
    expect(names("zebra xylophone")).toEqual([]);
  });
});

test("the trade's words lead to functions that exist", () => {
  const ids = new Set(CATALOGUE.map(({ id }) => id));
  expect(Object.values(TRADE_WORDS).flatMap((those) => those.split(" ").filter((id) => !ids.has(id)))).toEqual([]);
});
