/** Functions beyond the first 98: each may cost a kilobyte. */
const ADDED_FUNCTIONS = 38;

/** What the built functions script may weigh with every refrigerant in it, bytes gzipped: it loads before the first cell. */
export const MOST_ZIPPED_BYTES = 220_000 + 1_000 * ADDED_FUNCTIONS;
