/** Inserts a picture into the sheet or saves it as a file, depending on the host. */
import type { Picture, Scheme } from "../../../core/pictures";
import type { Area, PlacedPicture } from "../../workbook/port";
import type { PanelServices } from "../services";
import { action, h } from "../elements";
import { largerButton } from "./larger";
import type { Drawing } from "./drawing";

/** What pictures belong to. */
export interface PicturesOf {
  readonly id: string;
  readonly key: string;
  /** The cells that the call's formula fills. */
  readonly area: Area;
}

async function made(
  picture: Picture | Scheme,
  { onPaper }: Drawing,
  id: string,
  from: Element,
): Promise<PlacedPicture> {
  const panel = from.closest(".panel");
  if (panel === null) throw new Error("the picture is no longer shown");
  const { title, description } = picture;
  return { name: `${id}: ${title}`, altText: description, ...(await onPaper(picture, panel)) };
}

/** The buttons below a picture. */
export function pictureActions(
  services: PanelServices,
  picture: Picture | Scheme,
  drawing: Drawing,
  { id, area }: Pick<PicturesOf, "id" | "area">,
  key: string,
): readonly HTMLElement[] {
  const { placePicture, savePicture } = services.workbook;
  const line = h("p", { class: "actions" }, largerButton(picture, drawing, key));
  const exportButton = (label: string, done: string, to: (ready: PlacedPicture) => Promise<string>): HTMLElement => {
    const run = async (): Promise<void> => {
      await services.attempt(async () =>
        services.announce(`${done} ${await to(await made(picture, drawing, id, line))}.`),
      );
    };
    return action(label, run, { key: `${key} paper`, name: `${label}: ${picture.title}` });
  };
  if (placePicture !== undefined)
    line.append(exportButton("Insert as picture", "Inserted", (ready) => placePicture(ready, area)));
  else if (savePicture !== undefined) line.append(exportButton("Save as picture", "Saved as", savePicture));
  return [line];
}
