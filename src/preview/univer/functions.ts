import type { Ctor } from "@univerjs/core";
import { BaseFunction, FunctionType } from "@univerjs/engine-formula";
import type { BaseValueObject, IFunctionInfo } from "@univerjs/engine-formula";

import type { HostSlices } from "../../functions/hostArguments";
import { isPending } from "../../workbook/pending";
import { faultOf } from "../host/callSites";
import type { CallSites, CallSite } from "../host/callSites";
import { toHostArguments, fromHostResult, fromThrown } from "../host/hostCall";
import { cellName } from "../host/functionsMetadata";
import type { HostFunctionEntry, FunctionParameter } from "../host/functionsMetadata";
import { isFaultValue } from "../host/hostValues";
import type { CallResult, CustomFunction, HostArgument } from "../host/hostValues";
import { found, resultObject } from "./values";

/** The cell functions as the sheet engine wants them: one class each, synchronous, with every call kept in the log. */

const run = (call: CustomFunction, args: readonly HostArgument[], slices: HostSlices | undefined): CallResult => {
  try {
    return fromHostResult(slices === undefined ? call(...args) : call(...args, slices));
  } catch (thrown) {
    if (isPending(thrown)) throw thrown;
    return fromThrown(thrown);
  }
};

export const functionClass = (
  entry: HostFunctionEntry,
  call: CustomFunction,
  log: CallSites,
  slices?: HostSlices,
): Ctor<BaseFunction> =>
  class extends BaseFunction {
    // References come as they are, so that a blank cell differs from an omitted argument.
    override needsReferenceObject = true;
    // The number of arguments is checked where the message is made.
    override minParams = -1;
    override maxParams = -1;

    // A text stays text, as in Excel: "3/8" is a tube's size and no date.
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      const sheetId = this.subUnitId ?? "";
      const site: CallSite = { sheetId, row: this.row, column: this.column };
      const messageOf = (at: CallSite, code: string): string => faultOf(log.at(at), code)?.message ?? "";
      const given = toHostArguments(
        entry,
        variants.map((variant) =>
          found(
            variant,
            (id, row, column, code) => messageOf({ sheetId: id, row, column }, code),
            (code) => messageOf(site, code),
          ),
        ),
      );
      const result = "fault" in given ? given.fault : run(call, given.args, slices);
      const outcome = isFaultValue(result) ? { fault: result } : { value: result };
      log.add(site, { id: entry.id, args: "args" in given ? given.args : [], outcome });
      return resultObject(result, this.unitId ?? "", sheetId);
    }
  };

const parameterInfo = (parameter: FunctionParameter) => ({
  name: parameter.name,
  detail: parameter.description ?? "",
  example: "",
  require: parameter.optional === true ? 0 : 1,
  repeat: parameter.repeating === true ? 1 : 0,
});

/** What autocomplete and the argument help show. */
export const functionInfo = (namespace: string, entry: HostFunctionEntry): IFunctionInfo => ({
  functionName: cellName(namespace, entry.id),
  functionType: FunctionType.User,
  description: entry.description ?? "",
  abstract: entry.description ?? "",
  functionParameter: entry.parameters.map(parameterInfo),
});
