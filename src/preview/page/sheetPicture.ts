/** A sheet's chart as a picture, with the values that its cells hold now. */
import type { Picture, PictureCurve, PicturePoint, Tone } from "../../../core/pictures";
import type { SheetChart } from "../../sheets/sheet";
import type { CellValue } from "../../workbook/port";

const TONES: readonly Tone[] = ["first", "second", "third", "fourth"];
const toneAt = (at: number): Tone => TONES[at % TONES.length] ?? "first";

/** The cells of an area of the sheet, one after the other. */
export type ReadCells = (area: string) => readonly CellValue[];

const numberOf = (value: CellValue | undefined): number | undefined => (typeof value === "number" ? value : undefined);

/** Cells without a number leave their point out. */
function curveOf({ series, kind }: SheetChart, at: number, read: ReadCells): PictureCurve {
  const { name = "", x = "", y = "", stroke } = series[at] ?? {};
  const across = kind === "curves" ? read(x) : read(x).map((_, place) => place);
  const points = read(y).flatMap((value, place): PicturePoint[] => {
    const [right, up] = [numberOf(across[place]), numberOf(value)];
    return right === undefined || up === undefined ? [] : [[right, up]];
  });
  return { name, tone: toneAt(at), points, ...(stroke !== undefined && { dashed: true }) };
}

export function sheetPicture(chart: SheetChart, read: ReadCells): Picture {
  const { kind, title, description, series } = chart;
  const names = read(series[0].x).map(String);
  const plain = { title, description, y: { label: chart.y }, head: [], rows: [] };
  if (kind === "columns")
    return {
      ...plain,
      x: { label: chart.x, names },
      curves: [],
      groups: series.map(({ name, y }, at) => ({
        name,
        tone: toneAt(at),
        values: read(y).map((value) => numberOf(value) ?? 0),
      })),
    };
  const x = kind === "curves" ? { label: chart.x } : { label: chart.x, ticks: names.map((text, at) => ({ at, text })) };
  return { ...plain, x, curves: series.map((_, at) => curveOf(chart, at, read)) };
}
