/** The zones of the inquiry's duty. */
const ZONES = "WARMBACK.EXCHANGER.ZONES([[refrigerant:direction]])";

/** A cell of the zones' table: rows and columns count from 1, the first row names the columns. */
export const zone = (row: number, column: number): string => `INDEX(${ZONES},${row},${column})`;
