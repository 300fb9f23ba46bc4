import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { sheetEngineAlias } from "./src/preview/packages.mjs";
const root = fileURLToPath(new URL(".", import.meta.url)).replace(/\/$/, "");
export default defineConfig({ resolve: { alias: sheetEngineAlias(root) }, cacheDir: ".cache/vite", test: { include: ["test/**/*.ts"], testTimeout: 600000 } });
