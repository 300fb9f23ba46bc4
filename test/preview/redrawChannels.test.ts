import { Layer } from "@univerjs/engine-render";
import { afterEach, expect, test, vi } from "vitest";
import { closeRedrawChannels } from "../../src/preview/univer/redrawChannels";
import { nextTask } from "../../src/workbook/timeSlices";

const { makeDirtyWithDebounce } = Layer.prototype;

afterEach(() => {
  Layer.prototype.makeDirtyWithDebounce = makeDirtyWithDebounce;
  vi.restoreAllMocks();
});

test("a redraw of a layer happens once for two changes and leaves no channel open", async () => {
  closeRedrawChannels();
  const layer = { _debounceDirtyFunc: null, makeDirty: vi.fn() };
  const redraw = () => Layer.prototype.makeDirtyWithDebounce.call(layer as unknown as Layer, true);
  const closed = vi.spyOn(MessagePort.prototype, "close");
  redraw();
  redraw();
  while (layer.makeDirty.mock.calls.length === 0) await new Promise((resolve) => setTimeout(resolve, 0));
  expect(closed).toHaveBeenCalledTimes(4);
  expect(layer._debounceDirtyFunc).toBeNull();
  closed.mockRestore();
  await nextTask();
  expect(layer.makeDirty.mock.calls).toEqual([[true]]);
});
