/** Puts a picture into the sheet, or gives it as a file, by what the host can. */
import type { Picture } from "../../../core/pictures";
import type { Area, PlacedPicture } from "../../workbook/port";
import type { PanelServices } from "../services";
import { action, h } from "../elements";
import type * as Pictures from ".";

type Drawing = typeof Pictures;

/** What pictures belong to. */
export interface PicturesOf {
  readonly id: string;
  readonly key: string;
  /** The cells that the call's formula fills. */
  readonly area: Area;
}

async function made(picture: Picture, { onPaper }: Drawing, id: string, from: Element): Promise<PlacedPicture> {
  const panel = from.closest(".panel");
  if (panel === null) throw new Error("the picture is no longer shown");
  const { title, says } = picture;
  return { name: `${id}: ${title}`, says, ...(await onPaper(picture, panel)) };
}

/** The buttons below a picture; none where the host can do neither. */
export function pictureActions(
  desk: PanelServices,
  picture: Picture,
  drawing: Drawing,
  { id, area }: Pick<PicturesOf, "id" | "area">,
  key: string,
): readonly HTMLElement[] {
  const { placePicture, savePicture } = desk.workbook;
  const line = h("p", { class: "actions" });
  const give = (label: string, told: string, to: (ready: PlacedPicture) => Promise<string>): HTMLElement => {
    const run = async (): Promise<void> => {
      await desk.attempt(async () => desk.announce(`${told} ${await to(await made(picture, drawing, id, line))}.`));
    };
    return action(label, run, { key: `${key} paper`, name: `${label}: ${picture.title}` });
  };
  if (placePicture !== undefined)
    line.append(give("Insert as picture", "Inserted", (ready) => placePicture(ready, area)));
  else if (savePicture !== undefined) line.append(give("Save as picture", "Saved as", savePicture));
  return line.childElementCount === 0 ? [] : [line];
}
