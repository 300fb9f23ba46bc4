/** An Excel to stand in for. */
export type Platform = "web" | "windows" | "mac";

export interface Profile {
  readonly name: string;
  readonly platform: Platform;
  /** The highest set of ExcelApi that it has. */
  readonly api: string;
  /** Bytes that a request and an answer may have; undefined where the platform knows no such limit. */
  readonly payload: number | undefined;
  /** What a cell function gets for one blank cell. */
  readonly blank: 0 | null;
  /** Errors in single cells of a result stay in their cells; else the whole result is #VALUE! (OfficeDev/office-js #2174). */
  readonly errorsInTables: boolean;
  /** Reading a sheet's names fails too while another workbook is in front (OfficeDev/office-js #6365). */
  readonly namesNeedFront: boolean;
  /** Which of the client's other requirement sets there are. */
  readonly sets: Readonly<Record<string, string>>;
}
