import { requestImmediateMacroTask } from "@univerjs/core";
import { Layer } from "@univerjs/engine-render";

/** What the engine's type leaves out. */
interface Redrawn {
  _debounceDirtyFunc: (() => void) | null;
  makeDirty(isDirty: boolean): unknown;
  makeDirtyWithDebounce(isDirty?: boolean): void;
}

/**
 * A layer opens a channel of two ports for each redraw and leaves it open (engine 0.25.1): the browser keeps both for as long
 * as the page is there, a dozen for each change of a cell. Here it is closed when its message has come.
 */
export function closeRedrawChannels(): void {
  const layers = Layer.prototype as unknown as Redrawn;
  layers.makeDirtyWithDebounce = function redrawSoon(this: Redrawn, isDirty = true) {
    this._debounceDirtyFunc?.();
    const close = requestImmediateMacroTask(() => {
      close();
      this._debounceDirtyFunc = null;
      this.makeDirty(isDirty);
    });
    this._debounceDirtyFunc = close;
  };
}
