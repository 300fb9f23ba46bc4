/** The custom-functions metadata (functions.json), from the catalogue. */
import {
  argText,
  type CellFunction,
  type ChoiceShape,
  type ResultShape,
  type PlacedArg,
  placedArgs,
  type Shape,
} from "../core";
import { wordTip } from "./wordTips";

export interface MetadataParameter {
  readonly name: string;
  readonly description: string;
  readonly type: "any" | "string";
  readonly dimensionality?: "matrix";
  readonly optional?: true;
  readonly repeating?: true;
  readonly customEnumId?: string;
}

export interface MetadataFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly MetadataParameter[];
  readonly result: { readonly dimensionality?: "matrix" };
}

export interface MetadataEnum {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

export interface Metadata {
  readonly functions: readonly MetadataFunction[];
  readonly enums: readonly MetadataEnum[];
}

/**
 * A quantity's type is "any": it also accepts a text with its own unit, and our own message explains a wrong type. A yes/no
 * is "any" too: as "boolean" a blank cell would arrive as FALSE.
 */
const typeOf = ({ type }: Shape): "any" | "string" => (type === "choice" || type === "text" ? "string" : "any");

const isMatrix = ({ type }: Shape): boolean =>
  type === "block" || type === "rows" || type === "sheet" || type === "repeat";

const parameterOf = ([name, arg]: PlacedArg): MetadataParameter => {
  const { shape } = arg;
  const repeats = shape.type === "repeat";
  return {
    name,
    description: argText(arg),
    type: typeOf(shape),
    ...(isMatrix(shape) && { dimensionality: "matrix" }),
    ...(arg.presence !== "required" && !repeats && { optional: true }),
    ...(repeats && { repeating: true }),
    ...(shape.type === "choice" && { customEnumId: shape.name }),
  };
};

const SINGLE: readonly ResultShape["type"][] = ["quantity", "word"];

const functionOf = (definition: CellFunction, helpUrl: (id: string) => string): MetadataFunction => ({
  id: definition.id,
  name: definition.id,
  description: definition.summary,
  helpUrl: helpUrl(definition.id),
  parameters: placedArgs(definition).map(parameterOf),
  result: SINGLE.includes(definition.returns.type) ? {} : { dimensionality: "matrix" },
});

const enumOf = (shape: ChoiceShape): MetadataEnum => ({
  id: shape.name,
  type: "string",
  values: shape.words.map((word) => ({ name: word, stringValue: word, tooltip: wordTip(shape, word) })),
});

const sameWords = (a: ChoiceShape, b: ChoiceShape): boolean =>
  a.words.length === b.words.length && a.words.every((word, place) => word === b.words[place]);

/** Each list of words once; throws if two lists share a name. */
const choicesOf = (catalogue: readonly CellFunction[]): readonly ChoiceShape[] => {
  const found = new Map<string, ChoiceShape>();
  for (const definition of catalogue)
    for (const [, { shape }] of placedArgs(definition)) {
      if (shape.type !== "choice") continue;
      const known = found.get(shape.name);
      if (known !== undefined && !sameWords(known, shape))
        throw new Error(`${definition.id}: the words "${shape.name}" differ from another function's of that name`);
      found.set(shape.name, shape);
    }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
};

/**
 * @param helpUrl address of a function's help page, by id
 * @throws Error if two lists of words share one name
 */
export const metadataOf = (catalogue: readonly CellFunction[], helpUrl: (id: string) => string): Metadata => ({
  functions: catalogue.map((definition) => functionOf(definition, helpUrl)),
  enums: choicesOf(catalogue).map(enumOf),
});
