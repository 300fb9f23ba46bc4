/** The number formats that files only number: ECMA-376 part 1, 18.8.30. Those of other languages are left to Excel. */

export const BUILT_IN_FORMATS: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "mm-dd-yy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yy h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};

const BY_CODE: ReadonlyMap<string, number> = new Map(
  Object.entries(BUILT_IN_FORMATS).map(([id, code]) => [code, Number(id)] as const),
);

/** Numbers from here on are the file's own. */
export const FIRST_OWN_FORMAT = 164;

export const builtInId = (code: string): number | undefined => BY_CODE.get(code);
