/** Brings the README's function table up to date with the catalogue: npm run readme. */
import { readFileSync, writeFileSync } from "node:fs";
import { withFunctionTable } from "./readmeTable";

const path = new URL("../README.md", import.meta.url);
const text = readFileSync(path, "utf8");
const next = await withFunctionTable(text);
if (next !== text) writeFileSync(path, next);
process.stdout.write(next === text ? "README.md is up to date\n" : "README.md was brought up to date\n");
