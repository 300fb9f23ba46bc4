/** Long calculations in slices: the caller says when one is over, so that the core needs no clock. */

/** Answers whether the caller wants its turn. */
export type IsSliceOver = () => boolean;

/** Thrown by a calculation whose slice is over. The same call, made again, goes on where it ended. */
export const UNFINISHED = new Error("unfinished");
