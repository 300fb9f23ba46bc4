/** Widths and heights of a workbook, and the pixels of the engine. */

/** A column of n characters is about 7 n + 5 pixels wide in the standard font of spreadsheets. */
export const widthToPixels = (characters: number): number => Math.round(characters * 7 + 5);
export const pixelsToWidth = (pixels: number): number => Math.round(((pixels - 5) / 7) * 100) / 100;
export const pointsToPixels = (points: number): number => Math.round((points * 4) / 3);
export const pixelsToPoints = (pixels: number): number => (pixels * 3) / 4;
