/** A function's picture as data: the drawing in the cell's units, and the same numbers as a table. */
import { fromBase, KINDS } from "../index";
import type { KindName, System } from "../kernel/values/quantity";
import type { Scheme } from "./schemeParts";

/** Colours by role, from the stylesheet. Lines differ by dashes and labels too, never by colour alone. */
export type Tone = "first" | "second" | "third" | "fourth" | "outline";

export type PicturePoint = readonly [x: number, y: number];

export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface Axis {
  readonly label: string;
  readonly log?: true;
  /** Texts at places of the axis, in place of numbers. */
  readonly ticks?: readonly Tick[];
  /** The least and the highest value of the axis, if not those of the drawn values. */
  readonly span?: readonly [least: number, highest: number];
  /** Names of the bars; on the y axis they lie across, the first on top. */
  readonly names?: readonly string[];
  /** Names of the curves' points along the axis: "14 Mar". */
  readonly pointNames?: readonly string[];
}

export interface PictureCurve {
  readonly name: string;
  readonly tone: Tone;
  readonly points: readonly PicturePoint[];
  readonly dashed?: true;
}

/** A labelled point. */
export interface Mark {
  readonly at: PicturePoint;
  readonly label: string;
}

/** A stretch of the x axis with a name. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** Stacked bars: a value for each of the axis's names. */
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
  /** The content of the picture in a sentence, for screen readers. */
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly curves: readonly PictureCurve[];
  readonly marks?: readonly Mark[];
  readonly stretches?: readonly Stretch[];
  readonly stacks?: readonly Stack[];
  /** Bars beside each other, in place of stacked ones. */
  readonly groups?: readonly Stack[];
  readonly levels?: readonly Level[];
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** Pictures shown one at a time: the reader picks one by name. */
export interface PictureChoice {
  /** Label of the choice: "month". */
  readonly label: string;
  /** Index of the option shown first. */
  readonly first: number;
  readonly options: readonly { readonly name: string; readonly picture: Picture }[];
}

/** A picture, a choice of pictures, or a schematic. */
export type ShownPicture = Picture | PictureChoice | Scheme;

/** A kind in the cell's units: values for the axes, numbers and units for the table. */
export interface InUnit {
  readonly unit: string;
  of(base: number): number;
}

export const inUnit = (kind: KindName, system: System): InUnit => {
  const unit = KINDS[kind][system];
  return { unit: unit.text, of: (base) => fromBase(base, unit) };
};

/** A number rounded for the table: five significant digits. */
export const roundedForTable = (value: number): number => Number(value.toPrecision(5));
