/** Calls of cell functions, as Excel makes them through Microsoft's own custom-functions runtime. */
import type { FunctionResult } from "../members/targets";
import { setResult, type Result } from "../model/cells";
import { addressOf, keyOf, type CellModel, type Place, type Scalar, type SheetModel } from "../model/workbook";
import { BLANK, type Argument, type FunctionCalls, type FunctionFacts, type One } from "./cellCalls";
import type { Host } from "./objects";

/** Numbers by which the runtime tells errors, as it maps them (`_getCustomFunctionResultErrorCodeFromErrorCode`). */
const CODES: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
  9: "#NAME?",
  10: "#NAME?",
};

const isError = (one: unknown): one is { readonly error: string } =>
  typeof one === "object" && one !== null && "error" in one;

const errorIn = (args: readonly Argument[]): { readonly error: string } | undefined =>
  args.flat(2).find((one): one is { readonly error: string } => isError(one));

/** Within a matrix a blank cell is 0 everywhere. */
function handed(host: Host, arg: Argument | undefined): unknown {
  if (arg === undefined || arg === null) return null;
  if (Array.isArray(arg))
    return (arg as readonly (readonly One[])[]).map((row) => row.map((one) => (one === BLANK ? 0 : one)));
  return arg === BLANK ? host.profile.blank : arg;
}

/** One value for every parameter of the metadata: null for those left out, one list for a repeated one. */
function fullLength(host: Host, { parameters }: FunctionFacts, args: readonly Argument[]): unknown[] {
  const repeats = parameters.at(-1)?.repeating === true;
  const single = repeats ? parameters.length - 1 : parameters.length;
  const values = Array.from({ length: single }, (_, at) => handed(host, args[at]));
  return repeats ? [...values, args.slice(single).map((arg) => handed(host, arg))] : values;
}

/** An error object of the runtime's, as it travels. */
const codeOf = (value: unknown): string | undefined =>
  typeof value === "object" && value !== null && "code" in value ? String(value.code) : undefined;

function tableOf(host: Host, rows: readonly (readonly unknown[])[]): Result {
  const faulty = rows.flat().some((one) => codeOf(one) !== undefined);
  if (faulty && !host.profile.errorsInTables) return { error: "#VALUE!" };
  return rows.map((row) => row.map((one) => (codeOf(one) ?? one ?? 0) as Scalar));
}

/** Turns what the runtime sends into what the cell shows. */
function resultOf(host: Host, [, succeeded, value, code = 0]: FunctionResult): { result: Result; message?: string } {
  if (!succeeded) {
    const message = typeof value === "string" && value !== "" ? { message: value } : {};
    return { result: { error: CODES[code] ?? "#VALUE!" }, ...message };
  }
  const single = codeOf(value);
  if (single !== undefined) return { result: { error: single } };
  return { result: Array.isArray(value) ? tableOf(host, value as unknown[][]) : ((value ?? 0) as Scalar) };
}

interface Out {
  readonly sheet: SheetModel;
  readonly place: Place;
  readonly done: (cell: CellModel) => void;
}

export function functionCalls(host: Host): FunctionCalls {
  const out = new Map<number, Out>();
  let made = 0;
  const cellOf = (sheet: SheetModel, { row, column }: Place): CellModel =>
    sheet.cells.get(keyOf(row, column)) ?? { formula: "", value: "" };

  return {
    call(sheet, place, facts, args) {
      const before = sheet.cells.get(keyOf(place.row, place.column));
      const formula = before?.formula || `=WARMBACK.${facts.id}()`;
      sheet.cells.set(keyOf(place.row, place.column), { formula, value: "#BUSY!", error: true });
      const error = errorIn(args);
      if (error !== undefined) {
        // Excel doesn't call a function at all with an error for an argument.
        setResult(sheet, place, error);
        return Promise.resolve(cellOf(sheet, place));
      }
      const id = made++;
      const address = `${sheet.name}!${addressOf({ ...place, rows: 1, columns: 1 })}`;
      const message = JSON.stringify([id, facts.id, fullLength(host, facts, args), address, 0]);
      return new Promise((done) => {
        out.set(id, { sheet, place, done });
        setTimeout(
          () => host.events.tell({ entries: [{ messageCategory: 1, messageType: 1000, targetId: "", message }] }),
          0,
        );
      });
    },
    finish(sent) {
      const call = out.get(sent[0]);
      if (call === undefined) return;
      out.delete(sent[0]);
      const { result, message } = resultOf(host, sent);
      setResult(call.sheet, call.place, result, message);
      host.events.calculated(call.sheet, { ...call.place, rows: 1, columns: 1 });
      call.done(cellOf(call.sheet, call.place));
    },
  };
}
