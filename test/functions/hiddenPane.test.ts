/** The panel while its pane is closed: it asks the workbook for nothing. */
import { describe, expect, it } from "vitest";
import { heardWhileShown } from "../../src/taskpane/hostEvents";
import { paneVisibility } from "../../src/taskpane/visibility";
import { selectByHand, type, WEB } from "../excelHost";
import { quiet } from "../excelHost/running";
import { onExcel } from "../workbook/onExcel";

/** A page as it is at first, and what later befalls it. */
function pageOf(hidden: boolean, width = 320) {
  const calls: (() => void)[] = [];
  const document = { hidden, addEventListener: (_: string, call: () => void) => void calls.push(call) };
  const page = {
    document,
    innerWidth: width,
    innerHeight: width,
    addEventListener: (_: string, call: () => void) => void calls.push(call),
  };
  let office: ((told: { visibilityMode: string }) => void) | undefined;
  const addin = {
    onVisibilityModeChanged(call: (told: { visibilityMode: string }) => void) {
      office = call;
      return Promise.resolve(() => Promise.resolve());
    },
  };
  const visibility = paneVisibility(
    page as unknown as Parameters<typeof paneVisibility>[0],
    addin as unknown as Parameters<typeof paneVisibility>[1],
  );
  return { visibility, page, say: (mode: string) => office?.({ visibilityMode: mode }), calls };
}

describe("The pane", () => {
  it("counts as closed while its page is hidden or has no size", () => {
    expect(pageOf(true).visibility.shown()).toBe(false);
    expect(pageOf(false, 0).visibility.shown()).toBe(false);
    expect(pageOf(false).visibility.shown()).toBe(true);
  });

  it("shows and closes on Excel's word, each told once", () => {
    const { visibility, say } = pageOf(true);
    const told: boolean[] = [];
    visibility.onChange((shown) => told.push(shown));
    for (const mode of ["Taskpane", "Taskpane", "Hidden"]) say(mode);
    expect(told).toEqual([true, false]);
  });

  it("shows once it has a size", () => {
    const { visibility, page, calls } = pageOf(false, 0);
    Object.assign(page, { innerWidth: 320, innerHeight: 600 });
    for (const call of calls.slice(1)) call();
    expect(visibility.shown()).toBe(true);
  });
});

describe("While the pane is closed", () => {
  const on = onExcel(WEB, "Sheet1", "Data");

  it("a selection and a change cost no request; shown again, every sheet counts as changed", async () => {
    const { visibility, say } = pageOf(false);
    const book = heardWhileShown(on.book, visibility);
    const selections: unknown[] = [];
    const changes: (readonly string[])[] = [];
    book.onSelection((at) => selections.push(at));
    book.onChange((sheets) => changes.push(sheets));
    await quiet(on.host);
    say("Hidden");
    await quiet(on.host);
    on.host.traffic.clear();
    selectByHand(on.host, "Data!B2");
    type(on.host, "Data!A1", 1);
    await quiet(on.host);
    expect([on.host.traffic.requests(), selections, changes]).toEqual([0, [], []]);
    say("Taskpane");
    await quiet(on.host);
    expect(changes).toEqual([["Sheet1", "Data"]]);
    selectByHand(on.host, "Data!C3");
    await quiet(on.host);
    expect(selections).toEqual([{ sheet: "Data", row: 2, column: 2 }]);
  });
});
