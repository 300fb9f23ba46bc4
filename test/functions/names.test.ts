import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { NAMESPACE } from "../../core/kernel/describe";
import { nameFaults } from "../../scripts/names";

describe("names of cell functions", () => {
  test("every name in the catalogue is legal", () => expect(nameFaults(CATALOGUE.map(({ id }) => id))).toEqual([]));

  test("the namespace is short", () => expect(NAMESPACE).toMatch(/^[A-Z][A-Z0-9.]{1,31}$/));

  test.each([
    ["pipe.bore", /capitals/],
    ["PIPE..BORE", /capitals/],
    ["PIPE_BORE", /capitals/],
    ["1PIPE.BORE", /capitals/],
    ["BORE", /a topic/],
    ["A1", /cell's address/],
    ["XFD1048576", /cell's address/],
    ["R1C1", /cell's address/],
    ["NORM.DIST", /Excel's own/],
    ["LINE.PRINT", /Excel's own/],
    [`PIPE.${"A".repeat(60)}`, /64 characters/],
  ])("a name like %s is refused", (id, rule) => expect(nameFaults([id]).join("; ")).toMatch(rule));

  test("names that are equal in a file, where periods are underscores, are refused", () =>
    expect(nameFaults(["PIPE.BORE", "PIPE.BORE"])).toEqual([
      "PIPE.BORE: another function is stored under the same name",
    ]));
});
