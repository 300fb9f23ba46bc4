/** What the built functions script may weigh with every refrigerant in it, bytes gzipped: it loads before the first cell. */
export const MOST_ZIPPED_BYTES = 220_000;
