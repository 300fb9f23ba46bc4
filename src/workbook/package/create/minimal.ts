/** The smallest parts of a workbook that Excel takes. */

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
export const STYLES_TYPE = `${TYPES}.styles+xml`;
export const SHEET_TYPE = `${TYPES}.worksheet+xml`;
export const BOOK_TYPE = `${TYPES}.sheet.main+xml`;
export const METADATA_TYPE = `${TYPES}.sheetMetadata+xml`;

export const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The two fills come first in every file: ECMA-376 part 1, 18.8.21 leaves it open, Excel expects it. */
export const MINIMAL_STYLES =
  `${DECLARATION}<styleSheet xmlns="${MAIN}">` +
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
  "</styleSheet>";
