/** The functions that have pictures: known before the pictures' own script is loaded. */
export const PICTURED: ReadonlySet<string> = new Set([
  "CYCLE.STATES",
  "EXCHANGER.ZONES",
  "EXCHANGER.COIL",
  "EXCHANGER.BALANCE",
  "POOL.YEAR",
]);
