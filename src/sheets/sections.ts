/** Parts that every starter sheet shares: head, people, revisions, checks. */
import { computed, gap, heading, input, type Line } from "./layout";

/** Rows that stay in sight: title, master check, legend, column heads. */
export const FROZEN_ROWS = 4;

const initials = "initials";

/** Title, master check over the keys of the checks, legend and column heads: exactly the frozen rows. */
export const head = (title: string, firstCheck: string, lastCheck: string): readonly Line[] => [
  heading("title", title),
  {
    key: "masterCheck",
    label: "Master check",
    value: `=IF(COUNTIF([${firstCheck}]:[${lastCheck}],"OK")=ROWS([${firstCheck}]:[${lastCheck}]),"OK","LOOK AT THE CHECKS")`,
    style: "Check Cell",
    source: "=WARMBACK.NOTE.EDITION()",
    note: "All checks at the foot must read OK.",
  },
  {
    label: "Legend",
    value: "to fill in",
    style: "Input",
    unit: "calculated",
    unitStyle: "Calculation",
    source: "result",
    sourceStyle: "Output",
    note: "check",
    noteStyle: "Check Cell",
  },
  {
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
  },
];

/** Who made, checked and approved the sheet. */
export const people = (project: string, marked: string): readonly Line[] => [
  heading("part", "About"),
  input("project", "Project", project, "", { note: marked }),
  input("madeBy", "Made by", "", initials),
  input("checkedBy", "Checked by", "", initials, { note: "Another person than who made it." }),
  input("approvedBy", "Approved by", "", initials),
  input("dateMade", "Date", "", "date"),
  gap,
];

/** The check that maker and checker differ. */
export const twoPeople = (key: string): Line =>
  computed(key, "Checker differs from maker", '=IF(OR([checkedBy]="",[madeBy]<>[checkedBy]),"OK","CHECK")', "", {
    style: "Check Cell",
    note: "Blank until the sheet is checked.",
  });

/** A revision block of three lines. */
export const revisions: readonly Line[] = [
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
export const WIDTHS: readonly number[] = [34, 19, 14, 40, 46];
