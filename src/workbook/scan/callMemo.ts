/** Remembers what equal calls gave, so that a column of equal formulas is worked out once. */
import type { CellInput } from "../values";

/** A call as text: equal exactly when function and arguments are. */
export function callKey(id: string, args: readonly CellInput[]): string {
  let key = id;
  for (const argument of args) {
    if (typeof argument === "number") key += `|${String(argument)}`;
    else if (typeof argument === "string") key += `|${String(argument.length)}"${argument}`;
    else key += `|${JSON.stringify(argument)}`;
  }
  return key;
}

export interface TextMemo<T> {
  get(key: string, make: () => T): T;
}

/** Keeps values until their keys reach `mostText` characters in total, then starts afresh. */
export function memo<T>(mostText = 8_000_000): TextMemo<T> {
  const kept = new Map<string, T>();
  let text = 0;
  return {
    get(key, make) {
      const known = kept.get(key);
      if (known !== undefined) return known;
      const value = make();
      if (text + key.length > mostText) {
        kept.clear();
        text = 0;
      }
      kept.set(key, value);
      text += key.length;
      return value;
    },
  };
}
