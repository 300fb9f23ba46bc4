/** Workbooks out of plain parts, made by code. */
import { strToU8, zipSync } from "fflate";

export type PartTexts = Readonly<Record<string, string | Uint8Array>>;

/** Relations as `[id, type, target, external]`. */
export type RelationRow = readonly [id: string, type: string, target: string, external?: true];

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const MICROSOFT = "http://schemas.microsoft.com/office";

/** The types that aren't found under the usual address. */
const OTHER_TYPES: Readonly<Record<string, string>> = {
  "core-properties": "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties",
  thumbnail: "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail",
  origin: "http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin",
  signature: "http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/signature",
  vbaProject: `${MICROSOFT}/2006/relationships/vbaProject`,
  person: `${MICROSOFT}/2017/10/relationships/person`,
  threadedComment: `${MICROSOFT}/2017/10/relationships/threadedComment`,
  webextensiontaskpanes: `${MICROSOFT}/2011/relationships/webextensiontaskpanes`,
  webextension: `${MICROSOFT}/2011/relationships/webextension`,
  slicer: `${MICROSOFT}/2007/relationships/slicer`,
  slicerCache: `${MICROSOFT}/2007/relationships/slicerCache`,
};

export const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export function rels(rows: readonly RelationRow[]): string {
  const lines = rows.map(
    ([id, type, target, external]) =>
      `<Relationship Id="${id}" Type="${OTHER_TYPES[type] ?? `${OFFICE}/${type}`}" Target="${target}"${external ? ' TargetMode="External"' : ""}/>`,
  );
  return `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${lines.join("")}</Relationships>`;
}

export function contentTypes(
  defaults: Readonly<Record<string, string>>,
  overrides: Readonly<Record<string, string>>,
): string {
  const first = Object.entries(defaults).map(([ext, type]) => `<Default Extension="${ext}" ContentType="${type}"/>`);
  const own = Object.entries(overrides).map(([path, type]) => `<Override PartName="/${path}" ContentType="${type}"/>`);
  return `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${first.join("")}${own.join("")}</Types>`;
}

export function zipOf(parts: PartTexts): Uint8Array {
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([path, part]) => [path, typeof part === "string" ? strToU8(part) : part]),
    ),
    { mtime: "1990-06-01T12:00:00" },
  );
}

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const R = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const SHEETML = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** A plain workbook: sheets by name, each the inside of its `worksheet`. */
export function plainBook(
  sheets: Readonly<Record<string, string>>,
  more: {
    readonly book?: string;
    readonly parts?: PartTexts;
    readonly styles?: string;
    readonly strings?: readonly string[];
  } = {},
): Record<string, string | Uint8Array> {
  const names = Object.keys(sheets);
  const strings = more.strings ?? [];
  const paths = names.map((_, at) => `xl/worksheets/sheet${at + 1}.xml`);
  return {
    "[Content_Types].xml": contentTypes(
      { rels: "application/vnd.openxmlformats-package.relationships+xml", xml: "application/xml" },
      {
        "xl/workbook.xml": `${SHEETML}.sheet.main+xml`,
        "xl/styles.xml": `${SHEETML}.styles+xml`,
        "xl/sharedStrings.xml": `${SHEETML}.sharedStrings+xml`,
        ...Object.fromEntries(paths.map((path) => [path, `${SHEETML}.worksheet+xml`])),
      },
    ),
    "_rels/.rels": rels([["rId1", "officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${R}"><sheets>${names
      .map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`)
      .join("")}</sheets>${more.book ?? ""}</workbook>`,
    "xl/_rels/workbook.xml.rels": rels([
      ...names.map((_, at): RelationRow => [`rId${at + 1}`, "worksheet", `worksheets/sheet${at + 1}.xml`]),
      ["rIdS", "styles", "styles.xml"],
      ["rIdT", "sharedStrings", "sharedStrings.xml"],
    ]),
    "xl/styles.xml": more.styles ?? PLAIN_STYLES,
    "xl/sharedStrings.xml": `${HEAD}<sst xmlns="${MAIN}" count="${strings.length}" uniqueCount="${strings.length}">${strings
      .map((text) => `<si><t>${text}</t></si>`)
      .join("")}</sst>`,
    ...Object.fromEntries(
      names.map((name, at) => [
        paths[at]!,
        `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${R}">${sheets[name]!}</worksheet>`,
      ]),
    ),
    ...more.parts,
  };
}

export const PLAIN_STYLES =
  `${HEAD}<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>` +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>' +
  '<xf numFmtId="2" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"><alignment wrapText="1"/></xf></cellXfs>' +
  "</styleSheet>";
