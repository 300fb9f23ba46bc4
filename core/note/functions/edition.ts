import { cellFunction } from "../../kernel/define/cellFunction";
import { EDITION } from "../../kernel/edition";
import { word } from "../../kernel/define/result";

export const edition = cellFunction({
  id: "NOTE.EDITION",
  topic: "note",
  summary: "The edition of these functions, to stamp a sheet with.",
  finds: ["version"],
  args: {},
  gives: word("edition text"),
  cautions: [],
  checks: [{ at: {}, gives: EDITION, from: "identity" }],
  work: () => EDITION,
});
