/** A refusal: a quantity left the range that a method covers. Made by `outside`. */
export interface OutsideRange extends Error {
  readonly quantity: string;
  readonly limit: string;
  readonly came: string;
}

/**
 * An error that says which quantity left which limit and what came, all in words with units.
 *
 * @param quantity what was asked for, e.g. "R-32 temperature"
 * @param limit the limit, e.g. "at most 478.5 K"
 * @param came what came, e.g. "500 K"
 */
export const outside = (quantity: string, limit: string, came: string): OutsideRange =>
  Object.assign(new Error(`${quantity}: must be ${limit}, got ${came}`), {
    name: "OutsideRange",
    quantity,
    limit,
    came,
  });

/** Whether a caught value is a refusal made by `outside`. */
export const isOutside = (error: unknown): error is OutsideRange =>
  error instanceof Error && error.name === "OutsideRange";
