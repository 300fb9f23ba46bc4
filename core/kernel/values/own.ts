/** A record's own entry under a key from outside; undefined for what every object inherits ("constructor"). */
export const own = <T>(record: Readonly<Record<string, T>> | undefined, key: string): T | undefined =>
  record !== undefined && Object.prototype.hasOwnProperty.call(record, key) ? record[key] : undefined;
