import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { sheetEngineAlias } from "./src/preview/packages.mjs";

const root = fileURLToPath(new URL(".", import.meta.url)).replace(/\/$/, "");

const alias = sheetEngineAlias(root);

/** Half a minute: two cores that other work shares start slowly. */
const timeouts = { testTimeout: 30_000, hookTimeout: 120_000 };

const project = (name: string, include: string[], exclude: string[] = []) => ({
  resolve: { alias },
  test: { name, include, exclude, globalSetup: "test/buildOnce.ts", ...timeouts },
});

export default defineConfig({
  test: {
    projects: [
      project("unit", ["test/**/*.test.ts"], ["test/whole/**", "test/e2e/**"]),
      project("whole", ["test/whole/**/*.test.ts"]),
      project("e2e", ["test/e2e/**/*.test.ts"]),
    ],
  },
});
