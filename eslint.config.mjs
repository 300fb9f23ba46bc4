import office from "eslint-plugin-office-addins";
import tseslint from "typescript-eslint";

/** Globals that depend on the machine, its clock or its network: a calculation may not use them. */
const OUTSIDE = [
  "window",
  "document",
  "self",
  "globalThis",
  "navigator",
  "location",
  "localStorage",
  "sessionStorage",
  "fetch",
  "XMLHttpRequest",
  "console",
  "process",
  "performance",
  "Date",
  "Intl",
  "setTimeout",
  "setInterval",
  "queueMicrotask",
  "Office",
  "Excel",
  "CustomFunctions",
];

const NO_DEFAULT = {
  selector: "ExportDefaultDeclaration",
  message: "Export by name: a name can be searched for.",
};

const CORE_SYNTAX = [
  NO_DEFAULT,
  { selector: "ClassDeclaration, ClassExpression", message: "Plain data and functions in the core." },
  {
    selector:
      "Program > VariableDeclaration[kind=/let|var/], ExportNamedDeclaration > VariableDeclaration[kind=/let|var/]",
    message: "No state in a module: equal arguments give equal results.",
  },
];

const OFFICE_RULES = [
  "no-context-sync-in-loop",
  "no-navigational-load",
  "no-office-initialize",
  "load-object-before-read",
  "test-for-null-using-isNullObject",
];

export default tseslint.config(
  { ignores: ["dist/", ".cache/", "coverage/", "node_modules/", "test/preview/fixture/"] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: "error" } },
  {
    files: ["**/*.{ts,mts}"],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: "error",
      "no-var": "off",
      "prefer-const": "error",
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/ban-ts-comment": [
        "error",
        { "ts-expect-error": "allow-with-description", "ts-ignore": true },
      ],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/no-unnecessary-condition": "off",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true, allowBoolean: true }],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/only-throw-error": [
        "error",
        { allow: [{ from: "package", package: "custom-functions-runtime", name: "Error" }] },
      ],
      // Methods here are closures: none reads `this`.
      "@typescript-eslint/unbound-method": "off",
      // Every method of a port is asynchronous, whatever one adapter needs.
      "@typescript-eslint/require-await": "off",
      // The hosts' enums come as plain values in data.
      "@typescript-eslint/no-unsafe-enum-comparison": "off",
      // Cells are unions of plain values; a message may show any of them.
      "@typescript-eslint/no-base-to-string": "off",
      "no-restricted-syntax": ["error", NO_DEFAULT],
    },
  },
  {
    files: ["core/**/*.ts"],
    ignores: ["core/*/fit/**"],
    rules: {
      "no-restricted-globals": ["error", ...OUTSIDE],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "Equal arguments give equal results." },
      ],
      "no-restricted-syntax": ["error", ...CORE_SYNTAX],
    },
  },
  {
    files: ["core/**/*.ts", "src/**/*.ts", "scripts/**/*.{ts,mts}", "manifest/**/*.ts"],
    ignores: ["core/*/data/**", "core/kernel/reference/**", "src/sheets/**"],
    rules: {
      "max-lines": ["error", { max: 260, skipBlankLines: true, skipComments: true }],
      "max-lines-per-function": ["error", { max: 90, skipBlankLines: true, skipComments: true }],
      "max-depth": ["error", 4],
    },
  },
  {
    files: ["src/**/*.ts"],
    plugins: { "office-addins": office },
    rules: {
      // The plugin's other rules follow a single function and miss a load inside a call.
      ...Object.fromEntries(OFFICE_RULES.map((name) => [`office-addins/${name}`, "error"])),
      "@typescript-eslint/no-restricted-imports": [
        "error",
        {
          patterns: [
            {
              regex: "/core/(?!(pictures|notes)$)",
              message:
                'The hosts take the core through its doors: "core", "core/pictures" and, for the notes script, "core/notes".',
            },
          ],
        },
      ],
    },
  },
  {
    files: ["scripts/**/*.{ts,mts}"],
    rules: {
      "@typescript-eslint/no-restricted-imports": [
        "error",
        {
          patterns: [
            {
              regex: "/core/(?!help$)",
              message: 'The scripts take the core through two doors: "core" and "core/help".',
            },
          ],
        },
      ],
    },
  },
  {
    files: ["test/**/*.{ts,mts}", "bench/**/*.ts"],
    rules: {
      // Tests index into what they have just built, and pass what no caller may.
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
      "@typescript-eslint/no-unsafe-call": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
  {
    // Inner loops over arrays of known length.
    files: ["core/numeric/**/*.ts", "core/refrigerant/**/*.ts"],
    rules: { "@typescript-eslint/no-non-null-assertion": "off" },
  },
  {
    files: ["*.config.{ts,mts,mjs}", "test/mutation/vitest.config.mts"],
    rules: { "no-restricted-syntax": "off" },
  },
);
