/** The workbook port over Office.js. What a host may lack is tested for when it is needed. */
import { readAreas } from "./cells";
import { documentBytes, documentName } from "./documentFile";
import { RANGE_COST, rangeOf, rangesOf } from "./ranges";
import { onChange, onSelection, selectedAreas, selection } from "./events";
import { openCopy } from "./openCopy";
import { PICTURES, placePicture } from "./picture";
import { inPortions } from "./portions";
import { resolveReferences } from "./references";
import { reading, supports, writing } from "./run";
import { codeOf, isMissing } from "./sentences";
import { addSheetCopies } from "./sheetCopies";
import { insertStarter } from "./starter";
import { formulaArea, usedArea } from "./usedAreas";
import { writeCells } from "./writeCells";
import type { Address, Area, PlacedPicture, SheetFacts, Workbook } from "../port";

async function sheets(): Promise<readonly SheetFacts[]> {
  return reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/visibility,items/protection/protected");
    await context.sync();
    return worksheets.items.map(({ name, visibility, protection }) => ({
      name,
      visible: visibility === "Visible",
      protected: protection.protected,
    }));
  });
}

/** Rejects by name where a sheet is missing; Excel itself doesn't say which. */
async function named<T>(names: readonly string[], run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    if (!isMissing(error)) throw error;
    const there = new Set((await sheets()).map(({ name }) => name.toLowerCase()));
    const gone = names.find((name) => !there.has(name.toLowerCase()));
    throw gone === undefined ? error : new Error(`there is no sheet named "${gone}"`, { cause: error });
  }
}

const sheetsOf = (places: readonly { readonly sheet: string }[]): readonly string[] => places.map(({ sheet }) => sheet);

async function select(address: Address): Promise<void> {
  const { sheet } = address;
  try {
    await named([sheet], () =>
      reading(async (context) => {
        context.workbook.worksheets.getItem(sheet).activate();
        // In one request with the activation, the selection may stay where it was (OfficeDev/office-js issue 5118).
        await context.sync();
        rangeOf(context, { ...address, rows: 1, columns: 1 }).select();
        await context.sync();
      }),
    );
  } catch (error) {
    if (codeOf(error) !== "InvalidOperation") throw error;
    throw new Error(`the sheet "${sheet}" is hidden: show it first`, { cause: error });
  }
}

async function recalculate(areas: readonly Area[]): Promise<void> {
  await inPortions(areas, {
    cost: () => RANGE_COST,
    run: (some) =>
      reading(async (context) => {
        for (const range of rangesOf(context, some)) range.setDirty();
        await context.sync();
        return [];
      }),
  });
}

const nothingToTakeBack = (): Promise<void> => Promise.resolve();

/** The workbook that Excel has open beside the panel. */
export function excelWorkbook(): Workbook {
  return {
    host: "excel",
    sheets,
    used: usedArea,
    // Which Excel this is can be asked once Office is ready, which may be later than now.
    get formulaArea() {
      return supports("1.9") ? formulaArea : undefined;
    },
    read: (areas) => named(sheetsOf(areas), () => readAreas(areas)),
    resolve: resolveReferences,
    selection,
    selectedAreas,
    select,
    write: (cells) => named(sheetsOf(cells), () => writeCells(cells)),
    insert: insertStarter,
    documentName,
    documentBytes,
    deliverCopy: openCopy,
    copySheets: (copies) => named(sheetsOf(copies.sheets), () => addSheetCopies(copies)),
    get placePicture() {
      if (!supports(PICTURES)) return undefined;
      return (picture: PlacedPicture, beside: Area) =>
        named([beside.sheet], () => writing((context) => placePicture(context, picture, beside), nothingToTakeBack));
    },
    recalculate: (areas) => named(sheetsOf(areas), () => recalculate(areas)),
    onSelection,
    onChange,
  };
}
