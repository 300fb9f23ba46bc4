/** A schematic as data: symbols and words, placed by who draws it. */

import type { Lanes } from "./lanes";

/** What a part is drawn as; a run is pipe and fittings on the line. */
export type SchemeSymbol =
  | "pool"
  | "pump"
  | "run"
  | "valve"
  | "check valve"
  | "strainer"
  | "filter"
  | "exchanger"
  | "heater"
  | "sensor"
  | "node"
  | "part";

/** The first word that a part's name holds says what it is. */
const WORDS: readonly (readonly [RegExp, SchemeSymbol])[] = [
  [/strainer|basket/i, "strainer"],
  [/filter/i, "filter"],
  [/check/i, "check valve"],
  [/valve/i, "valve"],
  [/exchanger|condenser/i, "exchanger"],
  [/heater|boiler/i, "heater"],
  [/sensor|probe|thermometer|switch|meter/i, "sensor"],
  [/pump/i, "pump"],
];

export function symbolNamed(what: string): SchemeSymbol | undefined {
  return WORDS.find(([word]) => word.test(what))?.[1];
}

export interface SchemePart {
  readonly symbol: SchemeSymbol;
  readonly name: string;
  /** Size, head and velocity, with units. */
  readonly details: readonly string[];
}

/** Parts one after the other, from the pool and back to it. */
export interface Scheme {
  readonly title: string;
  /** The content of the schematic in sentences, for screen readers. */
  readonly description: string;
  readonly parts: readonly SchemePart[];
  /** Of a network: the lane of each part, and the lines that join parts down a lane. Without, one line and back. */
  readonly lanes?: Omit<Lanes, "rows">;
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}
