/** Parts that every starter sheet shares: head, answer, people, checks, revisions. */
import { inputRules } from "./inputRules";
import { computed, gap, heading, input, type Line } from "./layout";
import { STATES } from "./states";

/** Rows that stay in sight: title, master check, legend, column heads. */
export const FROZEN_ROWS = 4;

const { good, unfinished, doubtful, bad } = STATES;

const initials = "initials";

const legend: Line = {
  label: "Legend",
  value: "to fill in",
  style: "Input",
  unit: "calculated",
  unitStyle: "Calculation",
  source: "result",
  sourceStyle: "Output",
  note: "check",
  noteStyle: "Check Cell",
};

const columnHeads: Line = {
  label: "Quantity",
  labelStyle: "Heading 3",
  value: "Value",
  style: "Heading 3",
  unit: "Unit",
  unitStyle: "Heading 3",
  source: "Source or method",
  sourceStyle: "Heading 3",
  note: "Note",
  noteStyle: "Heading 3",
};

interface Piece {
  readonly when: string;
  readonly says: string;
}

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** Texts one after the other, each where its condition holds, with two letters in front of each to leave out. */
const listed = (pieces: readonly Piece[]): string =>
  pieces.map(({ when, says }) => `IF(${when},${quoted(`; ${says}`)},"")`).join("&");

/** Letters of a list that three lines of a note hold: this one repeats on every page. */
const LISTED_LETTERS = 72;

/** The beginning of a list that a formula makes. */
const cut = (text: string): string =>
  `MID(${text},3,${LISTED_LETTERS})&IF(LEN(${text})>${LISTED_LETTERS + 2},"… and more.","")`;

/** The worst of the checks; an error in a check is a failure, and a blank one is not checked. */
const worst = (checks: string): string =>
  `=IF(SUMPRODUCT(--ISERROR(${checks}))+COUNTIF(${checks},"${bad}")>0,"${bad}",` +
  `IF(COUNTIF(${checks},"${doubtful}")>0,"${doubtful}",IF(COUNTIF(${checks},"${good}")=ROWS(${checks}),"${good}","${unfinished}")))`;

const isCheck = (line: Line): line is Line & { readonly key: string } =>
  line.key !== undefined && line.style === "Check Cell";

/** Title, master check over all checks, legend and column heads: exactly the frozen rows. */
function head(title: string, checks: readonly (Line & { readonly key: string })[]): readonly Line[] {
  const [first, last] = [checks[0]?.key ?? "", checks.at(-1)?.key ?? ""];
  const open = checks.map(({ key, label }) => ({ when: `IFERROR([${key}]<>"${good}",TRUE)`, says: label }));
  return [
    // On every page of paper too: the head repeats there.
    { ...heading("title", title, '=[project]&""'), noteStyle: "Explanatory Text" },
    {
      key: "masterCheck",
      label: "Master check",
      value: worst(`[${first}]:[${last}]`),
      style: "Check Cell",
      source: "=WARMBACK.NOTE.EDITION()",
      note: `=IF([masterCheck]="${good}","Every check at the foot reads ${good}.",${cut(listed(open))})`,
    },
    legend,
    columnHeads,
  ];
}

/** Who made, checked and approved the sheet. */
const people = (project: string, isShared: boolean): readonly Line[] => [
  heading("part", "About"),
  input("project", "Project", project, "", {
    note: "Fernhill Hall is an invented example.",
    ...(!isShared && { link: "ProjectTitle" }),
  }),
  input("madeBy", "Made by", "", initials, isShared ? {} : { link: "ProjectMadeBy" }),
  input("checkedBy", "Checked by", "", initials, {
    note: "Another person than who made it. Initials are no digital signature.",
  }),
  input("approvedBy", "Approved by", "", initials),
  input("dateMade", "Date", "", "date", { format: "yyyy-mm-dd" }),
  gap,
];

/** A verdict of a check; `otherwise` is what it says where the condition doesn't hold. */
const verdict = (key: string, label: string, condition: string, otherwise: string, note: string): Line =>
  computed(key, label, `=IF(${condition},"${good}","${otherwise}")`, "", { style: "Check Cell", note });

/** A check that asks for a second look where its condition doesn't hold. */
export const check = (key: string, label: string, condition: string, note: string): Line =>
  verdict(key, label, condition, doubtful, note);

/** A check that the job must pass. */
export const must = (key: string, label: string, condition: string, note: string): Line =>
  verdict(key, label, condition, bad, note);

/** A check that waits for a cell: not checked as long as it is blank. */
export const checkWhen = (key: string, label: string, cell: string, condition: string, note: string): Line =>
  computed(key, label, `=IF(LEN([${cell}])=0,"${unfinished}",IF(${condition},"${good}","${doubtful}"))`, "", {
    style: "Check Cell",
    note,
  });

const peopleCheck: Line = computed(
  "checkPeople",
  "Made and checked by two people",
  `=IF(OR(LEN([madeBy])=0,LEN([checkedBy])=0),"${unfinished}",IF(TRIM([madeBy]&"")=TRIM([checkedBy]&""),"${bad}","${good}"))`,
  "",
  { style: "Check Cell", note: "Their initials, under About." },
);

const FROM = "sheetFrom";
const TO = "sheetTo";

const isResult = (line: Line): line is Line & { readonly key: string } =>
  line.key !== undefined && typeof line.value === "string" && line.value.startsWith("=") && line.style !== "Input";

/** No error between head and checks, no result deleted, no row missing. */
function cellsCheck(body: readonly Line[], last: string): Line {
  const region = `[${FROM}@A]:[${TO}@${last}]`;
  const results = body.filter(isResult).map(({ key }) => `[${key}]`);
  const rows = body.reduce((sum, { spills = 0 }) => sum + 1 + spills, 0);
  const all = results.length === 0 ? "" : `,COUNTA(${results.join(",")})=${results.length}`;
  return must(
    "checkCells",
    "Every cell calculated",
    `AND(SUMPRODUCT(--ISERROR(${region}))=0,ROWS(${region})>=${rows}${all})`,
    `=IF([checkCells]="${good}","No cell shows an error.",IFERROR(SUMPRODUCT(--ISERROR(${region}))&" cells show an error, or a row or formula is gone.","A row is gone."))`,
  );
}

/** Excel takes 8,192 characters in a formula; the rest is for the frame around the list. */
const LONGEST_LIST = 6_500;

/** The pieces in parts, each short enough for one formula. */
function inParts(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const parts: Piece[][] = [[]];
  let length = 0;
  for (const piece of pieces) {
    const more = piece.when.length + piece.says.length + 12;
    if (length + more > LONGEST_LIST) {
      parts.push([]);
      length = 0;
    }
    parts.at(-1)?.push(piece);
    length += more;
  }
  return parts;
}

/** Every input there, of the right kind and within its limits; the note names those that aren't. */
function inputsChecks(body: readonly Line[], note: string): readonly Line[] {
  const wrong = inputRules(body).map(({ label, condition }): Piece => ({ when: `NOT(${condition})`, says: label }));
  return inParts(wrong).map((part, at) => {
    const key = at === 0 ? "checkInputs" : `checkInputs${at + 1}`;
    const label = at === 0 ? "Every input there and within its limits" : `Inputs, part ${at + 1}`;
    return must(
      key,
      label,
      `[${key}@${note}]="${ALL_THERE}"`,
      // The list once: what is left of the frame where nothing is listed says that all are there.
      `=SUBSTITUTE("Look at: "&MID(${listed(part)},3,9999)&".","Look at: .","${ALL_THERE}")`,
    );
  });
}

const ALL_THERE = "All are there.";

export interface StarterPlan {
  readonly title: string;
  readonly warnings?: readonly Line[];
  /** Lines in front of everything that the checks look at: they may name the master check. */
  readonly verdict?: readonly Line[];
  /** What the sheet is for: its first part. */
  readonly answer: readonly Line[];
  readonly project: string;
  /** The sheet that the others link to: its own people are typed. */
  readonly isShared?: true;
  /** Inputs and calculation. */
  readonly body: readonly Line[];
  readonly checks: readonly Line[];
  /** Letters of the note's and of the last column. */
  readonly columns?: { readonly note: string; readonly last: string };
}

/** The answer and the checks stay in sight; inputs and workings fold. */
const foldable = (line: Line): Line => (line.labelStyle === "Heading 2" ? { ...line, fold: "starts" } : line);

/** All lines of a starter sheet: head, warnings, answer, people, body, checks, revisions. */
export function starterLines(plan: StarterPlan): readonly Line[] {
  const { note, last } = plan.columns ?? { note: "E", last: "E" };
  const body: readonly Line[] = [
    { key: FROM, label: "" },
    ...plan.answer,
    ...[...people(plan.project, plan.isShared === true), ...plan.body].map(foldable),
    { key: TO, label: "", fold: "ends" },
  ];
  const own: readonly Line[] = [cellsCheck(body, last), ...inputsChecks(body, note), peopleCheck, ...plan.checks];
  return [
    ...head(plan.title, own.filter(isCheck)),
    ...(plan.warnings ?? []),
    ...(plan.verdict ?? []),
    ...body,
    heading("part", "Checks"),
    ...own,
    gap,
    ...revisions,
  ];
}

/** A revision block of three lines. */
const revisions: readonly Line[] = [
  heading("part", "Revisions"),
  {
    label: "Revision",
    labelStyle: "Heading 3",
    value: "Date",
    style: "Heading 3",
    unit: "By",
    unitStyle: "Heading 3",
    source: "What changed",
    sourceStyle: "Heading 3",
    note: "Checked",
    noteStyle: "Heading 3",
  },
  ...["A", "B", "C"].map((letter): Line => ({
    label: letter,
    value: "",
    style: "Input",
    source: letter === "A" ? "First issue" : "",
  })),
];

/** Widths of the five columns, in characters. */
export const WIDTHS: readonly number[] = [34, 19, 14, 36, 46];
