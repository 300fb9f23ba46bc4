import type { Unsubscribe, Workbook } from "../../workbook/port";

/**
 * The port over a workbook that is still being started, so that the panel can be drawn first: every request waits for it.
 * @param starting rejects with a sentence for the user, which every request then rejects with
 */
export function laterWorkbook(starting: Promise<Workbook>): Workbook {
  const subscribe = (ask: (workbook: Workbook) => Unsubscribe): Unsubscribe => {
    let end: Unsubscribe | undefined;
    let ended = false;
    // A workbook that doesn't start has no events; requests say why.
    starting.then(
      (workbook) => {
        if (!ended) end = ask(workbook);
      },
      () => undefined,
    );
    return () => {
      ended = true;
      end?.();
    };
  };
  return {
    host: "preview",
    sheets: async () => (await starting).sheets(),
    used: async (sheet) => (await starting).used(sheet),
    read: async (areas) => (await starting).read(areas),
    resolve: async (references) => (await starting).resolve(references),
    selection: async () => (await starting).selection(),
    selectedAreas: async () => (await starting).selectedAreas?.(),
    select: async (address) => (await starting).select(address),
    write: async (cells, options) => (await starting).write(cells, options),
    makeRoom: async (area) => (await starting).makeRoom?.(area),
    insert: async (sheet, options) => (await starting).insert(sheet, options),
    documentName: async () => (await starting).documentName(),
    documentBytes: async (signal) => (await starting).documentBytes(signal),
    deliverCopy: async (bytes, name) => (await starting).deliverCopy(bytes, name),
    savePicture: async (picture) => {
      const { savePicture } = await starting;
      if (savePicture === undefined) throw new Error("pictures can't be saved here");
      return savePicture(picture);
    },
    recalculate: async (areas) => (await starting).recalculate(areas),
    onSelection: (call) => subscribe((workbook) => workbook.onSelection(call)),
    onChange: (call) => subscribe((workbook) => workbook.onChange(call)),
  };
}
