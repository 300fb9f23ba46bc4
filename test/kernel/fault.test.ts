import { describe, expect, test } from "vitest";
import { isFault, notAvailable, outOfRange } from "../../core/kernel/values/fault";

describe("A fault", () => {
  test("of a quantity out of range carries the quantity, the limit and what came", () => {
    const fault = outOfRange({ quantity: "R-32 temperature", limit: "at most 478.5 K", got: "500 K" });
    expect(fault.code).toBe("#N/A");
    expect(fault.message).toBe("R-32 temperature: must be at most 478.5 K, got 500 K");
  });

  test("is told from other errors and other objects by its sheet code", () => {
    expect(isFault(notAvailable("no data"))).toBe(true);
    expect(isFault({ code: "#N/A", message: "" })).toBe(true);
    expect(isFault(new Error("other"))).toBe(false);
    expect(isFault(Object.assign(new Error("host"), { code: "ItemNotFound" }))).toBe(false);
    expect(isFault("#N/A")).toBe(false);
    expect(isFault(null)).toBe(false);
  });
});
