/**
 * Whether the pane shows. Excel opens its page hidden as soon as a cell calls one of the functions, and keeps it when the pane
 * is closed: nothing may be asked of the workbook then, on the thread that has to calculate the cells.
 */

export interface PaneVisibility {
  shown(): boolean;
  /** Calls back whenever the pane begins or ceases to show. */
  onChange(call: (shown: boolean) => void): void;
}

/** What of the page is looked at. */
interface Page {
  readonly document: Pick<Document, "hidden" | "addEventListener">;
  readonly innerWidth: number;
  readonly innerHeight: number;
  addEventListener(type: "resize", call: () => void): void;
}

type Addin = Pick<typeof Office.addin, "onVisibilityModeChanged">;

/** Excel's word where it gives one, else the page's own. */
const addinHere = (): Addin | undefined => {
  if (typeof Office === "undefined") return undefined;
  // A page outside Office has no requirements, whatever the types say.
  const context = Office.context as typeof Office.context | undefined;
  const requirements = context?.requirements;
  return requirements?.isSetSupported("SharedRuntime", "1.1") === true ? Office.addin : undefined;
};

export function paneVisibility(page: Page = globalThis.window, addin: Addin | undefined = addinHere()): PaneVisibility {
  const calls: ((shown: boolean) => void)[] = [];
  const { document } = page;
  /** The last thing that was said; before that the page's size tells. */
  let said: boolean | undefined;
  const shown = (): boolean => said ?? (!document.hidden && page.innerWidth > 0 && page.innerHeight > 0);
  let before = shown();
  const look = (): void => {
    if (shown() === before) return;
    before = !before;
    for (const call of calls) call(before);
  };
  document.addEventListener("visibilitychange", () => {
    said = !document.hidden;
    look();
  });
  page.addEventListener("resize", look);
  void addin
    ?.onVisibilityModeChanged(({ visibilityMode }) => {
      said = String(visibilityMode).toLowerCase() !== "hidden";
      look();
    })
    .catch(() => undefined);
  return { shown, onChange: (call) => void calls.push(call) };
}
