/** The arguments of a call: label, value, unit, default mark and description. */
import {
  type ArgData,
  type CellFunction,
  defaultText,
  type ExplainedArg,
  labelOf,
  placedArgs,
  readableUnit,
  type System,
  type CellInput,
} from "../../../core";
import type { ReadArgument } from "../../workbook/reader/read";
import { isMatrix } from "../../workbook/values";
import { h, type Child } from "../elements";
import { counted } from "../model/summary";
import { valueWithUnit } from "./result";

interface RowOptions {
  /** False if it is the default. */
  readonly given: boolean;
  /** A sentence takes the place of the value. */
  readonly sentence?: boolean;
}

const row = (label: string, about: string, value: Child, { given, sentence = false }: RowOptions): HTMLElement =>
  h(
    "div",
    { class: "argument" },
    h("dt", {}, label, given ? undefined : h("span", { class: "tag" }, "default")),
    h("dd", { class: sentence ? "argument-value sentence" : "argument-value" }, value),
    h("dd", { class: "quiet" }, about),
  );

const quiet = (text: string): HTMLElement => h("span", { class: "quiet" }, text);

const explainedRow = ({ label, description, value, unit, given }: ExplainedArg): HTMLElement => {
  const left = value === "" && !given;
  return row(label, description, left ? quiet("left out") : valueWithUnit(value, unit), { given: given || left });
};

const rawText = (value: CellInput): string | number | boolean =>
  isMatrix(value) ? `${counted(value.length, "row")} × ${counted(value[0]?.length ?? 0, "column")}` : (value ?? "");

/** The unit of a plain number. */
const unitOf = (arg: ArgData, value: CellInput, system: System): string => {
  const { shape } = arg;
  const inner = shape.type === "either" ? shape.quantity : shape;
  if (typeof value !== "number" || inner.type !== "quantity" || typeof inner.kind !== "string") return "";
  return readableUnit(value, inner.kind, system, { basis: "gauge", description: arg.description });
};

const givenRow = (name: string, arg: ArgData, argument: ReadArgument, system: System): HTMLElement => {
  const problem = (...text: readonly Child[]): HTMLElement =>
    row(labelOf(name), arg.description, h("span", { class: "fault" }, text), { given: true, sentence: true });
  if ("unreadable" in argument) return problem(argument.unreadable);
  if ("fault" in argument) return problem("holds ", h("strong", {}, argument.fault.code), " ", argument.fault.message);
  const { value } = argument;
  return row(labelOf(name), arg.description, valueWithUnit(rawText(value), unitOf(arg, value, system)), {
    given: true,
  });
};

const omittedRow = (name: string, arg: ArgData, system: System): HTMLElement => {
  const preset = defaultText(arg, system);
  if (preset !== "") return row(labelOf(name), arg.description, preset, { given: false });
  const needed = arg.presence === "required" && arg.shape.type !== "repeat";
  const text = needed ? h("span", { class: "fault" }, "is blank") : quiet("left out");
  return row(labelOf(name), arg.description, text, { given: true });
};

const isBlank = (argument: ReadArgument): boolean =>
  "value" in argument && (argument.value === null || argument.value === "");

/** The system that a call names; US if it names none or can't be read. */
const systemOf = (definition: CellFunction, args: readonly ReadArgument[]): System => {
  const units = args[placedArgs(definition).findIndex(([name]) => name === "units")];
  const named = units !== undefined && "value" in units ? units.value : "";
  return typeof named === "string" && named.trim().toUpperCase() === "SI" ? "SI" : "US";
};

const listOf = (rows: readonly HTMLElement[]): Child =>
  rows.length === 0 ? undefined : [h("h4", {}, "Arguments"), h("dl", { class: "arguments" }, rows)];

/** Arguments as the calculation used them. */
export const explainedArguments = (args: readonly ExplainedArg[]): Child => listOf(args.map(explainedRow));

/** Arguments as read from the formula, for a call that can't run or refuses them. */
export const readArguments = (definition: CellFunction, args: readonly ReadArgument[]): Child => {
  const system = systemOf(definition, args);
  return listOf(
    placedArgs(definition).map(([name, arg], place) => {
      const argument = args[place];
      return argument === undefined || isBlank(argument)
        ? omittedRow(name, arg, system)
        : givenRow(name, arg, argument, system);
    }),
  );
};
