/**
 * Whether an equation holds in any units, as quantities with their units put in, or in SI base units alone because numbers
 * in it have units. Tried: with metre, kilogram, second and kelvin of other sizes its two sides must change alike.
 * Used by the build only.
 */
import { compile, unit } from "mathjs";
import { KINDS, type KindName } from "../../core";
import type { AnyEquation, AnyRelation } from "../../core/help";

/** Sizes of kilogram, metre, second, ampere and kelvin, in the order of a unit's dimensions. */
const SIZES = [2.3, 1.7, 0.6, 1, 1.3];

/** The one constant of the equations that has a unit that people know in both systems: m/s². */
const GRAVITY_SIZE = 1.7 / 0.6 ** 2;

function sizeOf(kind: KindName): number {
  const { base } = KINDS[kind];
  if (base === "") return 1;
  const { dimensions } = unit(base) as unknown as { readonly dimensions: readonly number[] };
  return dimensions.reduce((size, power, at) => size * (SIZES[at] ?? Number.NaN) ** power, 1);
}

/** Places within the spans of the symbols. */
const PLACES = [0.23, 0.41, 0.58, 0.77];

type Point = Readonly<Record<string, number>>;

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

function isFinite(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value) && value !== 0;
}

export function holdsInAnyUnits(one: AnyEquation | AnyRelation): boolean {
  const { form, symbols, constants = {} } = one;
  if (Object.keys(constants).some((name) => name !== "g")) return false;
  const names = Object.entries(symbols);
  const cut = form.indexOf("=");
  const [left, right] = [form.slice(0, cut), form.slice(cut + 1)].map((side) => compile(side.trim()));
  const valueOf = (side: typeof left, at: Point): unknown => side?.evaluate({ ...at }) as unknown;
  let tried = 0;
  for (const [turn, place] of PLACES.entries()) {
    const point = Object.fromEntries(
      names.map(
        (
          [
            name,
            {
              span: [from, to],
            },
          ],
          at,
        ) => [name, from + (to - from) * ((place + 0.13 * at + 0.07 * turn) % 1)],
      ),
    );
    const scaled = Object.fromEntries(names.map(([name, { kind }]) => [name, (point[name] ?? 0) * sizeOf(kind)]));
    const g = constants["g"];
    const [a, b] = [
      { ...point, ...(g !== undefined && { g }) },
      { ...scaled, ...(g !== undefined && { g: g * GRAVITY_SIZE }) },
    ];
    const [before, after] = [valueOf(right, a), valueOf(right, b)];
    if (!isFinite(before) || !isFinite(after)) continue;
    const [other, otherAfter] = "code" in one ? [1, sizeOf(one.kind)] : [valueOf(left, a), valueOf(left, b)];
    if (!isFinite(other) || !isFinite(otherAfter)) continue;
    if (!isNear(after / before, otherAfter / other)) return false;
    tried += 1;
  }
  return tried > 1;
}
