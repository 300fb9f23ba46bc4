/** The log of a session's calls: what it keeps is bounded by calls, by cells and by characters of text. */
import { expect, test } from "vitest";
import { sessionLog } from "../../src/workbook/callLog";

test("Long texts make room for newer ones, in arguments and in results", () => {
  const log = sessionLog(100, 1_000, 50);
  for (let at = 0; at < 10; at++) log.add("A", [String(at).repeat(10)], { value: "r".repeat(10) });
  expect(log.of("A").map(({ args }) => args[0])).toEqual(["9999999999", "8888888888"]);
});

test("Texts inside a matrix and the message of a refusal count as well", () => {
  const log = sessionLog(100, 1_000, 50);
  log.add("A", [[["a".repeat(30)], [1]]], { value: 1 });
  log.add("B", [1], { code: "#VALUE!", message: "m".repeat(30) });
  expect(log.size()).toBe(1);
});

test("The newest call stays, however long its text", () => {
  const log = sessionLog(100, 1_000, 50);
  log.add("A", ["short"], { value: 1 });
  log.add("A", ["x".repeat(1_000)], { value: 1 });
  log.add("B", ["y"], { value: 1 });
  expect(log.of("A")).toEqual([]);
  expect(log.of("B")).toHaveLength(1);
});
