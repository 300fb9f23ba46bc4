/** What every sheet of ours in a copy says of where it comes from. */
export interface CopyFacts {
  /** As the user calls it; "" where it isn't given. */
  readonly project: string;
  /** The workbook's file; "" where it has none. */
  readonly file: string;
  /** 2026-11-26 */
  readonly date: string;
  /** Name and version of what calculated it. */
  readonly edition: string;
}

const orDash = (text: string): string => (text.trim() === "" ? "–" : text.trim());

export const factRows = ({ project, file, date, edition }: CopyFacts): readonly (readonly [string, string])[] => [
  ["Project", orDash(project)],
  ["File", orDash(file)],
  ["Date of the copy", date],
  ["Calculated by", edition],
];

/** All of it in one line. */
export const factLine = (facts: CopyFacts): string =>
  factRows(facts)
    .map(([label, text]) => `${label}: ${text}`)
    .join("   ");
