/** Workbooks in the browser's own store, so that a closed or reloaded page loses nothing. */
import type { BookData } from "../file/bookData";

export interface KeptBook {
  /** One for each workbook that was open. */
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly time: number;
  /** A workbook without a file yet, or the bytes of one that was opened. */
  readonly content: { readonly data: BookData } | { readonly bytes: Uint8Array };
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

const newestFirst = (books: readonly KeptBook[]): readonly KeptBook[] => [...books].sort((a, b) => b.time - a.time);

export function keepBook(book: KeptBook): Promise<void> {
  return withStore("readwrite", async (store) => {
    await answerOf(store.put(book));
    const all = newestFirst((await answerOf(store.getAll())) as KeptBook[]);
    for (const { id } of all.slice(MOST_KEPT)) await answerOf(store.delete(id));
  });
}

export function newestKept(): Promise<KeptBook | undefined> {
  return withStore("readonly", async (store) => newestFirst((await answerOf(store.getAll())) as KeptBook[])[0]);
}

export function forgetBook(id: string): Promise<void> {
  return withStore("readwrite", async (store) => void (await answerOf(store.delete(id))));
}
