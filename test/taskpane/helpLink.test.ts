/** The links to help pages in the panel: where they open. */
import { afterEach, expect, it, vi } from "vitest";
import { openOutside } from "../../src/taskpane/views/callSection";
import { excelHost, install, MAC_20, WEB, WINDOWS_14, WINDOWS_20 } from "../excelHost";

/** A link as far as a click on it needs one. */
class Link {
  readonly href = "https://warmback.example/help/PIPE.BORE.html";
}

function click(): { readonly prevented: boolean } {
  let prevented = false;
  openOutside({ currentTarget: new Link(), preventDefault: () => (prevented = true) } as unknown as Event);
  return { prevented };
}

afterEach(() => vi.unstubAllGlobals());

it.each([
  [WINDOWS_14, true],
  [WINDOWS_20, true],
  [MAC_20, true],
  [WEB, false],
])("a help page on $name opens in the browser by Excel's own call: %s", (profile, outside) => {
  vi.stubGlobal("HTMLAnchorElement", Link);
  const excel = excelHost(profile);
  const restore = install(excel);
  const { prevented } = click();
  restore();
  expect(prevented).toBe(outside);
  expect(excel.office.opened).toEqual(outside ? ["https://warmback.example/help/PIPE.BORE.html"] : []);
});

it("a help page is a plain link where there is no Office", () => {
  vi.stubGlobal("HTMLAnchorElement", Link);
  expect(click()).toEqual({ prevented: false });
});
