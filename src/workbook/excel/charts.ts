/** Draws a starter sheet's charts with Excel's own: members of ExcelApi 1.7, which the whole adapter needs. */
import type { ChartSeries, SheetChart, StarterSheet } from "../../sheets/sheet";
import { LINE_WEIGHT, seriesColor } from "../chartLooks";
import { brief, changing } from "./run";

const STROKES = { dashed: "Dash", dotted: "RoundDot", "dash-dotted": "DashDot" } as const;

function typeOf({ kind, smooth }: SheetChart): Excel.ChartType {
  if (kind === "columns") return "ColumnClustered" as Excel.ChartType;
  if (kind === "lines") return "Line" as Excel.ChartType;
  return (smooth === true ? "XYScatterSmoothNoMarkers" : "XYScatterLinesNoMarkers") as Excel.ChartType;
}

function look(series: Excel.ChartSeries, { stroke }: ChartSeries, at: number, isColumns: boolean): void {
  const { format } = series;
  if (isColumns) return format.fill.setSolidColor(seriesColor(at));
  format.line.color = seriesColor(at);
  format.line.weight = LINE_WEIGHT;
  format.line.lineStyle = stroke === undefined ? "Continuous" : STROKES[stroke];
  series.markerStyle = "None";
}

/** Excel guesses series from the cells that a chart is made of: the first is kept, the others go. */
async function drawSeries(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  chart: Excel.Chart,
  plan: SheetChart,
): Promise<void> {
  const count = chart.series.getCount();
  await context.sync();
  const { value: guessed } = count;
  for (let at = guessed - 1; at > 0; at--) chart.series.getItemAt(at).delete();
  plan.series.forEach((one, at) => {
    const series = at === 0 && guessed > 0 ? chart.series.getItemAt(0) : chart.series.add(one.name);
    series.name = one.name;
    series.setValues(brief(sheet.getRange(one.y)));
    series.setXAxisValues(brief(sheet.getRange(one.x)));
    look(series, one, at, plan.kind === "columns");
  });
}

function inscribe(sheet: Excel.Worksheet, chart: Excel.Chart, { title, x, y, place }: SheetChart): void {
  const [first = place, last = first] = place.split(":");
  chart.title.text = title;
  chart.axes.categoryAxis.title.text = x;
  chart.axes.valueAxis.title.text = y;
  chart.legend.position = "Bottom";
  chart.setPosition(brief(sheet.getRange(first)), brief(sheet.getRange(last)));
}

async function draw(context: Excel.RequestContext, title: string, plan: SheetChart): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(title);
  const chart = sheet.charts.add(typeOf(plan), brief(sheet.getRange(plan.series[0].y)), "Columns");
  chart.name = plan.title;
  await drawSeries(context, sheet, chart, plan);
  inscribe(sheet, chart, plan);
  await context.sync();
}

/** A chart that Excel broke off could show something else than its table. */
async function takeChartAway(title: string, { title: name }: SheetChart): Promise<void> {
  await changing(async (context) => {
    const chart = context.workbook.worksheets.getItem(title).charts.getItemOrNullObject(name);
    chart.load("name");
    await context.sync();
    if (!chart.isNullObject) chart.delete();
    await context.sync();
  });
}

/** A sheet without a chart is of use: its rows hold the same numbers. */
export async function addSheetCharts(title: string, { charts = [] }: StarterSheet): Promise<void> {
  for (const plan of charts) {
    try {
      await changing((context) => draw(context, title, plan));
    } catch {
      await takeChartAway(title, plan).catch(() => undefined);
    }
  }
}
