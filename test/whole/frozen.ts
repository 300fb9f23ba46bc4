/** What workbooks store of a function and what may therefore never change once shipped. */
import type { ArgData, Shape } from "../../core/kernel/define/argument";
import { labelOf } from "../../core/kernel/define/argument";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { defaultText } from "../../core/kernel/explain/describe";
import { KINDS, show, type KindName } from "../../core/kernel/values/quantity";
import type { SingleResult } from "../../core/kernel/define/result";
import { placedArgs, singlesOf } from "../../core/kernel/define/unitsArgument";

export interface Frozen {
  /** Arguments in order: name, shape, default. */
  readonly args: readonly string[];
  /** Words of each choice, labels of each block, columns of each range, by argument. */
  readonly words: Readonly<Record<string, readonly string[]>>;
  /** Labels of the result's rows or columns in order, with units. */
  readonly gives: readonly string[];
  readonly cautions: readonly string[];
}

const unitsOf = (kind: KindName): string => `${KINDS[kind].US.text}|${KINDS[kind].SI.text}`;

const shapeText = (shape: Shape): string => {
  switch (shape.type) {
    case "quantity":
      return typeof shape.kind === "string" ? unitsOf(shape.kind) : `by ${shape.kind.choice}`;
    case "several":
      return `${unitsOf(shape.kind)} several`;
    case "either":
      return `word or ${shapeText(shape.quantity)}`;
    default:
      return shape.type;
  }
};

const argText = (name: string, arg: ArgData): string => {
  const preset = defaultText(arg, "SI", show);
  return `${name}: ${shapeText(arg.shape)}, ${arg.presence}${preset === "" ? "" : ` ${preset}`}`;
};

const wordsOf = (shape: Shape): readonly string[] | undefined => {
  switch (shape.type) {
    case "choice":
      return shape.words;
    case "either":
      return shape.choice.words;
    case "block":
      return Object.entries(shape.entries).flatMap(([key, arg]) => [
        argText(labelOf(key), arg),
        ...(wordsOf(arg.shape) ?? []).map((word) => `${labelOf(key)} = ${word}`),
      ]);
    case "rows":
      return Object.entries(shape.columns).map(([key, arg]) => argText(labelOf(key), arg));
    default:
      return undefined;
  }
};

const singleText = (key: string, single: SingleResult): string =>
  `${labelOf(key)}: ${single.type === "word" ? "word" : unitsOf(single.kind)}`;

export const frozenOf = (definition: CellFunction): Frozen => ({
  args: placedArgs(definition).map(([name, arg]) => argText(name, arg)),
  words: Object.fromEntries(
    placedArgs(definition).flatMap(([name, arg]) => {
      const words = wordsOf(arg.shape);
      return words === undefined || name === "units" ? [] : [[name, words]];
    }),
  ),
  gives: singlesOf(definition.returns).map(([key, single]) => singleText(key, single)),
  cautions: [...new Set(definition.cautions.map(({ rule }) => rule.code))].sort(),
});
