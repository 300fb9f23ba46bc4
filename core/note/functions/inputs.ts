import { cellFunction } from "../../kernel/define/cellFunction";
import { blockRows } from "../../kernel/explain/describe";
import { outside } from "../../kernel/values/fault";
import { grid } from "../../kernel/define/result";
import { UNITS } from "../../kernel/define/unitsArgument";
import { FUNCTION, functionNamed } from "../args";

export const inputs = cellFunction({
  id: "NOTE.INPUTS",
  topic: "note",
  summary: "The input block of a function, to fill in: label, default, unit, what it is.",
  finds: ["block", "template", "labels"],
  args: { function: FUNCTION, units: UNITS },
  gives: grid("labels, defaults, units"),
  cautions: [],
  checks: [{ at: { function: "POOL.LOSSES" }, gives: { cover: "none" }, from: "identity" }],
  work({ function: name }, { catalogue, system }) {
    const definition = functionNamed(catalogue, name);
    const block = Object.values(definition.args).find(({ shape }) => shape.type === "block");
    if (block?.shape.type !== "block")
      throw outside(`function: ${definition.id} takes no input block; its arguments are single values`);
    const { entries } = block.shape;
    const abouts = Object.values(entries).map((arg) =>
      arg.presence === "required" ? `${arg.about} (needed)` : arg.about,
    );
    return blockRows(block.shape, system).map((line, place) => [
      ...line.map((cell) => cell ?? ""),
      abouts[place] ?? "",
    ]);
  },
});
