// Times the built evaluator as a filter: lines a second of processor time, and the most memory; prints a table.
// Run: npx tsx bench/evaluate.mts. Targets: 10,000 simple lines a second of one core; memory that doesn't grow with lines.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ensureBuilt } from "../scripts/ensureBuilt.mjs";

const PIECE = 1_000;
const LOOK_EVERY_MS = 50;

/** The most memory of a process so far, MB; NaN where the system doesn't say. */
const peakMb = (pid: number): number => {
  try {
    const [, kB = ""] = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${String(pid)}/status`, "utf8")) ?? [];
    return Number(kB || Number.NaN) / 1000;
  } catch {
    return Number.NaN;
  }
};

/** Processor seconds of a process so far. */
const processorSeconds = (pid: number): number => {
  const fields = readFileSync(`/proc/${String(pid)}/stat`, "utf8")
    .replace(/^.*\) /, "")
    .split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
};

const folder = await ensureBuilt();

async function run(lines: number, formulaOf: (at: number) => string): Promise<readonly string[]> {
  const child = spawn(process.execPath, [join(folder, "evaluate.cjs")], { stdio: ["pipe", "pipe", "inherit"] });
  const { pid = 0 } = child;
  let answers = 0;
  let [peak, seconds] = [0, 0];
  child.stdout.on("data", (piece: Buffer) => {
    for (const byte of piece) if (byte === 10) answers += 1;
  });
  const timer = setInterval(() => {
    try {
      seconds = processorSeconds(pid);
      peak = Math.max(peak, peakMb(pid));
    } catch {
      // The process has ended.
    }
  }, LOOK_EVERY_MS);
  for (let at = 0; at < lines; at += PIECE) {
    const piece = Array.from({ length: Math.min(PIECE, lines - at) }, (_, more) => `${formulaOf(at + more)}\n`).join(
      "",
    );
    if (!child.stdin.write(piece)) await once(child.stdin, "drain");
  }
  child.stdin.end();
  await once(child, "close");
  clearInterval(timer);
  if (answers !== lines) throw new Error(`${String(lines)} lines, ${String(answers)} answers`);
  return [
    lines.toLocaleString("en-US"),
    seconds.toFixed(1),
    Math.round(lines / seconds).toLocaleString("en-US"),
    peak.toFixed(0),
  ];
}

const print = (what: string, cells: readonly string[]): void =>
  console.log(what.padEnd(40), ...cells.map((cell) => cell.padStart(14)));

const simple = (at: number): string => `=WARMBACK.PIPE.HEADLOSS(${String(30 + at / 1e6)},"2 in",100)`;
print("formulas", ["lines", "processor s", "lines/s", "peak MB"]);
print("one call over constants", await run(20_000, simple));
print("one call over constants", await run(200_000, simple));
print("twice a call, by the sheet engine", await run(2_000, (at) => `${simple(at)}*2`));
