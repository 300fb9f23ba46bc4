/** The table of scores in docs/mutation.md. */

export interface Score {
  readonly file: string;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly killed: number;
  readonly survived: number;
  /** Mutants in code that no test of the run reaches. */
  readonly uncovered: number;
}

const HEAD = ["File", "Date", "Killed", "Survived", "Not reached", "Score"];
const BEGIN = "## Scores\n";

const cellsOf = ({ file, date, killed, survived, uncovered }: Score): readonly string[] => {
  const all = killed + survived + uncovered;
  const share = all === 0 ? "no mutant" : `${((100 * killed) / all).toFixed(1)} %`;
  return [`\`${file}\``, date, String(killed), String(survived), String(uncovered), share];
};

const scoreIn = (line: string): Score | undefined => {
  const [file, date, killed, survived, uncovered] = line
    .split("|")
    .slice(1, -1)
    .map((cell) => cell.trim());
  if (file === undefined || date === undefined || !/^`core\/.*`$/.test(file)) return undefined;
  return {
    file: file.slice(1, -1),
    date,
    killed: Number(killed),
    survived: Number(survived),
    uncovered: Number(uncovered),
  };
};

function tableOf(scores: readonly Score[]): string {
  const rows = [HEAD, ...scores.map(cellsOf)];
  const widths = HEAD.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(" | ")} |`;
  const [head = [], ...rest] = rows;
  return [line(head), line(widths.map((width) => "-".repeat(width))), ...rest.map(line)].join("\n");
}

/** The page with new scores; files that weren't run again keep theirs, with its date. */
export function withScores(page: string, scores: readonly Score[]): string {
  const from = page.indexOf(BEGIN);
  if (from < 0) throw new Error(`docs/mutation.md: no heading "${BEGIN.trim()}"`);
  const begin = from + BEGIN.length;
  const next = page.indexOf("\n## ", begin);
  const end = next < 0 ? page.length : next;
  const known = page
    .slice(begin, end)
    .split("\n")
    .flatMap((line) => scoreIn(line) ?? []);
  const all = new Map([...known, ...scores].map((score) => [score.file, score]));
  const sorted = [...all.values()].sort((a, b) => (a.file < b.file ? -1 : 1));
  return `${page.slice(0, begin)}\n${tableOf(sorted)}\n${page.slice(end)}`;
}
