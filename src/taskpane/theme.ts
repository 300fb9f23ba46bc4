/** Applies the colours of Office if it reports them; without them the stylesheet follows the system's scheme. */

type Colour = readonly [number, number, number];

/** "#rrggbb" or "rrggbb" as three shares of 255; undefined for anything else. */
export const colourOf = (text: string | undefined): Colour | undefined => {
  const [, r, g, b] = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(text ?? "") ?? [];
  return r === undefined || g === undefined || b === undefined
    ? undefined
    : [parseInt(r, 16), parseInt(g, 16), parseInt(b, 16)];
};

/** Relative luminance, 0 to 1: Web Content Accessibility Guidelines 2.2. */
export const luminance = (colour: Colour): number => {
  const [r, g, b] = colour.map((each) => {
    const share = each / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** Contrast ratio, 1 to 21: Web Content Accessibility Guidelines 2.2. */
export const contrast = (a: Colour, b: Colour): number => {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};

export interface HostTheme {
  readonly bodyBackgroundColor?: string;
  readonly bodyForegroundColor?: string;
}

export interface PageTheme {
  readonly scheme: "light" | "dark";
  readonly background: string;
  readonly foreground: string;
}

const LEAST_CONTRAST = 4.5;

/** The page's theme from the host's; undefined if the host reports none, or colours with too little contrast. */
export const pageTheme = (theme: HostTheme | undefined): PageTheme | undefined => {
  const background = colourOf(theme?.bodyBackgroundColor);
  const foreground = colourOf(theme?.bodyForegroundColor);
  if (!background || !foreground || contrast(background, foreground) < LEAST_CONTRAST) return undefined;
  const text = (colour: Colour): string => `rgb(${colour.join(" ")})`;
  const scheme = luminance(background) < luminance(foreground) ? "dark" : "light";
  return { scheme, background: text(background), foreground: text(foreground) };
};

/** Puts the host's theme on the page. */
export const applyTheme = (theme: HostTheme | undefined, page: HTMLElement = document.documentElement): void => {
  const matching = pageTheme(theme);
  if (!matching) return;
  page.dataset["scheme"] = matching.scheme;
  page.style.setProperty("--office-page", matching.background);
  page.style.setProperty("--office-ink", matching.foreground);
};
