/**
 * `npm run ages`: when the shipped versions of the direct dependencies were published, and what is newest. Asks the npm
 * registry once for each; packages of one scope and version count as one.
 */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ensureBuilt } from "./ensureBuilt.mjs";
import type { SbomComponent } from "./release/sbom";
import { ROOT } from "./root";
import { endWithReader } from "../src/preview/cli/endWithReader";

endWithReader();

const DAY = 86_400_000;

const { devDependencies } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
  readonly devDependencies: Readonly<Record<string, string>>;
};
const { components } = JSON.parse(readFileSync(join(await ensureBuilt(), "sbom.json"), "utf8")) as {
  readonly components: readonly SbomComponent[];
};

const direct = new Map<string, SbomComponent>();
for (const one of components.filter(({ name, version }) => devDependencies[name] === version)) {
  const scope = one.name.startsWith("@") ? one.name.split("/")[0] : one.name;
  const key = `${scope ?? ""}@${one.version}`;
  if (!direct.has(key)) direct.set(key, one);
}

for (const { name, version } of direct.values()) {
  const answer = execFileSync("npm", ["view", name, "time", "dist-tags.latest", "--json"], { encoding: "utf8" });
  const { time, "dist-tags.latest": latest } = JSON.parse(answer) as {
    readonly time: Readonly<Record<string, string>>;
    readonly "dist-tags.latest": string;
  };
  const published = time[version] ?? "";
  const days = Math.round((Date.now() - Date.parse(published)) / DAY);
  process.stdout.write(`${name} ${version}: ${published.slice(0, 10)}, ${String(days)} days old; newest ${latest}\n`);
}
