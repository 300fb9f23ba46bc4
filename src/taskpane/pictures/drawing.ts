/** The part of the panel that draws pictures, loaded when one is first shown. */
import type * as Pictures from ".";

export type Drawing = typeof Pictures;
