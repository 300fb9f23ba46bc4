/** The cells that the user marked in the panel, for a check table or a calculation note. They last as long as the panel. */
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";

export interface MarkedList {
  all(): readonly Address[];
  /** False if the cell is marked already. */
  add(address: Address): boolean;
  remove(address: Address): void;
  clear(): void;
  onChange(call: () => void): void;
}

export function markedList(): MarkedList {
  const cells = new Map<string, Address>();
  const calls: (() => void)[] = [];
  const changed = (): void => {
    for (const call of calls) call();
  };
  return {
    all: () => [...cells.values()],
    add(address) {
      const key = addressText(address);
      if (cells.has(key)) return false;
      cells.set(key, address);
      changed();
      return true;
    },
    remove(address) {
      cells.delete(addressText(address));
      changed();
    },
    clear() {
      cells.clear();
      changed();
    },
    onChange: (call) => void calls.push(call),
  };
}
