/** Our own workbook: the ground for one that is made in the page. */
import { typesText } from "../parts/contentTypes";
import { CONTENT_TYPES, type Package } from "../parts/package";
import { RELATIONS, relationsPath, relationsText } from "../parts/relations";
import { refusal } from "../refusal";
import type { PackageWork } from "../work";
import { encoded } from "../xml/text";
import { addSheets } from "./addSheets";
import { BOOK_TYPE, DECLARATION, dynamicMetadata, MAIN, METADATA_TYPE, MINIMAL_STYLES, STYLES_TYPE } from "./minimal";
import type { NewName, NewSheet } from "./newSheet";

const BOOK = "xl/workbook.xml";

/** Without a sheet. */
function emptyPackage(): Package {
  const types = typesText(["xl/x.xml", "_rels/.rels", BOOK, "xl/styles.xml", "xl/metadata.xml"], {
    defaults: new Map([
      ["rels", "application/vnd.openxmlformats-package.relationships+xml"],
      ["xml", "application/xml"],
    ]),
    overrides: new Map([
      [BOOK, BOOK_TYPE],
      ["xl/styles.xml", STYLES_TYPE],
      ["xl/metadata.xml", METADATA_TYPE],
    ]),
  });
  const relation = (id: string, kind: string, target: string) => ({
    id,
    kind,
    target,
    type: `${RELATIONS}/${kind}`,
    external: false,
    raw: target,
  });
  const texts: readonly (readonly [string, string])[] = [
    [CONTENT_TYPES, types],
    ["_rels/.rels", relationsText([relation("rId1", "officeDocument", BOOK)])],
    [
      BOOK,
      `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><workbookPr/><bookViews><workbookView activeTab="0"/></bookViews><sheets/><calcPr fullCalcOnLoad="1"/></workbook>`,
    ],
    [
      relationsPath(BOOK),
      relationsText([
        relation("rId1", "styles", "xl/styles.xml"),
        relation("rId2", "sheetMetadata", "xl/metadata.xml"),
      ]),
    ],
    ["xl/styles.xml", MINIMAL_STYLES],
    ["xl/metadata.xml", dynamicMetadata(MAIN)],
  ];
  return { parts: new Map(texts.map(([path, text]) => [path.toLowerCase(), { path, bytes: encoded(text) }])) };
}

/** A workbook of its own, with at least one sheet that can be seen. */
export async function newWorkbook(
  sheets: readonly NewSheet[],
  names: readonly NewName[] = [],
  work: PackageWork = {},
): Promise<Package> {
  if (!sheets.some(({ state = "visible" }) => state === "visible"))
    throw refusal("change", "A workbook needs a sheet that can be seen.");
  return addSheets(emptyPackage(), sheets, names, work);
}
