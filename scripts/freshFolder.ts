/**
 * Creates folders atomically: each is filled beside its place and renamed, so nobody sees a half-written one, and two
 * processes that fill the same folder at the same time both get it.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";

const remove = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** Prefix of the names of unfinished folders. */
const UNFINISHED = ".unfinished-";

function unfinishedIn(parent: string): string {
  mkdirSync(parent, { recursive: true });
  return mkdtempSync(join(parent, UNFINISHED));
}

/**
 * Fills a folder unless it exists. Never writes to an existing one.
 * @param fill writes all files into the given folder
 */
export async function freshFolder(folder: string, fill: (into: string) => Promise<void>): Promise<void> {
  if (existsSync(folder)) return;
  const filled = unfinishedIn(dirname(folder));
  try {
    await fill(filled);
    renameSync(filled, folder);
  } catch (error) {
    // A faster process has put an equal folder there.
    if (!existsSync(folder)) throw error;
  } finally {
    remove(filled);
  }
}

const TRIES = 20;

/** Replaces a folder by a copy of another one on the same disk. */
export function replaceFolder(folder: string, from: string): void {
  const copy = unfinishedIn(dirname(from));
  const old = unfinishedIn(dirname(from));
  try {
    cpSync(from, copy, { recursive: true });
    for (let left = TRIES; ; left -= 1) {
      if (existsSync(folder)) moveAway(folder, join(old, String(left)));
      try {
        renameSync(copy, folder);
        return;
      } catch (error) {
        // Another process has put its own there meanwhile.
        if (left === 0) throw error;
      }
    }
  } finally {
    remove(copy);
    remove(old);
  }
}

function moveAway(folder: string, to: string): void {
  try {
    renameSync(folder, to);
  } catch (error) {
    // Another process has moved it.
    if (existsSync(folder)) throw error;
  }
}

/** The leftovers of a stopped process are removed after this many milliseconds. */
const LEFT_AFTER = 3_600_000;

/** Removes all but the newest folders inside a folder, and the leftovers of stopped processes. */
export function keepNewest(parent: string, count: number): void {
  const changed = (name: string): number => statSync(join(parent, name), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const names = readdirSync(parent).map((name) => ({ name, at: changed(name) }));
  const finished = names.filter(({ name }) => !name.startsWith(UNFINISHED)).sort((a, b) => b.at - a.at);
  const left = names.filter(({ name, at }) => name.startsWith(UNFINISHED) && Date.now() - at > LEFT_AFTER);
  for (const { name } of [...finished.slice(count), ...left]) remove(join(parent, name));
}
