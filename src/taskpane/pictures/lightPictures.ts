import { COMPILED, type CellInput } from "../../../core";
import { picturesOf, type ShownPicture } from "../../../core/pictures";

/** The pictures of a call that takes no time. */
export function lightPictures(id: string, args: readonly CellInput[]): readonly ShownPicture[] {
  const compiled = COMPILED.get(id);
  return compiled === undefined ? [] : picturesOf(compiled, args);
}
