/**
 * Arrays of one cell, which most references become (engine 0.25.1). The engine keeps each under a text of its place, as it
 * does with large ranges; for one cell that costs more than reading it.
 */
import type { Nullable } from "@univerjs/core";
import { ArrayValueObject, BaseReferenceObject, NullValueObject } from "@univerjs/engine-formula";
import type { BaseValueObject } from "@univerjs/engine-formula";

const done = new WeakSet<object>();

export function readOneCellAlone(): void {
  const { prototype } = BaseReferenceObject;
  if (done.has(prototype)) return;
  done.add(prototype);
  const toArray = prototype.toArrayValueObject;
  prototype.toArrayValueObject = function arrayOf(this: BaseReferenceObject, ...given) {
    const { startRow: row, endRow, startColumn: column, endColumn } = this.getRangePosition();
    if (row !== endRow || column !== endColumn) return toArray.apply(this, given);
    let value: Nullable<BaseValueObject> = null;
    this.iterator((found) => {
      value = found;
    });
    return ArrayValueObject.create({
      calculateValueList: [[value ?? NullValueObject.create()]],
      ...{ rowCount: 1, columnCount: 1, row, column },
      unitId: this.getUnitId(),
      sheetId: this.getSheetId(),
    });
  };
}
