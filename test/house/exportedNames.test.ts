import { readFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import ts from "typescript";
import { describe, expect, test } from "vitest";

const PRODUCT = ["core", "src", "scripts", "manifest"];

const files = execFileSync("git", ["ls-files", "-co", "--exclude-standard", ...PRODUCT], { encoding: "utf8" })
  .split("\n")
  .filter((file) => /\.m?ts$/.test(file) && !file.endsWith(".d.ts") && !file.endsWith(".d.mts"));

const isExported = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

/** The names that a file declares and exports; an overloaded function and a type beside its value count once. */
const exportedNames = (file: string): readonly string[] => {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const names = source.statements.filter(isExported).flatMap((node): readonly string[] => {
    if (ts.isVariableStatement(node)) return node.declarationList.declarations.map(({ name }) => name.getText(source));
    if (ts.isFunctionDeclaration(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node))
      return node.name ? [node.name.text] : [];
    return ts.isClassDeclaration(node) && node.name ? [node.name.text] : [];
  });
  return [...new Set(names)];
};

describe("Exported names", () => {
  test("are read from the whole product", () => {
    expect(files.length).toBeGreaterThan(400);
    expect(exportedNames("core/kernel/define/cellFunction.ts")).toContain("cellFunction");
  });

  test("are each defined in one place", () => {
    const places = new Map<string, string[]>();
    for (const file of files)
      for (const name of exportedNames(file)) places.set(name, [...(places.get(name) ?? []), file]);
    const twice = [...places]
      .filter(([, where]) => where.length > 1)
      .map(([name, where]) => `${name}: ${where.join(", ")}`);
    expect(twice).toEqual([]);
  });
});
