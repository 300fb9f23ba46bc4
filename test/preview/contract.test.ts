/** The workbook port over the real sheet engine; the functions are stand-ins, since the port only carries their calls. */
import type { CellInput } from "../../core";
import { emptySheet } from "../../src/preview/file/bookData";
import type { HostFunctionEntry } from "../../src/preview/host/functionsMetadata";
import type { CustomFunction } from "../../src/preview/host/hostValues";
import { startHeadless } from "../../src/preview/univer/start";
import type { FunctionSet } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { contract } from "../workbook/contract";
import { READER_CASES, READER_IDS } from "../workbook/contractSheets";

/** Numbers add up, texts count by their length: another argument gives another result. */
const worth = (args: readonly unknown[]): number =>
  args.reduce<number>((sum, arg, at) => {
    if (typeof arg === "number") return sum + arg * (at + 1);
    return typeof arg === "string" ? sum + arg.length / 100 : sum;
  }, 0);

const mostArguments = (id: string): number =>
  Math.max(...READER_CASES.filter((each) => each.id === id).map(({ args }) => args.length));

const entry = (id: string): HostFunctionEntry => ({
  id,
  name: id,
  parameters: Array.from({ length: mostArguments(id) }, (_, at) => ({ name: `a${String(at + 1)}`, type: "any" })),
});

const standIns: FunctionSet = {
  namespace: "WARMBACK",
  metadata: { functions: [...READER_IDS].map(entry) },
  associated: new Map([...READER_IDS].map((id): [string, CustomFunction] => [id, (...args) => worth(args)])),
};

contract("the preview's sheet engine", async () => {
  const sheets = startHeadless(standIns, { sheets: [emptySheet("Sheet1")], names: [] });
  await sheets.whenCalculated();
  return {
    book: previewWorkbook(sheets),
    calculates: true,
    close: async () => sheets.dispose(),
    engine: { known: READER_IDS, call: (_id, args) => ({ value: worth(args) }) },
    calls: (address) => {
      const call = sheets.calls(address).at(-1);
      return call && { id: call.id, args: call.args as readonly CellInput[] };
    },
  };
});
