/** Arguments of the functions about functions. */
import { repeat, text } from "../kernel/define/argument";
import { lookUp } from "../kernel/define/catalogue";
import type { Catalogue, CellFunction } from "../kernel/define/cellFunction";
import { valueError } from "../kernel/values/fault";
import { nearest } from "../kernel/call/nearest";

export const FUNCTION = text("name of a function as text, such as PIPE.HEADLOSS", 80);

export const ARGUMENTS = repeat('its arguments in order; write "" for a default');

/** The named function; an unknown name is refused with the nearest one. */
export const functionNamed = (catalogue: Catalogue, name: string): CellFunction => {
  const found = lookUp(catalogue, name);
  if (found) return found;
  const near = nearest(
    name,
    catalogue.map((each) => each.id),
  );
  throw valueError(`function: no function "${name}"; the nearest is "${near}"`);
};
