/**
 * Folders that come into place whole: each is filled beside its place and renamed, so nobody meets a half-written one, and
 * two processes that fill the same one at the same time both get it.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";

const remove = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** Begins the names of folders that are being filled. */
const UNFINISHED = ".unfinished-";

function unfinishedIn(parent: string): string {
  mkdirSync(parent, { recursive: true });
  return mkdtempSync(join(parent, UNFINISHED));
}

/**
 * Fills a folder unless it is there already. What is there is never written to again.
 * @param fill writes all files into the folder that it gets
 */
export async function freshFolder(folder: string, fill: (into: string) => Promise<void>): Promise<void> {
  if (existsSync(folder)) return;
  const filled = unfinishedIn(dirname(folder));
  try {
    await fill(filled);
    renameSync(filled, folder);
  } catch (error) {
    // Whoever was faster put an equal one there.
    if (!existsSync(folder)) throw error;
  } finally {
    remove(filled);
  }
}

const TRIES = 20;

/** Puts a copy of a folder in the place of another one, whatever is there. Both are on one disk. */
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
        // Another process put its own there meanwhile.
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
    // Another process moved it.
    if (existsSync(folder)) throw error;
  }
}

/** What a process that was stopped has left is removed after so many milliseconds. */
const LEFT_AFTER = 3_600_000;

/** Removes the folders of a folder, all but some of the newest, and what stopped processes have left. */
export function keepNewest(parent: string, count: number): void {
  const changed = (name: string): number => statSync(join(parent, name), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const names = readdirSync(parent).map((name) => ({ name, at: changed(name) }));
  const finished = names.filter(({ name }) => !name.startsWith(UNFINISHED)).sort((a, b) => b.at - a.at);
  const left = names.filter(({ name, at }) => name.startsWith(UNFINISHED) && Date.now() - at > LEFT_AFTER);
  for (const { name } of [...finished.slice(count), ...left]) remove(join(parent, name));
}
