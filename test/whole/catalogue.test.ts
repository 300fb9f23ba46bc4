import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { runCheck } from "../../core/kernel/explain/check";
import { argText, signatureOf, rawByPlace } from "../../core/kernel/explain/describe";
import { compile } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import type { KindName } from "../../core/kernel/values/quantity";
import { REFERENCES } from "../../core/kernel/reference";
import type { SeriesStep, Step } from "../../core/kernel/define/steps";
import { placedArgs } from "../../core/kernel/define/unitsArgument";
import { coreFiles, exportsOf } from "./coreFiles";
import { EVERY } from "./every";

/** What adds up to something; states and rates do not. */
const AMOUNTS: readonly KindName[] = ["heat conductance", "head", "pressure drop", "time"];

const seriesIn = (steps: readonly Step[]): readonly SeriesStep[] =>
  steps.flatMap((step) => (step.type === "group" ? seriesIn(step.steps) : step.type === "series" ? [step] : []));

describe("the catalogue", () => {
  test("lists every function file, under its folder's topic", async () => {
    const files = coreFiles(/functions\/[^/]+\.ts$/);
    expect(files).toHaveLength(137);
    for (const path of files) {
      const definitions = Object.values(await exportsOf(path));
      expect(definitions, path).toHaveLength(1);
      expect(CATALOGUE, path).toContain(definitions[0]);
      expect((definitions[0] as { topic: string }).topic, path).toBe(path.split("/")[1]);
    }
    expect(CATALOGUE).toHaveLength(files.length);
  });

  test("has ids that differ even with underscores for dots", () => {
    const ids = CATALOGUE.map(({ id }) => id.replace(/\./g, "_"));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("has 137 functions, 441 checks with 560 published values, and 262 cautions in 385 uses", () => {
    expect(CATALOGUE).toHaveLength(137);
    const checks = CATALOGUE.flatMap((each) => each.checks.map((check) => [each, check] as const));
    expect(checks).toHaveLength(441);
    expect(checks.flatMap(([each, check]) => runCheck(each, check, CATALOGUE))).toHaveLength(560);
    const uses = CATALOGUE.flatMap(({ cautions }) => cautions.map(({ rule }) => rule.code));
    expect(uses).toHaveLength(385);
    expect(new Set(uses).size).toBe(262);
  });

  test("gives one rule per caution code", () => {
    const rules = new Map<string, unknown>();
    for (const { cautions } of CATALOGUE)
      for (const { rule } of cautions) {
        expect(rules.get(rule.code) ?? rule, rule.code).toBe(rule);
        expect(rule.code).toMatch(/^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+$/);
        rules.set(rule.code, rule);
      }
  });
});

/** The first check that gives a value. */
const answeredCheck = ({ checks }: CellFunction) =>
  checks.find(({ expected }) => typeof expected !== "string" || !expected.startsWith("#"));

test("every function has a check that gives a value", () =>
  expect(CATALOGUE.filter((each) => answeredCheck(each) === undefined)).toEqual([]));

describe.each(EVERY)("%s", (_, definition) => {
  test("has a legal id, a short summary and short argument descriptions", () => {
    expect(definition.id).toMatch(/^[A-Z][A-Z0-9]*\.[A-Z][A-Z0-9]*$/);
    expect(definition.id.length).toBeLessThanOrEqual(64);
    expect(definition.summary.length).toBeLessThanOrEqual(128);
    expect(definition.summary).toMatch(/\.$/);
    for (const [name, arg] of placedArgs(definition)) {
      expect(name).toMatch(/^[a-z][A-Za-z0-9]{0,63}$/);
      expect(argText(arg).length, argText(arg)).toBeLessThanOrEqual(128);
    }
    expect(signatureOf(definition)).toContain(`WARMBACK.${definition.id}(`);
  });

  test("puts optional arguments behind required ones", () => {
    const presences = placedArgs(definition).map(([, arg]) => arg.presence !== "required");
    const repeats = placedArgs(definition).at(-1)?.[1].shape.type === "repeat";
    expect(presences.slice(presences.indexOf(true)).includes(false) && presences.includes(true) && !repeats).toBe(
      false,
    );
  });

  test("agrees with its published checks, and has one", () => {
    if (definition.topic !== "note") expect(definition.checks.length).toBeGreaterThan(0);
    for (const check of definition.checks)
      for (const verdict of runCheck(definition, check, CATALOGUE)) {
        const got = isFault(verdict.got) ? `${verdict.got.code} ${verdict.got.message}` : verdict.got;
        expect(verdict.agrees, `${verdict.what} expected ${verdict.expected}, got ${got}`).toBe(true);
      }
  });

  test("raises each of its cautions by the arguments given for it", () => {
    for (const { rule, raisedBy } of definition.cautions) {
      const told = explain(compile(definition), rawByPlace(definition, raisedBy), CATALOGUE, { steps: false });
      expect(isFault(told.out) ? told.out.message : "", rule.code).toBe("");
      const raised = told.cautions.find(({ code }) => code === rule.code);
      expect(raised?.text, rule.code).toBeTypeOf("string");
      expect(raised?.text, rule.code).not.toMatch(/NaN|Infinity|undefined|\[object/);
      expect(REFERENCES).toHaveProperty(typeof rule.source === "string" ? rule.source : rule.source.key);
    }
  });

  test("shows a working for its first check that adds up only amounts", () => {
    const check = answeredCheck(definition);
    if (!check || definition.topic === "note") return;
    const told = explain(compile(definition), rawByPlace(definition, check.inputs), CATALOGUE);
    expect(isFault(told.out)).toBe(false);
    expect(told.steps.length, "steps").toBeGreaterThan(0);
    for (const { title, total, kind } of seriesIn(told.steps))
      if (total === "sum") expect(AMOUNTS, title).toContain(kind);
  });
});
