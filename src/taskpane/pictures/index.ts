/** The pictures of calls, as data and drawn. This folder is a script of its own, loaded when a picture is first shown. */
import { PICTURED, picturesOf as made, type Picture } from "../../../core/pictures";
import { COMPILED } from "../../functions/compiled";
import type { RawValue } from "../../workbook/values";

export { drawn } from "./draw";
export type { Picture };

/** The functions that this script draws. */
export const DRAWN: readonly string[] = PICTURED;

/** The pictures of a call; none where the function has none or refuses the arguments. */
export const picturesOf = (id: string, args: readonly RawValue[]): readonly Picture[] => {
  const compiled = COMPILED.get(id);
  return compiled === undefined ? [] : made(compiled, args);
};
