/** The outcome of a part of the full verification. */
export interface Part {
  readonly name: string;
  readonly held: boolean;
  readonly seconds: number;
  /** Counts and figures. */
  readonly lines: readonly string[];
}
