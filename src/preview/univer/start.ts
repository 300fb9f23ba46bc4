import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import type { Ctor } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import type { BaseFunction } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";

import { createCallSites } from "../host/callSites";
import type { CallSites } from "../host/callSites";
import type { SheetBook } from "../host/sheetBook";
import type { BookData } from "../file/bookData";
import { cellName } from "../host/functionsMetadata";
import type { FunctionsMetadata } from "../host/functionsMetadata";
import type { CustomFunction } from "../host/hostValues";
import type { HostSlices } from "../../functions/hostArguments";
import type { EngineWatch } from "./engineFixes";
import { functionClass } from "./functions";
import { univerBook } from "./univerBook";

/** The custom functions that a sheet engine gets: their metadata and what the functions script associated. */
export interface FunctionSet {
  readonly namespace: string;
  readonly metadata: FunctionsMetadata;
  readonly associated: ReadonlyMap<string, CustomFunction>;
}

export type RegisteredFunction = [Ctor<BaseFunction>, string];

/** The engine's classes for a set; a metadata entry that the script didn't associate is a fault of the build. */
export const functionClasses = (set: FunctionSet, log: CallSites, slices?: HostSlices): RegisteredFunction[] =>
  set.metadata.functions.map((entry) => {
    const call = set.associated.get(entry.id.toUpperCase());
    if (call === undefined) throw new Error(`functions.js doesn't associate ${entry.id}, which functions.json names`);
    return [functionClass(entry, call, log, slices), cellName(set.namespace, entry.id)];
  });

/** A sheet engine without a screen. */
export const startHeadless = (set: FunctionSet, first: BookData, watch: EngineWatch = {}): SheetBook => {
  const log = createCallSites();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: functionClasses(set, log, watch.slices) });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  return univerBook(univer, log, first, { withoutPictures: true, withoutTyping: true, ...watch });
};
