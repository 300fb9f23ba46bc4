import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { frozenOf, type Frozen } from "./frozen";

const FROZEN = JSON.parse(readFileSync("test/whole/frozen.json", "utf8")) as Readonly<Record<string, Frozen>>;

/** New entries go last, so that what stood before keeps its place. */
const begins = (now: readonly string[], before: readonly string[]): readonly string[] => now.slice(0, before.length);

describe("what shipped workbooks rely on", () => {
  test("every function is on the frozen list, and none has left it", () =>
    expect(Object.keys(FROZEN).sort()).toEqual(CATALOGUE.map(({ id }) => id).sort()));

  test.each(CATALOGUE.map((definition) => [definition.id, definition] as const))(
    "%s keeps arguments, words, labels, units and caution codes",
    (id, definition) => {
      const before = FROZEN[id];
      if (!before) throw new Error("not on the list: run npx tsx test/whole/freeze.mts");
      const now = frozenOf(definition);
      expect(begins(now.args, before.args)).toEqual(before.args);
      expect(begins(now.gives, before.gives)).toEqual(before.gives);
      for (const [name, words] of Object.entries(before.words))
        expect(begins(now.words[name] ?? [], words)).toEqual(words);
      expect(now.cautions).toEqual(expect.arrayContaining([...before.cautions]));
      expect(now, "additions are put on the list by test/whole/freeze.mts").toEqual(before);
    },
  );
});
