/** A function's picture as data: what is drawn, in the cell's units, and the same numbers as a table. */
import { fromBase, KINDS } from "../index";
import type { KindName, System } from "../kernel/quantity";

/** Colours by role; the stylesheet says which. Lines differ by dashes and labels too, never by colour alone. */
export type Tone = "first" | "second" | "third" | "fourth" | "outline";

export type Point = readonly [x: number, y: number];

export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface Axis {
  readonly label: string;
  readonly log?: true;
  /** Texts at places of the axis, in place of numbers. */
  readonly ticks?: readonly Tick[];
  /** The least and the highest that the axis shows, where it isn't the drawn values'. */
  readonly span?: readonly [least: number, highest: number];
  /** What stacks of bars stand on. */
  readonly names?: readonly string[];
}

export interface Curve {
  readonly name: string;
  readonly tone: Tone;
  readonly points: readonly Point[];
  readonly dashed?: true;
}

/** A point with a word beside it. */
export interface Mark {
  readonly at: Point;
  readonly label: string;
}

/** A stretch of the x axis with a name. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** Bars one on the other: a value for each of the axis's names. */
export interface Stack {
  readonly name: string;
  readonly tone: Tone;
  readonly values: readonly number[];
}

/** A level across the whole width. */
export interface Level {
  readonly at: number;
  readonly label: string;
}

export interface Picture {
  readonly title: string;
  /** What the picture shows, in a sentence: read out in its place. */
  readonly says: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly curves: readonly Curve[];
  readonly marks?: readonly Mark[];
  readonly stretches?: readonly Stretch[];
  readonly stacks?: readonly Stack[];
  readonly levels?: readonly Level[];
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** Pictures of which one shows at a time: the reader picks it by its name. */
export interface PictureChoice {
  /** What is picked: "month". */
  readonly label: string;
  /** The place of the option that shows first. */
  readonly first: number;
  readonly options: readonly { readonly name: string; readonly picture: Picture }[];
}

/** What stands in a place for pictures. */
export type Shown = Picture | PictureChoice;

/** A kind in the cell's units: values for the axes, numbers and units for the table. */
export interface InUnit {
  readonly unit: string;
  of(base: number): number;
}

export const inUnit = (kind: KindName, system: System): InUnit => {
  const unit = KINDS[kind][system];
  return { unit: unit.text, of: (base) => fromBase(base, unit) };
};

/** A number as the table prints it: five significant digits. */
export const printed = (value: number): number => Number(value.toPrecision(5));
