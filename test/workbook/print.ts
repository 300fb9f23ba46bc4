/** Prints a tree as a formula without its "=": read again, it gives the same tree. */
import type { Tree } from "../../src/workbook/reader/tree";

const separated = (trees: readonly Tree[]): string => trees.map(print).join(",");

export function print(tree: Tree): string {
  switch (tree.kind) {
    case "number":
      return String(tree.value).toUpperCase();
    case "text":
      return `"${tree.value.replaceAll('"', '""')}"`;
    case "boolean":
      return tree.value ? "TRUE" : "FALSE";
    case "error":
      return tree.error;
    case "omitted":
      return "";
    case "reference":
      return tree.text;
    case "array":
      return `{${tree.rows.map(separated).join(";")}}`;
    case "sign":
      return tree.sign + print(tree.of);
    case "percent":
      return `${print(tree.of)}%`;
    case "group":
      return `(${print(tree.of)})`;
    case "binary":
      return print(tree.left) + tree.operator + print(tree.right);
    case "call":
      return `${tree.name}(${separated(tree.args)})`;
  }
}
