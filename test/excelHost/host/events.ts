/** Events: gathered while a request is carried out, told once it has been answered, in Excel's order. */
import { addressOf, type Box, type SheetModel } from "../model/workbook";

/** The client's numbers of events. */
const NUMBERS = {
  changed: 10,
  activated: 11,
  deactivated: 12,
  added: 13,
  calculated: 16,
  deleted: 15,
  nameChanged: 25,
  bookActivated: 2_203,
  visibility: 65_539,
} as const;

type Kind = keyof typeof NUMBERS;

interface Entry {
  readonly messageCategory: number;
  readonly messageType: number;
  readonly targetId: string;
  readonly message: string;
}

export interface EventHub {
  /** Where messages go: set once the client is loaded. */
  tell: (message: { entries: readonly object[] }) => void;
  /** Tells the page that another cell is selected. */
  tellSelection: () => void;
  changed(sheet: SheetModel, area: Box, source?: "Local" | "Remote", changeType?: string): void;
  calculated(sheet: SheetModel, area?: Box): void;
  sheet(
    kind: "added" | "deleted" | "activated" | "deactivated" | "nameChanged",
    sheet: SheetModel,
    more?: object,
  ): void;
  selected(): void;
  visibility(visible: boolean): void;
  /** The workbook is in front again. */
  front(): void;
  /** Tells what was gathered, after the answer is on its way. */
  flush(): void;
}

/** Category of the messages that are events. */
const EVENTS = 65_536;

export function eventHub(): EventHub {
  let entries: Entry[] = [];
  let selected = false;

  /** For the handlers of the one sheet, and for those of the workbook's collection of sheets. */
  function gather(kind: Kind, targets: readonly string[], details: object): void {
    const message = JSON.stringify(details);
    for (const targetId of targets)
      entries.push({ messageCategory: EVENTS, messageType: NUMBERS[kind], targetId, message });
  }

  const hub: EventHub = {
    tell: () => undefined,
    tellSelection: () => undefined,
    changed(sheet, area, source = "Local", changeType = "RangeEdited") {
      const address = addressOf(area);
      const details = { changeType, source, worksheetId: sheet.id, address, shiftDirection: "None" };
      gather("changed", ["Workbook", sheet.id], details);
    },
    calculated(sheet, area) {
      gather("calculated", ["Workbook", sheet.id], { worksheetId: sheet.id, address: area && addressOf(area) });
    },
    sheet(kind, sheet, more = {}) {
      gather(kind, ["Workbook", sheet.id], { worksheetId: sheet.id, source: "Local", ...more });
    },
    selected() {
      selected = true;
    },
    visibility(visible) {
      gather("visibility", [""], { visibility: visible ? "Visible" : "Hidden" });
      hub.flush();
    },
    front() {
      gather("bookActivated", ["Workbook"], {});
      hub.flush();
    },
    flush() {
      const [told, cell] = [entries, selected];
      entries = [];
      selected = false;
      if (told.length === 0 && !cell) return;
      // The client reads the answer first: its handlers count from then on.
      setTimeout(() => {
        // Changes are told before calculations, each edit for itself.
        const order = told.filter(({ messageType }) => messageType !== NUMBERS.calculated);
        const after = told.filter(({ messageType }) => messageType === NUMBERS.calculated);
        for (const entry of [...order, ...after]) hub.tell({ entries: [entry] });
        if (cell) hub.tellSelection();
      }, 0);
    },
  };
  return hub;
}
