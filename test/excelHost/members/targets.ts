/** What the members know of each object of Excel's: its target, by the object's name. */
import type { ChartModel, Place, SheetModel, TableModel, NameModel } from "../model/workbook";

/** Where a range is. A range that the client keeps moves with its cells. */
export interface RangeTarget {
  readonly sheet: SheetModel;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

export interface AreasTarget {
  readonly areas: readonly RangeTarget[];
}

/** A part of a range's format, and before what its properties' names are kept. */
export interface FormatTarget {
  readonly on: RangeTarget;
  readonly prefix: string;
}

/** A conditional format; parts of it keep their properties in its map. */
export interface ConditionalTarget {
  readonly on: RangeTarget;
  readonly format: Map<string, unknown>;
}

export interface TableTarget {
  readonly sheet: SheetModel;
  readonly table: TableModel;
}

export interface ColumnTarget extends TableTarget {
  readonly index: number;
}

export interface ShapeTarget {
  readonly sheet: SheetModel;
  readonly shape: Map<string, unknown>;
}

export interface ChartTarget {
  readonly sheet: SheetModel;
  readonly chart: ChartModel;
}

/** A part of a chart, and before what its properties' names are kept. */
export interface ChartPartTarget extends ChartTarget {
  readonly prefix: string;
}

export interface SeriesTarget extends ChartTarget {
  readonly series: Map<string, unknown>;
}

/** A list of names: the workbook's, or a sheet's own. */
export interface NamesTarget {
  readonly names: Map<string, NameModel>;
}

export interface NameTarget extends NamesTarget {
  readonly name: NameModel;
}

/** A custom function's result on its way to its cell: number, whether it succeeded, value, code of the error. */
export type FunctionResult = readonly [number, boolean, unknown, number?];

export interface Targets {
  readonly Workbook: null;
  readonly WacWorkbook: null;
  readonly Application: null;
  readonly WorkbookCreated: null;
  readonly WorkbookProtection: null;
  readonly WorksheetCollection: null;
  readonly Worksheet: SheetModel;
  readonly WorksheetProtection: SheetModel;
  readonly WorksheetFreezePanes: SheetModel;
  readonly PageLayout: SheetModel;
  readonly PageBreakCollection: SheetModel;
  /** The row below the break. */
  readonly PageBreak: number;
  readonly HeaderFooterGroup: SheetModel;
  readonly HeaderFooter: SheetModel;
  readonly ShapeCollection: SheetModel;
  readonly Shape: ShapeTarget;
  readonly ChartCollection: SheetModel;
  readonly Chart: ChartTarget;
  readonly ChartTitle: ChartTarget;
  readonly ChartLegend: ChartTarget;
  readonly ChartAxes: ChartTarget;
  readonly ChartAxis: ChartPartTarget;
  readonly ChartAxisTitle: ChartPartTarget;
  readonly ChartSeriesCollection: ChartTarget;
  readonly ChartSeries: SeriesTarget;
  readonly ChartSeriesFormat: SeriesTarget;
  readonly ChartFill: SeriesTarget;
  readonly ChartLineFormat: SeriesTarget;
  readonly NamedItemCollection: NamesTarget;
  readonly NamedItem: NameTarget;
  readonly TableCollection: readonly SheetModel[];
  readonly TableScopedCollection: readonly TableTarget[];
  readonly Table: TableTarget;
  readonly TableColumnCollection: TableTarget;
  readonly TableColumn: ColumnTarget;
  readonly Range: RangeTarget;
  readonly RangeAreas: AreasTarget;
  readonly RangeCollection: AreasTarget;
  readonly RangeFormat: RangeTarget;
  readonly RangeBorderCollection: RangeTarget;
  readonly RangeBorder: FormatTarget;
  readonly RangeFill: FormatTarget;
  readonly RangeFont: FormatTarget;
  readonly FormatProtection: FormatTarget;
  readonly DataValidation: RangeTarget;
  readonly ConditionalFormatCollection: RangeTarget;
  readonly ConditionalFormat: ConditionalTarget;
  readonly CustomConditionalFormat: ConditionalTarget;
  readonly ConditionalFormatRule: ConditionalTarget;
  readonly ConditionalRangeFormat: ConditionalTarget;
  readonly ConditionalRangeFont: ConditionalTarget;
  readonly ConditionalRangeFill: ConditionalTarget;
  readonly CustomFunctions: null;
  readonly AppRuntimeService: null;
}

export type TypeName = keyof Targets;

export type { Place };
