import { parseTree, type IFunction } from "custom-functions-metadata";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { quantity, choice } from "../../core/kernel/define/argument";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { quantityResult } from "../../core/kernel/define/result";
import { helpPage, VARIANTS } from "../../scripts/manifest/manifest";
import { metadataOf, type MetadataEnum, type MetadataFunction, type MetadataParameter } from "../../scripts/metadata";

const METADATA = metadataOf(CATALOGUE, (id) => `${VARIANTS.production.host}/${helpPage(id)}`);

/** A parameter as a shim can name it: "function" and "in" are no legal names there. */
const shimName = (name: string): string => `${name}_`;

const shimType = ({ customEnumId, type, dimensionality, repeating }: MetadataParameter): string => {
  const brackets = (dimensionality === "matrix" ? "[][]" : "") + (repeating ? "[]" : "");
  return `${customEnumId ?? type}${brackets}`;
};

const shimOf = (entry: MetadataFunction, place: number): string => {
  const docs = entry.parameters.map(({ name, description }) => ` * @param ${shimName(name)} ${description}`);
  const params = entry.parameters.map((each) => `${shimName(each.name)}${each.optional ? "?" : ""}: ${shimType(each)}`);
  return `/**
 * ${entry.description}
 * @customfunction ${entry.id} ${entry.name}
 * @helpurl ${entry.helpUrl}
${docs.join("\n")}
 */
function shim${place}(${params.join(", ")}): any${entry.result.dimensionality === "matrix" ? "[][]" : ""} {}`;
};

const shimEnum = ({ id, values }: MetadataEnum): string => `/** @customenum {string} */
enum ${id} {
${values.map(({ name, stringValue, tooltip }) => `/** ${tooltip} */\n${JSON.stringify(name)} = ${JSON.stringify(stringValue)}`).join(",\n")}
}`;

/**
 * The one normalisation between the stock parser's reading of the shims and our metadata. The parser keeps the quotes of
 * an enum's names, and a shim names its parameters with an underscore behind, since some are reserved words.
 */
const normalised = (read: ReturnType<typeof parseTree>): unknown => ({
  functions: read.functions.map((entry: IFunction) => ({
    ...entry,
    parameters: entry.parameters.map((each) => ({ ...each, name: each.name.replace(/_$/, "") })),
  })),
  enums: read.enums.map((each) => ({
    ...each,
    values: each.values.map((value) => ({ ...value, name: JSON.parse(value.name) as string })),
  })),
});

describe("functions.json", () => {
  test("functions.json is what the stock parser reads from functions of that shape", () => {
    const source = [...METADATA.enums.map(shimEnum), ...METADATA.functions.map(shimOf)].join("\n\n");
    const read = parseTree(source, "shims.ts");
    expect(read.extras.flatMap(({ errors }) => errors)).toEqual([]);
    expect(normalised(read)).toEqual(METADATA);
  });

  test("lists the whole catalogue in its order, small enough for every host", () => {
    expect(METADATA.functions.map(({ id }) => id)).toEqual(CATALOGUE.map(({ id }) => id));
    expect(JSON.stringify(METADATA).length).toBeLessThan(500_000);
  });

  test("begins a quantity's description with its units and keeps all of them short", () => {
    const flow = METADATA.functions
      .find(({ id }) => id === "PIPE.HEADLOSS")
      ?.parameters.find(({ name }) => name === "flow");
    expect(flow).toEqual({ name: "flow", description: "gpm (SI: m³/h): water flow", type: "any" });
    for (const { id, description, parameters } of METADATA.functions)
      for (const text of [description, ...parameters.map((each) => each.description)])
        expect(text.length, `${id}: ${text}`).toBeLessThanOrEqual(128);
  });

  test("offers the words of a choice, and takes a range only where one is meant", () => {
    const { parameters } = METADATA.functions.find(({ id }) => id === "PIPE.HEADLOSS") ?? { parameters: [] };
    const method = parameters.find(({ name }) => name === "method");
    expect(method).toMatchObject({ type: "string", optional: true, customEnumId: "FrictionMethod" });
    const words = METADATA.enums
      .find(({ id }) => id === "FrictionMethod")
      ?.values.map(({ stringValue }) => stringValue);
    expect(words).toEqual(["Darcy-Weisbach", "Hazen-Williams"]);
    const working = METADATA.functions.find(({ id }) => id === "NOTE.WORKING");
    expect(working?.parameters.at(-1)).toMatchObject({ dimensionality: "matrix", repeating: true });
    expect(working?.result).toEqual({ dimensionality: "matrix" });
  });

  test("says beside each word of a list what it means, briefly and not by the word again", () => {
    for (const { id, values } of METADATA.enums) {
      for (const { name, tooltip } of values) {
        expect(tooltip, `${id}, ${name}: see scripts/wordTips.ts`).toMatch(/^[\p{Lu}].{2,}$/u);
        expect(tooltip.toLowerCase(), id).not.toBe(name.toLowerCase());
        expect(tooltip.length, `${id}, ${name}`).toBeLessThanOrEqual(128);
      }
      expect(new Set(values.map(({ tooltip }) => tooltip)).size, `${id}: one tip for all words`).toBeGreaterThan(1);
    }
  });

  test("refuses two lists of words under one name", () => {
    const made = (id: string, words: readonly [string, string]) =>
      cellFunction({
        id,
        topic: "pipe",
        summary: "A sample.",
        args: { flow: quantity("water flow", "water flow"), kind: choice("Kind", words, "kind") },
        returns: quantityResult("head", "head"),
        cautions: [],
        checks: [],
        compute: ({ flow }) => flow,
      });
    expect(() => metadataOf([made("PIPE.A", ["a", "b"]), made("PIPE.B", ["a", "c"])], String)).toThrow(
      'PIPE.B: the words "Kind" differ',
    );
  });
});
