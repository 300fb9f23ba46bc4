/** The functions that have pictures though they take no time: the page draws them, not a worker. */
export const LIGHT_PICTURES: readonly string[] = ["PIPE.LOOP"];
