/** Puts a picture over the cells of a sheet. */
import type { Area, PlacedPicture } from "../port";
import { addressText, MOST_COLUMNS } from "../reader/reference";
import { rangeOf } from "./ranges";

/** The API set that knows where a range is on its sheet, one above that of shapes. */
export const PICTURES = "1.10";

/** Air between cells and picture, points. */
const GAP = 6;

/** A name that no shape of the sheet has yet: a taken one gets a number behind it. */
function freeName(name: string, taken: readonly string[]): string {
  let found = name;
  for (let number = 2; taken.includes(found); number++) found = `${name} ${String(number)}`;
  return found;
}

/** The first column to the right of an area; where there is none, the area's own first. */
const columnBeside = ({ column, columns }: Area): number =>
  column + columns < MOST_COLUMNS ? column + columns : column;

/** Adds the picture at the upper right corner of the area; answers where it is. */
export async function placePicture(
  context: Excel.RequestContext,
  { name, altText, png, width, height }: PlacedPicture,
  beside: Area,
): Promise<string> {
  const corner = rangeOf(context, { ...beside, column: columnBeside(beside), rows: 1, columns: 1 });
  corner.load("left,top");
  const { shapes } = context.workbook.worksheets.getItem(beside.sheet);
  shapes.load("items/name");
  await context.sync();
  const image = shapes.addImage(png);
  image.name = freeName(
    name,
    shapes.items.map((shape) => shape.name),
  );
  image.altTextDescription = altText;
  image.lockAspectRatio = false;
  image.width = width;
  image.height = height;
  image.lockAspectRatio = true;
  image.left = corner.left + GAP;
  image.top = corner.top;
  await context.sync();
  return `beside ${addressText(beside)}`;
}
