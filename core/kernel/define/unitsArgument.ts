/** Which functions have units, and the place of the argument `units`. */
import type { ArgData } from "./argument";
import { choice } from "./argument";
import type { CellFunction } from "./cellFunction";
import { KINDS, type KindName } from "../values/quantity";
import type { ResultShape, SingleResult } from "./result";

/** The argument that every function with units has. */
export const UNITS = choice("Units", ["US", "SI"], "the system of units of plain numbers, US or SI").default("US");

const carries = (kind: KindName): boolean => KINDS[kind].US.text !== "" || KINDS[kind].SI.text !== "";

const argCarries = ({ shape }: ArgData): boolean => {
  switch (shape.type) {
    case "quantity":
      return typeof shape.kind === "string" ? carries(shape.kind) : Object.values(shape.kind.kinds).some(carries);
    case "several":
      return carries(shape.kind);
    case "either":
      return argCarries({ shape: shape.quantity, description: "", presence: "required" });
    case "block":
      return Object.values(shape.entries).some(argCarries);
    case "rows":
      return Object.values(shape.columns).some(argCarries);
    case "sheet":
      return true;
    default:
      return false;
  }
};

/** The single values that a result is made of. */
export const singlesOf = (gives: ResultShape): readonly (readonly [string, SingleResult])[] => {
  switch (gives.type) {
    case "list":
      return Object.entries(gives.rows);
    case "table":
      return Object.entries(gives.columns);
    case "row":
      return Object.entries(gives.cells);
    case "grid":
      return [];
    default:
      return [["answer", gives]];
  }
};

/** An argument in its place: name and data. */
export type PlacedArg = readonly [name: string, arg: ArgData];

/** Whether the function has the argument `units`. */
export const hasUnits = (definition: CellFunction): boolean =>
  Object.values(definition.args).some(argCarries) ||
  singlesOf(definition.returns).some(([, single]) => single.type === "quantity" && carries(single.kind));

/** All arguments in their frozen places, `units` among them. */
export const placedArgs = (definition: CellFunction): readonly PlacedArg[] => {
  const own = Object.entries(definition.args);
  if (!hasUnits(definition)) return own;
  const after =
    definition.unitsAfter === undefined ? own.length : own.findIndex(([n]) => n === definition.unitsAfter) + 1;
  return [...own.slice(0, after), ["units", UNITS], ...own.slice(after)];
};
