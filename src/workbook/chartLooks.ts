/** How the charts of sheets look, in every host. */

/** One after the other, #rrggbb: each has a contrast of at least 4.5 to 1 on white. */
const COLORS = ["#0b5c6e", "#ad1f1a", "#705500", "#1c5aa0"] as const;

export const seriesColor = (at: number): string => COLORS[at % COLORS.length] ?? COLORS[0];

/** Points. */
export const LINE_WEIGHT = 2;
