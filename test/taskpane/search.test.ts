import { expect, test, describe } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { finderTextsOf } from "../../core/help";
import { indexOf, search, wordsIn } from "../../src/taskpane/model/search";

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
