/** A call's result as rows of a working. */
import type { CellFunction } from "../kernel/define/cellFunction";
import { isFault } from "../kernel/values/fault";
import { unitText, type CellOut, type Out } from "../kernel/call/present";
import type { System } from "../kernel/values/quantity";
import type { GridCell } from "../kernel/define/result";

const plain = (value: CellOut): GridCell => (isFault(value) ? `${value.code} ${value.message}` : value);

/** The result rows; a long table gives its number of rows only. */
export const resultRows = (definition: CellFunction, out: Out, system: System): readonly (readonly GridCell[])[] => {
  const { returns } = definition;
  if (!Array.isArray(out)) {
    const unit = returns.type === "quantity" ? unitText(returns, system) : "";
    return [["result", definition.summary, "", out as GridCell, unit, ""]];
  }
  const matrix = out as readonly (readonly CellOut[])[];
  if (returns.type === "list")
    return matrix.map(([label = "", value = "", unit = ""]) => [
      "result",
      plain(label),
      "",
      plain(value),
      plain(unit),
      "",
    ]);
  if (returns.type === "row")
    return Object.entries(returns.cells).map(([key, single], place) => [
      "result",
      single.description || key,
      "",
      plain(matrix[0]?.[place] ?? ""),
      unitText(single, system),
      "",
    ]);
  return [["result", definition.summary, "", `${matrix.length} rows`, "", ""]];
};
