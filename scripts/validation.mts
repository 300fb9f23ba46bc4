/** `npm run validation`: measures every function against its references and writes the report into docs/. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { ROOT } from "./root";
import { VALIDATION_PAGE, validationMarkdown } from "./validation/markdown";
import { failuresIn, measureAll } from "./validation/measure";

const measured = measureAll();
const file = join(ROOT, VALIDATION_PAGE);
mkdirSync(dirname(file), { recursive: true });
writeFileSync(file, await validationMarkdown(measured));
const failures = failuresIn(measured);
process.stdout.write(failures.length === 0 ? `${VALIDATION_PAGE} written\n` : `${failures.join("\n")}\n`);
process.exitCode = failures.length === 0 ? 0 : 1;
