/** The first rows of a starter sheet as HTML: what the page shows until its sheet engine draws them. Results stay blank. */
import { columnLetters } from "../src/workbook/reader/reference";
import type { SheetCell, StarterSheet } from "../src/sheets/sheet";
import { placedCells } from "../src/workbook/starterCells";
import { rowHeights, starterStyle } from "../src/workbook/starterStyles";
import type { NewStyle } from "../src/workbook/package";

/** More rows than a window shows. */
const ROWS = 34;
const COLUMNS = 7;
/** As the engine draws them, pixels. */
const [ROW, COLUMN, ROW_HEADS] = [24, 88, 46];

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${String(sign.charCodeAt(0))};`);

const isFormula = ({ content, text }: SheetCell): boolean =>
  typeof content === "string" && content.startsWith("=") && text !== true;

/** A number as a sheet shows it without or with a simple format. */
function shown(cell: SheetCell): string {
  const { content, format = "" } = cell;
  if (isFormula(cell)) return "";
  if (typeof content !== "number") return String(content);
  if (format.endsWith("%")) return `${String(Math.round(content * 100))}%`;
  const decimals = /0\.(0+)/.exec(format)?.[1]?.length;
  return format.includes(",") || decimals !== undefined
    ? content.toLocaleString("en-US", { minimumFractionDigits: decimals ?? 0, maximumFractionDigits: decimals ?? 0 })
    : String(content);
}

function cssOf(look: NewStyle, isNumber: boolean): string {
  const rules = [
    look.bold === true ? "font-weight:700" : "",
    look.italic === true ? "font-style:italic" : "",
    look.size === undefined ? "" : `font-size:${String(look.size)}pt`,
    look.color === undefined ? "" : `color:${look.color}`,
    look.fill === undefined ? "" : `background:${look.fill}`,
    look.wrap === true ? "white-space:normal" : "",
    look.indent === true ? "padding-left:10px" : "",
    look.align !== undefined || isNumber ? `text-align:${look.align ?? "right"}` : "",
    ...Object.entries(look.edges ?? {}).map(
      ([side, edge]) => `border-${side}:${edge.style === "medium" ? "2px" : "1px"} solid ${edge.color}`,
    ),
  ];
  return rules.filter((rule) => rule !== "").join(";");
}

/** A table of the sheet's first rows and columns, each as wide and high as the engine makes it. */
export function stillSheet(sheet: StarterSheet): string {
  const cells = new Map(placedCells(sheet).map(({ row, column, cell }) => [`${String(row)},${String(column)}`, cell]));
  const heights = rowHeights(sheet);
  const columns = Array.from({ length: COLUMNS }, (_, at) => at);
  const widths = columns.map((at) => {
    const width = sheet.widths[at];
    return width === undefined ? COLUMN : Math.round(width * 7 + 5);
  });
  const cell = (row: number, column: number): string => {
    const found = cells.get(`${String(row)},${String(column)}`);
    if (found === undefined) return "<td></td>";
    const css = cssOf(starterStyle(found), typeof found.content === "number");
    return `<td${css === "" ? "" : ` style="${css}"`}>${escaped(shown(found))}</td>`;
  };
  const line = (row: number): string => {
    const points = heights[row];
    const height = points === undefined ? ROW : Math.max(ROW, Math.round((points * 4) / 3));
    return `<tr style="height:${String(height)}px"><th>${String(row + 1)}</th>${columns.map((at) => cell(row, at)).join("")}</tr>`;
  };
  const total = ROW_HEADS + widths.reduce((sum, width) => sum + width, 0);
  return [
    `<table style="width:${String(total)}px"><colgroup><col style="width:${String(ROW_HEADS)}px">`,
    ...widths.map((width) => `<col style="width:${String(width)}px">`),
    `</colgroup><tr class="heads"><th></th>${columns.map((at) => `<th>${columnLetters(at)}</th>`).join("")}</tr>`,
    ...Array.from({ length: ROWS }, (_, row) => line(row)),
    "</table>",
  ].join("");
}
