/** The name of a copy's file: "bid hand-over copy.xlsx" for bid.xlsm, "Hand-over copy.xlsx" for a workbook without a file. */
export function copyName(file: string): string {
  const base = file.replace(/\.[^.]{1,5}$/, "").trim();
  return base === "" ? "Hand-over copy.xlsx" : `${base} hand-over copy.xlsx`;
}
