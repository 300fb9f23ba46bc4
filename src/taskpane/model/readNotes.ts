/** Which standing notes somebody has marked as read, by whom and when: kept in this browser, for this user. */

export interface ReadMark {
  readonly by: string;
  /** yyyy-mm-dd */
  readonly on: string;
}

/** What the browser keeps texts in: localStorage, where the host allows it. */
export interface TextStore {
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
}

export interface ReadNotes {
  markOf(code: string): ReadMark | undefined;
  /** @returns whether the mark will still be there next time */
  mark(code: string, mark: ReadMark): boolean;
}

const KEY = "warmback.read-notes";

const isMark = (value: unknown): value is ReadMark =>
  typeof value === "object" &&
  value !== null &&
  typeof (value as ReadMark).by === "string" &&
  typeof (value as ReadMark).on === "string";

function stored(store: TextStore | undefined): ReadonlyMap<string, ReadMark> {
  try {
    const found: unknown = JSON.parse(store?.getItem(KEY) ?? "{}");
    const entries = typeof found === "object" && found !== null ? Object.entries(found) : [];
    return new Map(entries.flatMap(([code, mark]) => (isMark(mark) ? [[code, mark] as const] : [])));
  } catch {
    return new Map();
  }
}

/** @param store undefined, or one that throws: marks then last as long as the panel */
export function readNotes(store: TextStore | undefined): ReadNotes {
  const marks = new Map(stored(store));
  return {
    markOf: (code) => marks.get(code),
    mark(code, mark) {
      marks.set(code, mark);
      try {
        store?.setItem(KEY, JSON.stringify(Object.fromEntries(marks)));
        return store !== undefined;
      } catch {
        return false;
      }
    },
  };
}

/** The browser's store; undefined where the host forbids it. */
export function browserStore(): TextStore | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}
