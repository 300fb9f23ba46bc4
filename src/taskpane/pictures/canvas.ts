/** Puts a picture into the page: drawn again when its place changes its width, with its values below. */
import type { Picture, Scheme } from "../../../core/pictures";
import { h } from "../elements";
import type { Drawing } from "./drawing";
import { legend } from "./legendList";
import { readingOf } from "./reading";

interface CanvasPlan {
  readonly key: string;
  /** The least width of the drawing and its height by the width, in pixels. */
  readonly least?: number;
  readonly heightAt?: (width: number) => number;
}

/** What is drawn on the canvas, and what reads its values. */
export function canvas(picture: Picture | Scheme, drawing: Drawing, plan: CanvasPlan): readonly HTMLElement[] {
  const { key, least = 0, heightAt } = plan;
  const isWide = least > 0;
  const across = "y" in picture && picture.y.names !== undefined ? " across" : "";
  const box = isWide
    ? h("div", { class: `picture wide${across}`, tabindex: 0, role: "group", "aria-label": picture.title })
    : h("div", { class: `picture${across}` });
  const reading = "parts" in picture ? undefined : readingOf(picture, key);
  let width = 0;
  const draw = (): void => {
    const room = Math.floor(box.clientWidth);
    const now = Math.max(least, room);
    if (room === 0 || now === width) return;
    width = now;
    if ("parts" in picture) return box.replaceChildren(drawing.drawnScheme(picture, width));
    const { svg, across } = drawing.drawnWithScale(picture, width, heightAt?.(width));
    box.replaceChildren(svg);
    reading?.attach(svg, across);
  };
  new ResizeObserver(draw).observe(box);
  return [...("parts" in picture ? [] : [legend(picture) ?? []].flat()), box, ...(reading ? [reading.root] : [])];
}
