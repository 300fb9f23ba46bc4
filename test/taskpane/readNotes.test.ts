import { describe, expect, test } from "vitest";
import { readNotes, type TextStore } from "../../src/taskpane/model/readNotes";

const store = (texts: Record<string, string> = {}): TextStore => ({
  getItem: (key) => texts[key] ?? null,
  setItem: (key, text) => void (texts[key] = text),
});

const BY = { by: "AB", on: "2026-11-26" } as const;

describe("Notes marked as read", () => {
  test("are found again by a later panel, with the name and the day", () => {
    const browser = store();
    expect(readNotes(browser).markOf("SINK-DOUBLE-WALL")).toBeUndefined();
    expect(readNotes(browser).mark("SINK-DOUBLE-WALL", BY)).toBe(true);
    expect(readNotes(browser).markOf("SINK-DOUBLE-WALL")).toEqual(BY);
    expect(readNotes(browser).markOf("LINE-NITROGEN")).toBeUndefined();
  });

  test("last as long as the panel where the browser keeps nothing, and say so", () => {
    const full = { ...store(), setItem: () => { throw new Error("QuotaExceededError"); } }; // prettier-ignore
    for (const browser of [undefined, full]) {
      const notes = readNotes(browser);
      expect(notes.mark("LINE-NITROGEN", BY)).toBe(false);
      expect(notes.markOf("LINE-NITROGEN")).toEqual(BY);
    }
  });

  test.each(["{", "null", "[1]", '{"A":{"by":1}}', '{"A":7}'])("survive %s in the browser's store", (text) => {
    expect(readNotes(store({ "warmback.read-notes": text })).markOf("A")).toBeUndefined();
  });
});
