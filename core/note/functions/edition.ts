import { cellFunction } from "../../kernel/define/cellFunction";
import { EDITION } from "../../kernel/edition";
import { wordResult } from "../../kernel/define/result";

export const noteEdition = cellFunction({
  id: "NOTE.EDITION",
  topic: "note",
  summary: "The edition of these functions, to record on a sheet.",
  keywords: ["version"],
  args: {},
  returns: wordResult("edition text"),
  cautions: [],
  checks: [{ inputs: {}, expected: EDITION, source: "identity" }],
  compute: () => EDITION,
});
