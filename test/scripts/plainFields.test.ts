/** The engine's fields as assignments. */
import { runInNewContext } from "node:vm";
import { expect, it } from "vitest";
import { accessorsIn, plainFields } from "../../scripts/plainFields";

const SOURCE = `class A { constructor(row) { _defineProperty(this, "row", row); _defineProperty(this, "list", f(1, [2])); } }`;

/** Runs a source whose class A has these fields. */
const made = (source: string): unknown =>
  runInNewContext(`${source}; JSON.stringify({ ...new A(7) })`, {
    _defineProperty: (on: object, name: string, value: unknown) =>
      Object.defineProperty(on, name, { value, enumerable: true }),
    f: (one: number, two: unknown) => [one, two],
  });

it("fields set by assignment hold what the helper gives them", () => {
  const plain = plainFields(SOURCE, new Set());
  expect(plain).not.toContain("_defineProperty");
  expect(made(plain)).toEqual(made(SOURCE));
});

it("a field whose name a class may inherit as a getter keeps the helper", () => {
  const accessors = accessorsIn("class B {\n\tget row() {\n\t\treturn 1;\n\t}\n\tstatic set other(value) {}\n}");
  expect(accessors).toEqual(["row", "other"]);
  const plain = plainFields(SOURCE, new Set(accessors));
  expect(plain).toContain('_defineProperty(this, "row", row)');
  expect(plain).toContain("(this.list = f(1, [2]))");
});
