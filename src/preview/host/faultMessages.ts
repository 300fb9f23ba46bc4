/** Messages for error values that no function of ours explained. */
const PLAIN: Readonly<Record<string, string>> = {
  "#NAME?": "a function or name in the formula is unknown",
  "#DIV/0!": "something is divided by zero or by an empty cell",
  "#VALUE!": "a value in the formula is of the wrong kind",
  "#NUM!": "a calculation has no number as its result",
  "#N/A": "a value isn't available",
  "#REF!": "the formula refers to a cell or sheet that isn't there",
  "#SPILL!": "the cells that the result needs aren't empty",
  "#CALC!": "the formula can't be calculated",
  "#CYCLE!": "the formula depends on its own result",
  "#NULL!": "two ranges have no cell in common",
};

export const plainMessage = (code: string): string => PLAIN[code] ?? "the formula ends in an error";
