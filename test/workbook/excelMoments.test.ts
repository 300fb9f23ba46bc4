/** The Excel adapter in the moments in which Excel is not at rest: a cell edited, another workbook in front, events. */
import { describe, expect, it, vi } from "vitest";
import { bringToFront, calculated, PROFILES, selectByHand, type, WINDOWS_10 } from "../excelHost";
import { quiet } from "../excelHost/running";
import { area, onExcel } from "./onExcel";

const PATIENCE = 10_000;

const soon = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** What a promise has come to after a moment. */
const state = (run: Promise<unknown>): Promise<string> =>
  Promise.race([
    run.then(
      () => "done",
      () => "refused",
    ),
    soon(50).then(() => "waits"),
  ]);

describe.each(PROFILES)("While Excel is busy otherwise, $name,", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");

  it("reading waits until the user has finished editing a cell", async () => {
    on.host.editing = true;
    const read = on.book.read([area("Data", 0, 0)]);
    expect(await state(read)).toBe("waits");
    on.host.finishEditing();
    expect(await read).toHaveLength(1);
  });

  it("writing waits until the user has finished editing a cell", async () => {
    on.host.editing = true;
    const written = on.book.write([{ sheet: "Data", row: 0, column: 0, content: 1 }]);
    expect(await state(written)).toBe("waits");
    on.host.finishEditing();
    await written;
    expect(on.sheet("Data").cells.size).toBe(1);
  });

  it("another sheet's changes are told by its name, and recalculations too", async () => {
    const seen: string[] = [];
    const stop = on.book.onChange((sheets) => seen.push(...sheets));
    await quiet(on.host);
    type(on.host, "Data!A1", "=1+1");
    await vi.waitFor(() => expect(seen).toEqual(["Data"]), PATIENCE);
    calculated(on.host, "Data!A1", 2);
    await vi.waitFor(() => expect(seen).toEqual(["Data", "Data"]), PATIENCE);
    stop();
    await quiet(on.host);
    type(on.host, "Data!A2", 1);
    await quiet(on.host);
    expect(seen).toHaveLength(2);
  });

  it("asking for the selection waits until the workbook is in front again", async () => {
    on.host.inFront = false;
    const selection = on.book.selection();
    expect(await state(selection)).toBe("waits");
    on.host.book.active = { sheet: on.sheet("Data"), row: 1, column: 1 };
    bringToFront(on.host);
    expect(await selection).toEqual({ sheet: "Data", row: 1, column: 1 });
  });

  it("references resolve though another workbook is in front", async () => {
    on.host.inFront = false;
    const back = setTimeout(() => bringToFront(on.host), 300);
    const from = { sheet: "Data", row: 0, column: 0 };
    const found = await on.book.resolve([
      { text: "A1", from },
      { text: "no_such_name", from },
    ]);
    clearTimeout(back);
    expect(found).toEqual([area("Data", 0, 0), undefined]);
  });

  it("a selected chart leaves the active cell", async () => {
    selectByHand(on.host, "Data!C3");
    on.host.book.chartSelected = true;
    expect(await on.book.selection()).toEqual({ sheet: "Data", row: 2, column: 2 });
  });

  it("a selection change costs one request", async () => {
    const stop = on.book.onSelection(() => undefined);
    await quiet(on.host);
    on.host.traffic.clear();
    selectByHand(on.host, "Data!B2");
    await quiet(on.host);
    expect(on.host.traffic.requests()).toBe(1);
    stop();
  });
});

describe("In an Excel without events of all sheets", () => {
  const on = onExcel({ ...WINDOWS_10, name: "Windows 1.8", api: "1.8" }, "Data");

  it("nothing is listened to", () => {
    expect(() => on.book.onChange(() => undefined)()).not.toThrow();
    expect(on.host.traffic.requests()).toBe(0);
  });
});
