/** The text of a chart part: ECMA-376 part 1, 21.2. Cells are referred to, with their last values beside. */
import type { ChartSeries, SheetChart } from "../../../sheets/sheet";
import { LINE_WEIGHT, seriesColor } from "../../chartLooks";
import type { CellValue } from "../../port";
import { parseCells } from "../../reader/reference";
import { keyOf } from "../sheet/collect";
import { escapedXml } from "../xml/text";
import { absoluteCells, sheetPrefix } from "./absolute";
import type { DrawingSpaces } from "./drawingSpaces";
import { DECLARATION } from "./minimal";
import type { NewSheet, NewSheetCell } from "./newSheet";
import { filledCells } from "./sheetText";

/** English metric units in a point. */
const EMU = 12_700;

const DASHES = { dashed: "dash", dotted: "sysDot", "dash-dotted": "dashDot" } as const;

const fill = (at: number): string => `<a:solidFill><a:srgbClr val="${seriesColor(at).slice(1)}"/></a:solidFill>`;

function lineLook(at: number, { stroke }: ChartSeries): string {
  const dash = stroke === undefined ? "" : `<a:prstDash val="${DASHES[stroke]}"/>`;
  return `<c:spPr><a:ln w="${LINE_WEIGHT * EMU}" cap="rnd">${fill(at)}${dash}<a:round/></a:ln></c:spPr>`;
}

/** A sheet's cells as the chart's parts name and keep them. */
interface Cells {
  readonly prefix: string;
  readonly values: ReadonlyMap<number, NewSheetCell>;
}

function valuesAt({ values }: Cells, area: string): readonly CellValue[] {
  const { row = 0, column = 0, rows = 0, columns = 0 } = parseCells(area) ?? {};
  return Array.from({ length: rows * columns }, (_, at) => {
    const { value, spill } = values.get(keyOf(row + Math.floor(at / columns), column + (at % columns))) ?? {};
    return value ?? spill?.[0]?.[0] ?? null;
  });
}

function points(all: readonly CellValue[], isKept: (value: CellValue) => boolean): string {
  const kept = all.map((value, at) =>
    isKept(value) ? `<c:pt idx="${at}"><c:v>${escapedXml(String(value))}</c:v></c:pt>` : "",
  );
  return `<c:ptCount val="${all.length}"/>${kept.join("")}`;
}

const reference = ({ prefix }: Cells, area: string): string => `<c:f>${escapedXml(prefix + absoluteCells(area))}</c:f>`;

function numbers(cells: Cells, area: string): string {
  const cache = points(valuesAt(cells, area), (value) => typeof value === "number");
  return `<c:numRef>${reference(cells, area)}<c:numCache><c:formatCode>General</c:formatCode>${cache}</c:numCache></c:numRef>`;
}

function words(cells: Cells, area: string): string {
  const cache = points(valuesAt(cells, area), (value) => typeof value === "string" || typeof value === "number");
  return `<c:strRef>${reference(cells, area)}<c:strCache>${cache}</c:strCache></c:strRef>`;
}

const NO_MARKER = '<c:marker><c:symbol val="none"/></c:marker>';

function seriesText(chart: SheetChart, one: ChartSeries, at: number, cells: Cells): string {
  const head = `<c:idx val="${at}"/><c:order val="${at}"/><c:tx><c:v>${escapedXml(one.name)}</c:v></c:tx>`;
  const values = numbers(cells, one.y);
  if (chart.kind === "columns")
    return `<c:ser>${head}<c:spPr>${fill(at)}</c:spPr><c:invertIfNegative val="0"/><c:cat>${words(cells, one.x)}</c:cat><c:val>${values}</c:val></c:ser>`;
  const line = head + lineLook(at, one) + NO_MARKER;
  const smooth = `<c:smooth val="${chart.smooth === true ? 1 : 0}"/>`;
  return chart.kind === "curves"
    ? `<c:ser>${line}<c:xVal>${numbers(cells, one.x)}</c:xVal><c:yVal>${values}</c:yVal>${smooth}</c:ser>`
    : `<c:ser>${line}<c:cat>${words(cells, one.x)}</c:cat><c:val>${values}</c:val>${smooth}</c:ser>`;
}

const [ACROSS, UP] = [1, 2] as const;
const AXES = `<c:axId val="${ACROSS}"/><c:axId val="${UP}"/>`;

function plotText(chart: SheetChart, series: string): string {
  const plain = '<c:varyColors val="0"/>';
  if (chart.kind === "curves")
    return `<c:scatterChart><c:scatterStyle val="${chart.smooth === true ? "smoothMarker" : "lineMarker"}"/>${plain}${series}${AXES}</c:scatterChart>`;
  if (chart.kind === "lines")
    return `<c:lineChart><c:grouping val="standard"/>${plain}${series}<c:marker val="1"/>${AXES}</c:lineChart>`;
  return `<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/>${plain}${series}<c:gapWidth val="60"/>${AXES}</c:barChart>`;
}

const titleText = (text: string, size: number): string =>
  `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="${size}" b="1"/><a:t>${escapedXml(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;

const GRID =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

interface AxisPlan {
  readonly id: number;
  readonly crosses: number;
  readonly position: "b" | "l";
  readonly title: string;
  readonly isNames: boolean;
}

/** Its numbers are at the edge, wherever the axes cross. */
function axisText({ id, crosses, position, title, isNames }: AxisPlan): string {
  const body =
    `<c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="${position}"/>` +
    (position === "l" ? GRID : "") +
    titleText(title, 1000) +
    '<c:numFmt formatCode="#,##0" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>' +
    `<c:crossAx val="${crosses}"/><c:crosses val="autoZero"/>`;
  return isNames
    ? `<c:catAx>${body}<c:auto val="1"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="0"/></c:catAx>`
    : `<c:valAx>${body}<c:crossBetween val="${position === "l" ? "between" : "midCat"}"/></c:valAx>`;
}

/** @param sheet holds the cells that the chart draws */
export function chartText(chart: SheetChart, sheet: NewSheet, spaces: DrawingSpaces): string {
  const cells: Cells = { prefix: sheetPrefix(sheet.name), values: filledCells(sheet) };
  const series = chart.series.map((one, at) => seriesText(chart, one, at, cells)).join("");
  const across = axisText({
    id: ACROSS,
    crosses: UP,
    position: "b",
    title: chart.x,
    isNames: chart.kind !== "curves",
  });
  const up = axisText({ id: UP, crosses: ACROSS, position: "l", title: chart.y, isNames: false });
  return (
    `${DECLARATION}<c:chartSpace xmlns:c="${spaces.chart}" xmlns:a="${spaces.main}" xmlns:r="${spaces.relations}"><c:roundedCorners val="0"/>` +
    `<c:chart>${titleText(chart.title, 1200)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${plotText(chart, series)}${across}${up}</c:plotArea>` +
    '<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>'
  );
}
