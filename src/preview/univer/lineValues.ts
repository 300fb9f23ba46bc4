/** Values of the engine, compared. */
import type { ArrayValueObject, BaseReferenceObject, BaseValueObject, Interpreter } from "@univerjs/engine-formula";

export type EngineValue = ReturnType<Interpreter["execute"]>;

const isArray = (value: EngineValue): value is ArrayValueObject =>
  value.isValueObject() && (value as BaseValueObject).isArray();

interface Extent {
  readonly rows: number;
  readonly columns: number;
}

/** How many rows and columns a value has. */
export function extentOf(value: EngineValue): Extent {
  if (isArray(value)) return { rows: value.getRowCount(), columns: value.getColumnCount() };
  if (!value.isReferenceObject()) return { rows: 1, columns: 1 };
  const { startRow, endRow, startColumn, endColumn } = (value as BaseReferenceObject).getRangePosition();
  return { rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
}

/** An error, a number, a text …; arrays and references are no plain values. */
function plainOf(value: BaseValueObject): unknown {
  if (value.isError()) return (value as unknown as { getErrorType(): string }).getErrorType();
  return value.isNull() ? null : value.getValue();
}

function isSameArray(a: ArrayValueObject, b: ArrayValueObject): boolean {
  const [rows, columns] = [a.getRowCount(), a.getColumnCount()];
  if (rows !== b.getRowCount() || columns !== b.getColumnCount()) return false;
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const [one, other] = [a.get(row, column), b.get(row, column)];
      if (!one || !other ? Boolean(one) !== Boolean(other) : !isSameValue(one, other)) return false;
    }
  return true;
}

export function isSameValue(a: EngineValue, b: EngineValue): boolean {
  if (a.isReferenceObject() || b.isReferenceObject()) {
    if (!a.isReferenceObject() || !b.isReferenceObject()) return false;
    const [one, other] = [a, b].map((each) => JSON.stringify((each as BaseReferenceObject).toUnitRange()));
    return one === other;
  }
  if (!a.isValueObject() || !b.isValueObject()) return false;
  if (isArray(a) || isArray(b)) return isArray(a) && isArray(b) && isSameArray(a, b);
  const [one, other] = [a as BaseValueObject, b as BaseValueObject];
  return one.isError() === other.isError() && Object.is(plainOf(one), plainOf(other));
}
