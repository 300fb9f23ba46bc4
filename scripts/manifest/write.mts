/**
 * `npx tsx scripts/manifest/write.mts [--host https://…] [--out dist]`: icons, manifest.xml, manifest.dev.xml and _headers into the build.
 * Run it after the bundles are built: _headers lists the files that are there.
 */
import { parseArgs } from "node:util";
import { VARIANTS } from "./manifest";
import { writeOutput } from "./output";

const { values } = parseArgs({ options: { host: { type: "string" }, out: { type: "string", default: "dist" } } });

const written = writeOutput(values.out, values.host);
console.log(`${values.out}: ${written.join(", ")}`);
if (values.host === undefined) {
  console.log(
    `${VARIANTS.production.file} points at the placeholder ${VARIANTS.production.host}: give --host at release`,
  );
}
