/** `npm run -s sbom`: every locked package as CycloneDX JSON, shipped ones marked "required". */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ensureBuilt } from "./ensureBuilt.mjs";
import { packageVersion } from "./manifest/output";
import { type SbomComponent, componentsOf, readLock, sbomText } from "./release/sbom";
import { endWithReader } from "../src/preview/cli/endWithReader";

endWithReader();

const { components } = JSON.parse(readFileSync(join(await ensureBuilt(), "sbom.json"), "utf8")) as {
  readonly components: readonly SbomComponent[];
};
process.stdout.write(sbomText(packageVersion(), componentsOf(readLock(), components)));
