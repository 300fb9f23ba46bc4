import { cellFunction } from "../../kernel/define/cellFunction";
import { blockRows } from "../../kernel/explain/describe";
import { notAvailable } from "../../kernel/values/fault";
import { gridResult } from "../../kernel/define/result";
import { UNITS } from "../../kernel/define/unitsArgument";
import { FUNCTION, functionNamed } from "../args";

export const noteInputs = cellFunction({
  id: "NOTE.INPUTS",
  topic: "note",
  summary: "The input block of a function, to fill in: label, default, unit, description.",
  keywords: ["block", "template", "labels"],
  args: { function: FUNCTION, units: UNITS },
  returns: gridResult("labels, defaults, units"),
  cautions: [],
  checks: [{ inputs: { function: "POOL.LOSSES" }, expected: { cover: "none" }, source: "identity" }],
  compute({ function: name }, { catalogue, system }) {
    const definition = functionNamed(catalogue, name);
    const block = Object.values(definition.args).find(({ shape }) => shape.type === "block");
    if (block?.shape.type !== "block")
      throw notAvailable(`function: ${definition.id} takes no input block; its arguments are single values`);
    const { entries } = block.shape;
    const abouts = Object.values(entries).map((arg) =>
      arg.presence === "required" ? `${arg.description} (needed)` : arg.description,
    );
    return blockRows(block.shape, system).map((line, place) => [
      ...line.map((cell) => cell ?? ""),
      abouts[place] ?? "",
    ]);
  },
});
