/** Workbooks in the browser's own store, so that a closed or reloaded page loses nothing. */
import type { BookData } from "../file/bookData";

export interface KeptBook {
  /** One for each workbook that was open. */
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly time: number;
  /** A workbook without a file yet, packed (`data` where an older page kept it), or the bytes of one that was opened. */
  readonly content:
    { readonly pieces: readonly string[] } | { readonly data: BookData } | { readonly bytes: Uint8Array };
}

const DATABASE = "warmback";
const STORE = "workbooks";

/** More are of no use to anyone: the oldest go. */
const MOST_KEPT = 3;

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's store doesn't answer"));
  });

async function database(): Promise<IDBDatabase> {
  const request = indexedDB.open(DATABASE, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: "id" });
  return answerOf(request);
}

async function withStore<T>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => Promise<T>): Promise<T> {
  const open = await database();
  try {
    return await ask(open.transaction(STORE, mode).objectStore(STORE));
  } finally {
    open.close();
  }
}

/** Reads one workbook at a time: each may be large. */
async function eachKept(store: IDBObjectStore, visit: (book: KeptBook) => void): Promise<void> {
  const request = store.openCursor();
  await new Promise<void>((resolve, reject) => {
    request.onerror = () => reject(request.error ?? new Error("the browser's store doesn't answer"));
    request.onsuccess = () => {
      const cursor = request.result;
      if (cursor === null) return resolve();
      visit(cursor.value as KeptBook);
      cursor.continue();
    };
  });
}

export function keepBook(book: KeptBook): Promise<void> {
  return withStore("readwrite", async (store) => {
    await answerOf(store.put(book));
    const all: Pick<KeptBook, "id" | "time">[] = [];
    await eachKept(store, ({ id, time }) => all.push({ id, time }));
    all.sort((a, b) => b.time - a.time);
    for (const { id } of all.slice(MOST_KEPT)) await answerOf(store.delete(id));
  });
}

export function newestKept(): Promise<KeptBook | undefined> {
  return withStore("readonly", async (store) => {
    let newest: KeptBook | undefined;
    await eachKept(store, (book) => {
      if (newest === undefined || book.time > newest.time) newest = book;
    });
    return newest;
  });
}

export function forgetBook(id: string): Promise<void> {
  return withStore("readwrite", async (store) => void (await answerOf(store.delete(id))));
}
