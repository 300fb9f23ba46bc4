/** The places along a picture at which its values can be read. */
import type { Axis, Picture, PictureCurve } from "../../../core/pictures";

export interface Stop {
  /** On the x axis: a number, or a bar's name. */
  readonly x: number | string;
  /** The values there, in words. */
  readonly text: string;
}

const shown = (value: number): string => Number(value.toPrecision(4)).toLocaleString("en-US");

/** "temperature, °F" → its name and its unit. */
function split({ label }: Axis): readonly [name: string, unit: string] {
  const at = label.lastIndexOf(", ");
  return at < 0 ? [label, ""] : [label.slice(0, at), ` ${label.slice(at + 2)}`];
}

function stopsOfBars({ x: { names = [] }, y, stacks = [], groups = [] }: Picture): readonly Stop[] {
  const [, unit] = split(y);
  return names.map((name, at) => ({
    x: name,
    text: `${name}: ${[...stacks, ...groups].map((stack) => `${stack.name} ${shown(stack.values[at] ?? 0)}${unit}`).join("; ")}`,
  }));
}

/** One stop for each point along curves that share their places. */
function stopsTogether({ x, y, levels = [] }: Picture, curves: readonly PictureCurve[]): readonly Stop[] {
  const [name, xUnit] = split(x);
  const [, unit] = split(y);
  const [first] = curves;
  const fixed = levels.map(({ label, at }) => `; ${label} ${shown(at)}${unit}`).join("");
  return (first?.points ?? []).map(([at], place) => {
    const where = x.pointNames?.[place] ?? `${name} ${shown(at)}${xUnit}`;
    const values = curves.map((curve) => `${curve.name} ${shown(curve.points[place]?.[1] ?? Number.NaN)}${unit}`);
    return { x: at, text: `${where}: ${values.join("; ")}${fixed}` };
  });
}

/** Point after point of curves that go their own ways. */
function stopsOneByOne({ x, y }: Picture, curves: readonly PictureCurve[]): readonly Stop[] {
  const [xName, xUnit] = split(x);
  const [yName, yUnit] = split(y);
  return curves.flatMap(({ name, points }) =>
    points.map(([at, height]) => ({
      x: at,
      text: `${name}: ${xName} ${shown(at)}${xUnit}; ${yName} ${shown(height)}${yUnit}`,
    })),
  );
}

export function stopsOf(picture: Picture): readonly Stop[] {
  if (picture.x.names !== undefined) return stopsOfBars(picture);
  // Bars across are read by their names, and in the table.
  if (picture.y.names !== undefined) return [];
  const curves = picture.curves.filter(({ tone }) => tone !== "outline");
  const [first] = curves;
  const isShared = curves.every(
    ({ points }) =>
      points.length === first?.points.length && points.every(([at], place) => at === first.points[place]?.[0]),
  );
  const rises = first?.points.every(([at], place, all) => place === 0 || at >= (all[place - 1]?.[0] ?? at)) ?? false;
  return isShared && rises ? stopsTogether(picture, curves) : stopsOneByOne(picture, curves);
}
