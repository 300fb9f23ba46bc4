/** One build at a time: a folder is the lock, since making one is atomic. */
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

const LOOK_AGAIN = 200;
/** A lock without an owner's note is given up after so many milliseconds. */
const NOTE_BY = 2000;

const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

const isLeft = (lock: string): boolean => {
  try {
    return !isAlive(Number(readFileSync(join(lock, "pid"), "utf8")));
  } catch {
    try {
      return Date.now() - statSync(lock).mtimeMs > NOTE_BY;
    } catch {
      return false;
    }
  }
};

const tryLock = (lock: string): boolean => {
  try {
    mkdirSync(dirname(lock), { recursive: true });
    mkdirSync(lock);
    writeFileSync(join(lock, "pid"), String(process.pid));
    return true;
  } catch {
    return false;
  }
};

/** Does `work` while no other process does its own under the same lock. */
export const alone = async <T,>(lock: string, work: () => Promise<T>): Promise<T> => {
  while (!tryLock(lock)) {
    if (isLeft(lock)) rmSync(lock, { recursive: true, force: true });
    else await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN));
  }
  try {
    return await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
};
