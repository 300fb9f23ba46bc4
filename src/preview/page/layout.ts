/** The page's two halves, and its light or dark scheme. */

const NARROWEST = 280;
const WIDEST_SHARE = 0.6;
const STEP = 24;

/** Passes the reader's preference for dark to the sheet, now and whenever it changes. */
export const followScheme = (setDark: (dark: boolean) => void): void => {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  setDark(dark.matches);
  dark.addEventListener("change", () => setDark(dark.matches));
};

/** Windows that hold the sheet or the panel, not both: phones, and a desktop's window at 200 %. */
const SMALL = "(max-width: 700px), (max-height: 560px)";

/** Frozen rows and columns would fill a low or narrow window. */
export const followWindow = (allowFrozen: (rows: boolean, columns: boolean) => void): void => {
  const low = matchMedia("(max-height: 560px)");
  const narrow = matchMedia("(max-width: 700px)");
  const adapt = (): void => allowFrozen(!low.matches, !narrow.matches);
  adapt();
  low.addEventListener("change", adapt);
  narrow.addEventListener("change", adapt);
};

/** Lets the panel be widened by dragging or by arrow keys, and folded away; a small window begins with it folded. */
export const movablePanel = (splitter: HTMLElement, side: HTMLElement, toggle: HTMLElement): void => {
  const setWidth = (width: number): void => {
    const widest = Math.max(NARROWEST, innerWidth * WIDEST_SHARE);
    const fitting = Math.round(Math.min(widest, Math.max(NARROWEST, width)));
    document.documentElement.style.setProperty("--side", `${fitting}px`);
    splitter.setAttribute("aria-valuenow", String(fitting));
    splitter.setAttribute("aria-valuemax", String(Math.round(widest)));
  };
  splitter.setAttribute("aria-valuemin", String(NARROWEST));
  setWidth(side.getBoundingClientRect().width);
  splitter.addEventListener("pointerdown", (down) => {
    splitter.setPointerCapture(down.pointerId);
    const move = (event: PointerEvent): void => setWidth(innerWidth - event.clientX);
    splitter.addEventListener("pointermove", move);
    splitter.addEventListener("pointerup", () => splitter.removeEventListener("pointermove", move), { once: true });
  });
  splitter.addEventListener("keydown", (event) => {
    const direction = event.key === "ArrowLeft" ? 1 : event.key === "ArrowRight" ? -1 : 0;
    if (direction === 0) return;
    event.preventDefault();
    setWidth(side.getBoundingClientRect().width + direction * STEP);
  });
  const fold = (folded: boolean): void => {
    document.body.classList.toggle("folded", folded);
    toggle.setAttribute("aria-expanded", String(!folded));
  };
  toggle.addEventListener("click", () => fold(!document.body.classList.contains("folded")));
  const small = matchMedia(SMALL);
  fold(small.matches);
  small.addEventListener("change", () => {
    if (!side.contains(document.activeElement)) fold(small.matches);
  });
};
