/** A schematic as data: symbols and words, placed by who draws it. */

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
  | "part";

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
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}
