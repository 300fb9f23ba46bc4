/** A call's pictures. The script that draws them is loaded when one is first shown. */
import type { Picture, PictureChoice, Scheme, ShownPicture } from "../../../core/pictures";
import type { CellInput } from "../../../core";
import type { PanelServices } from "../services";
import { h, markScrollable, replace } from "../elements";
import { pictureActions, type PicturesOf } from "./actions";
import type { Drawing } from "./drawing";
import { canvas } from "./canvas";
import { LIGHT_PICTURES } from "./light";
import { valueText } from "../views/result";

const table = ({ head, rows, title }: Picture | Scheme): HTMLElement =>
  h(
    "div",
    { class: "wide", role: "group", "aria-label": `Numbers of the picture: ${title}` },
    h(
      "table",
      { class: "grid" },
      h(
        "thead",
        {},
        h(
          "tr",
          {},
          head.map((each) => h("th", { scope: "col" }, each)),
        ),
      ),
      h(
        "tbody",
        {},
        rows.map((row) =>
          h(
            "tr",
            {},
            row.map((each) => h("td", { class: typeof each === "number" ? "number" : undefined }, valueText(each))),
          ),
        ),
      ),
    ),
  );

/** Everything of a picture below its title. */
const parts = (
  services: PanelServices,
  picture: Picture | Scheme,
  drawing: Drawing,
  of: PicturesOf,
  key: string,
): readonly HTMLElement[] => [
  ...canvas(picture, drawing, { key }),
  ...pictureActions(services, picture, drawing, of, key),
  h(
    "details",
    { "data-key": `${key} numbers` },
    h("summary", { "data-key": `${key} numbers summary` }, "Numbers of the picture"),
    table(picture),
  ),
];

const plainFigure = (
  services: PanelServices,
  picture: Picture | Scheme,
  drawing: Drawing,
  of: PicturesOf,
): HTMLElement =>
  h(
    "figure",
    {},
    h("figcaption", {}, picture.title),
    parts(services, picture, drawing, of, `${of.key} ${picture.title}`),
  );

/** The last chosen option, by place: a picture that is drawn again keeps it. */
const CHOSEN = new WeakMap<PanelServices, Map<string, string>>();

/** One picture of several, with a list to choose it from. */
function choiceFigure(
  services: PanelServices,
  { label, first, options }: PictureChoice,
  drawing: Drawing,
  of: PicturesOf,
): HTMLElement {
  const chosen = CHOSEN.get(services) ?? new Map<string, string>();
  CHOSEN.set(services, chosen);
  const { sheet, row, column } = of.area;
  const place = `${sheet}!${String(row)},${String(column)} ${of.key} ${label}`;
  const key = `${of.key} ${label}`;
  const caption = h("figcaption");
  const body = h("div", { class: "figure-body" });
  const select = h(
    "select",
    { "data-key": key, "aria-label": label },
    options.map(({ name }) => h("option", { value: name }, name)),
  );
  const show = (): void => {
    const picture = options.find(({ name }) => name === select.value)?.picture;
    if (picture === undefined) return;
    caption.textContent = picture.title;
    replace(body, parts(services, picture, drawing, of, key));
    markScrollable(body);
  };
  select.value = chosen.get(place) ?? options[first]?.name ?? "";
  select.addEventListener("change", () => {
    chosen.set(place, select.value);
    show();
    services.readOut(options.find(({ name }) => name === select.value)?.picture.description ?? "");
  });
  show();
  return h("figure", {}, caption, h("label", { class: "choice" }, h("span", {}, label), select), body);
}

/** The longest wait for a frame, ms: a hidden page draws none. */
const FRAME = 100;

/** Lets the page draw, and answer clicks, before the next task. */
function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, FRAME);
    requestAnimationFrame(() => {
      clearTimeout(timer);
      setTimeout(resolve, 0);
    });
  });
}

/** Appends figures one a frame, since several at once hold the page up; stops once their place has left the page. */
async function appendEach(
  box: HTMLElement,
  all: readonly ShownPicture[],
  figure: (shown: ShownPicture) => HTMLElement,
): Promise<void> {
  let attached = false;
  for (const [place, shown] of all.entries()) {
    if (place > 0) await nextFrame();
    if (attached && !box.isConnected) return;
    attached = box.isConnected;
    box.append(figure(shown));
    markScrollable(box);
  }
}

/** A place for pictures; undefined if there are none. Those of a light call are made here, of its arguments. */
export function picturesBox(
  services: PanelServices,
  known: readonly ShownPicture[],
  of: PicturesOf,
  args: readonly CellInput[] | undefined,
): HTMLElement | undefined {
  const light = args !== undefined && LIGHT_PICTURES.includes(of.id) ? args : undefined;
  if (known.length === 0 && light === undefined) return undefined;
  const box = h("div", { class: "pictures" });
  const fill = async (): Promise<void> => {
    const drawing = await import(/* webpackChunkName: "pictures" */ ".");
    const figure = (shown: ShownPicture): HTMLElement =>
      "options" in shown ? choiceFigure(services, shown, drawing, of) : plainFigure(services, shown, drawing, of);
    const all = light === undefined ? known : drawing.lightPictures(of.id, light);
    await appendEach(box, all, figure);
  };
  fill().catch(() => {
    box.append(h("p", { class: "quiet" }, "The picture could not be loaded."));
  });
  return box;
}
