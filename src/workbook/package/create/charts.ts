/** The parts of a new sheet's charts: a drawing that places them, and a part for each: ECMA-376 part 1, 20.5 and 21.2. */
import { parseCells } from "../../reader/reference";
import type { SheetChart } from "../../../sheets/sheet";
import type { PartsEditor } from "../parts/edits";
import { refusal } from "../refusal";
import { escapedAttribute } from "../xml/text";
import { chartText } from "./chartText";
import { drawingSpaces, type DrawingSpaces } from "./drawingSpaces";
import { DECLARATION } from "./minimal";
import type { NewSheet } from "./newSheet";

const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
const CHART_TYPE = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

const corner = (name: string, column: number, row: number): string =>
  `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;

/** Charts are numbered from 1 on in the drawing; 1 is the id of the drawing itself. */
function anchorText({ place, title, description }: SheetChart, at: number, id: string, spaces: DrawingSpaces): string {
  const area = parseCells(place);
  if (area === undefined) throw refusal("change", `The chart's place ${JSON.stringify(place)} is no area of cells.`);
  const { row, column, rows, columns } = area;
  return (
    `<xdr:twoCellAnchor>${corner("from", column, row)}${corner("to", column + columns, row + rows)}` +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${at + 2}" name="${escapedAttribute(title)}" descr="${escapedAttribute(description)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
    `<a:graphic><a:graphicData uri="${spaces.chart}"><c:chart xmlns:c="${spaces.chart}" xmlns:r="${spaces.relations}" r:id="${id}"/></a:graphicData></a:graphic>` +
    "</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>"
  );
}

/** The first free path of a numbered part. */
function freePath(editor: PartsEditor, stem: string): string {
  let number = 1;
  while (editor.has(`${stem}${number}.xml`)) number++;
  return `${stem}${number}.xml`;
}

interface ChartsPlace {
  /** Of the workbook part. */
  readonly folder: string;
  /** The sheet's path. */
  readonly own: string;
  readonly strict: boolean;
}

/**
 * Adds the parts of a sheet's charts.
 * @returns the sheet's element that names the drawing; empty where the sheet has no chart
 */
export async function addCharts(
  editor: PartsEditor,
  sheet: NewSheet,
  { folder, own, strict }: ChartsPlace,
): Promise<string> {
  const { charts = [] } = sheet;
  if (charts.length === 0) return "";
  const spaces = drawingSpaces(strict);
  const drawing = freePath(editor, `${folder}drawings/drawing`);
  const anchors: string[] = [];
  for (const [at, chart] of charts.entries()) {
    const path = freePath(editor, `${folder}charts/chart`);
    editor.set(path, chartText(chart, sheet, spaces));
    editor.setType(path, CHART_TYPE);
    const id = await editor.addRelation(drawing, `${spaces.relations}/chart`, path);
    anchors.push(anchorText(chart, at, id, spaces));
  }
  editor.set(
    drawing,
    `${DECLARATION}<xdr:wsDr xmlns:xdr="${spaces.sheet}" xmlns:a="${spaces.main}">${anchors.join("")}</xdr:wsDr>`,
  );
  editor.setType(drawing, DRAWING_TYPE);
  const id = await editor.addRelation(own, `${spaces.relations}/drawing`, drawing);
  return `<drawing xmlns:r="${spaces.relations}" r:id="${id}"/>`;
}
