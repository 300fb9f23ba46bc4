/** Edge lengths of the rendered icons, px: 16, 32, 80 for the ribbon, 32 and 64 for the add-in list, 128 for the browser page. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;
export type IconSize = (typeof ICON_SIZES)[number];

/** Sizes that a ribbon icon must offer (Microsoft Learn, "Icon element", add-in only manifest reference). */
export const RIBBON_ICON_SIZES = [16, 32, 80] as const satisfies readonly IconSize[];

/** Place of an icon in the build. */
export const iconPath = (size: IconSize): string => `assets/icon-${size}.png`;
