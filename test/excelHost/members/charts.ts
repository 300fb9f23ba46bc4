/** Charts of a sheet: Excel.ChartCollection and what is within. */
import { NOTHING, object, objectOrNull, plain, type Property, type SomeTypes } from "../host/objects";
import { refuse } from "../model/limits";
import { cellsText } from "../../../src/workbook/reader/reference";
import type { SheetModel } from "../model/workbook";
import type { ChartTarget, RangeTarget, SeriesTarget } from "./targets";

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** @throws HostError AccessDenied on a protected sheet */
function open(sheet: SheetModel): void {
  if (sheet.protection !== undefined) refuse("AccessDenied");
}

function chartSettings<T extends ChartTarget>(
  prefixOf: (target: T) => string,
  ...names: readonly string[]
): Readonly<Record<string, Property<T>>> {
  return plain<T>(
    names,
    (target, name) => target.chart.settings.get(prefixOf(target) + lower(name)) ?? null,
    (target, name, value) => {
      open(target.sheet);
      target.chart.settings.set(prefixOf(target) + lower(name), value);
    },
  );
}

function seriesSettings(prefix: string, ...names: readonly string[]): Readonly<Record<string, Property<SeriesTarget>>> {
  return plain<SeriesTarget>(
    names,
    ({ series }, name) => series.get(prefix + lower(name)) ?? null,
    ({ sheet, series }, name, value) => {
      open(sheet);
      series.set(prefix + lower(name), value);
    },
  );
}

const areaOf = (range: unknown): string => cellsText((range as { target: RangeTarget }).target);

const setCells =
  (name: string) =>
  ({ sheet, series }: SeriesTarget, [range]: readonly unknown[]) => {
    open(sheet);
    series.set(name, areaOf(range));
    return NOTHING;
  };

/** Excel guesses: each column of the cells becomes a series. */
function add(sheet: SheetModel, [type, range]: readonly unknown[]): ChartTarget {
  open(sheet);
  const { columns } = (range as { target: RangeTarget }).target;
  const number = sheet.charts.length + 1;
  const settings = new Map<string, unknown>([
    ["id", `{chart ${String(number)}}`],
    ["name", `Chart ${String(number)}`],
    ["chartType", type],
  ]);
  const series = Array.from({ length: columns }, (_, at) => new Map([["name", `Series${String(at + 1)}`]]));
  const chart = { settings, series };
  sheet.charts.push(chart);
  return { sheet, chart };
}

const find = (sheet: SheetModel, key: unknown): ChartTarget | undefined => {
  const chart = sheet.charts.find(({ settings }) => settings.get("id") === key || settings.get("name") === key);
  return chart && { sheet, chart };
};

const CHART: SomeTypes = {
  ChartCollection: {
    items: (sheet) => sheet.charts.map((chart) => object("Chart", { sheet, chart })),
    item: (sheet, key) => objectOrNull("Chart", find(sheet, key)) ?? undefined,
    methods: { GetItemOrNullObject: (sheet, [key]) => objectOrNull("Chart", find(sheet, key)) },
    changes: { Add: (sheet, args) => object("Chart", add(sheet, args)) },
  },
  Chart: {
    id: ({ chart }) => String(chart.settings.get("id")),
    properties: chartSettings<ChartTarget>(() => "", "Name", "ChartType"),
    parts: {
      Title: (on) => object("ChartTitle", on),
      Legend: (on) => object("ChartLegend", on),
      Axes: (on) => object("ChartAxes", on),
      Series: (on) => object("ChartSeriesCollection", on),
    },
    changes: {
      SetPosition({ sheet, chart }, [from, to]) {
        open(sheet);
        chart.settings.set("place", `${areaOf(from)}:${areaOf(to)}`);
        return NOTHING;
      },
      Delete({ sheet, chart }) {
        open(sheet);
        sheet.charts.splice(sheet.charts.indexOf(chart), 1);
        return NOTHING;
      },
    },
  },
  ChartTitle: { properties: chartSettings<ChartTarget>(() => "title.", "Text") },
  ChartLegend: { properties: chartSettings<ChartTarget>(() => "legend.", "Position") },
  ChartAxes: {
    parts: {
      CategoryAxis: (on) => object("ChartAxis", { ...on, prefix: "x." }),
      ValueAxis: (on) => object("ChartAxis", { ...on, prefix: "y." }),
    },
  },
  ChartAxis: { parts: { Title: (on) => object("ChartAxisTitle", on) } },
  ChartAxisTitle: { properties: chartSettings(({ prefix }) => prefix, "Text") },
};

const SERIES: SomeTypes = {
  ChartSeriesCollection: {
    methods: {
      GetCount: ({ chart }) => ({ value: chart.series.length }),
      GetItemAt(on, [at]) {
        const series = on.chart.series[Number(at)];
        return series === undefined ? refuse("InvalidArgument") : object("ChartSeries", { ...on, series });
      },
    },
    changes: {
      Add(on, [name]) {
        open(on.sheet);
        const series = new Map<string, unknown>([["name", name]]);
        on.chart.series.push(series);
        return object("ChartSeries", { ...on, series });
      },
    },
  },
  ChartSeries: {
    properties: seriesSettings("", "Name", "MarkerStyle", "Smooth"),
    parts: { Format: (on) => object("ChartSeriesFormat", on) },
    changes: {
      SetValues: setCells("y"),
      SetXAxisValues: setCells("x"),
      Delete({ sheet, chart, series }) {
        open(sheet);
        chart.series.splice(chart.series.indexOf(series), 1);
        return NOTHING;
      },
    },
  },
  ChartSeriesFormat: {
    parts: { Fill: (on) => object("ChartFill", on), Line: (on) => object("ChartLineFormat", on) },
  },
  ChartFill: {
    changes: {
      SetSolidColor({ sheet, series }, [color]) {
        open(sheet);
        series.set("fill", color);
        return NOTHING;
      },
    },
  },
  ChartLineFormat: { properties: seriesSettings("line.", "Color", "Weight", "LineStyle") },
};

export const CHART_TYPES = { ...CHART, ...SERIES } as Required<Pick<SomeTypes, ChartTypeName>>;

type ChartTypeName = Extract<keyof SomeTypes, `Chart${string}`>;
