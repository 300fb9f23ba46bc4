/** The smallest parts of a workbook that Excel takes. */

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
export const STYLES_TYPE = `${TYPES}.styles+xml`;
export const SHEET_TYPE = `${TYPES}.worksheet+xml`;
export const STRINGS_TYPE = `${TYPES}.sharedStrings+xml`;
export const BOOK_TYPE = `${TYPES}.sheet.main+xml`;
export const METADATA_TYPE = `${TYPES}.sheetMetadata+xml`;

export const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/**
 * The font of what has no look of its own. A column's width counts its digits: 7 pixels, as those of Excel's own default;
 * but every program has a font of Arial's widths, while one without Calibri's makes all columns wider.
 */
export const DEFAULT_FONT = { name: "Arial", size: 10 } as const;

/** The two fills come first in every file: ECMA-376 part 1, 18.8.21 leaves it open, Excel expects it. */
export const MINIMAL_STYLES =
  `${DECLARATION}<styleSheet xmlns="${MAIN}">` +
  `<fonts count="1"><font><sz val="${DEFAULT_FONT.size}"/><name val="${DEFAULT_FONT.name}"/><family val="2"/></font></fonts>` +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
  "</styleSheet>";

/** The one record of cell metadata that a copy needs: dynamic arrays, [MS-XLSX] 2.6.206. */
export const dynamicMetadata = (main: string): string =>
  `${DECLARATION}<metadata xmlns="${main}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">` +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
