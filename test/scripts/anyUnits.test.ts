/** Which equations hold in any units. */
import { expect, it } from "vitest";
import { equation, relation, symbol } from "../../core/kernel/define/equation";
import { holdsInAnyUnits } from "../../scripts/help/anyUnits";

const SOURCE = "iapws95" as never;
const speed = symbol("velocity", "speed", 0.5, 4);

it("an equation without numbers of its own holds in any units, also with standard gravity", () => {
  const head = equation({
    name: "Velocity head",
    form: "h = v^2 / (2 * g)",
    symbols: { v: speed },
    constants: { g: 9.80665 },
    kind: "head",
    source: SOURCE,
    code: ({ v }) => v ** 2 / (2 * 9.80665),
  });
  expect(holdsInAnyUnits(head)).toBe(true);
});

it("an equation whose numbers have units holds in SI base units alone", () => {
  const film = equation({
    name: "Wind film",
    form: "h = 5.7 + 3.8 * v",
    symbols: { v: speed },
    kind: "film coefficient",
    source: SOURCE,
    code: ({ v }) => 5.7 + 3.8 * v,
  });
  expect(holdsInAnyUnits(film)).toBe(false);
});

it("a relation holds in any units where its sides change alike", () => {
  const sides = { left: () => 1, right: () => 1, source: SOURCE, name: "Balance", symbols: { a: speed, b: speed } };
  expect(holdsInAnyUnits(relation({ ...sides, form: "a * 2 = b + a" }))).toBe(true);
  expect(holdsInAnyUnits(relation({ ...sides, form: "a * 2 = b + 1" }))).toBe(false);
});
