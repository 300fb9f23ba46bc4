/** `npm run build`: builds what is missing, into `dist/`. With `--print` it prints the build's own folder. */
import { ensureBuilt } from "./ensureBuilt.mjs";

try {
  const folder = await ensureBuilt();
  if (process.argv.includes("--print")) process.stdout.write(`${folder}\n`);
} catch (thrown) {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
