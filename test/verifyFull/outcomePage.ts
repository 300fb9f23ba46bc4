/** docs/verify-full.md: what the last full verification printed. */
import { execFileSync } from "node:child_process";
import { cpus } from "node:os";
import { ROOT } from "../../scripts/root";
import type { Part } from "./part";

const commit = (): string => {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { cwd: ROOT, encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
};

export function outcomePage(parts: readonly Part[]): string {
  const [processor] = cpus();
  const held = parts.every((part) => part.held);
  const minutes = parts.reduce((all, { seconds }) => all + seconds, 0) / 60;
  const sections = parts.map(
    (part) =>
      `## ${part.name}: ${part.held ? "passed" : "FAILED"} in ${part.seconds.toFixed(0)} s\n\n    ${part.lines.join("\n    ")}\n`,
  );
  return [
    "# Last full verification\n",
    `\`npm run verify:full\` wrote this page on ${new Date().toISOString().slice(0, 10)}: commit ${commit()}, Node ${process.version}, ` +
      `${String(cpus().length)} processors (${processor?.model.trim() ?? "unknown"}), ${minutes.toFixed(0)} minutes in all, ` +
      `**${held ? "passed" : "FAILED"}**. Scores of mutation testing: [mutation.md](mutation.md).\n`,
    ...sections,
  ].join("\n");
}
