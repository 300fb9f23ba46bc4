/** A calculation note as plain text, for the clipboard. */
import { NOT_SIGNED, type NoteCalculation, type NoteHead, type NoteStep } from "./calculation";

const beside = (value: string, inSI: string): string => (inSI === "" ? value : `${value} (${inSI})`);

const stepLines = (step: NoteStep): readonly string[] => [
  `${step.number} ${step.title}`,
  ...(step.form === "" ? [] : [`    ${step.form}`]),
  ...step.symbols.map(({ name, description, value, inSI }) => `    ${name} = ${beside(value, inSI)}, ${description}`),
  ...(step.numbers === "" ? [] : [`    ${step.numbers}`]),
  ...(step.baseNumbers === "" ? [] : [`    in SI base units ${step.baseNumbers}`]),
  ...(step.value === "" ? [] : [`    ${beside(step.value, step.inSI)}`]),
  ...(step.source === "" ? [] : [`    Source: ${step.source}`]),
];

const calculationLines = (one: NoteCalculation): readonly string[] => [
  one.title,
  `${one.cell}: ${one.formula}`,
  `${one.call}: ${one.method}`,
  "",
  "Inputs",
  ...one.inputs.map(({ name, value, inSI, given }) => `    ${name}: ${beside(value, inSI)}${given ? "" : ", default"}`),
  "",
  "Working",
  ...one.steps.flatMap(stepLines),
  ...(one.left === 0 ? [] : [`${String(one.left)} further steps are left out.`]),
  "",
  "Result",
  ...one.result.map((row) => `    ${row.join("\t")}`),
  ...(one.resultInSI === "" ? [] : [`    (${one.resultInSI})`]),
  "",
  "Cautions",
  ...(one.cautions.length === 0
    ? ["    None is raised."]
    : one.cautions.map(({ severity, text }) => `    ${severity}: ${text}`)),
];

export function noteText(calculations: readonly NoteCalculation[], head: NoteHead): string {
  const { project, by, checked, approved, revision, date, edition } = head;
  const lines = [
    "Calculation note",
    `Project: ${project}`,
    `By: ${by}   Checked: ${checked}   Approved: ${approved}`,
    `Revision: ${revision}   Date: ${date}   Edition: ${edition}`,
    NOT_SIGNED,
    ...calculations.flatMap((one, at) => [
      "",
      `Sheet ${String(at + 1)} of ${String(calculations.length)}`,
      ...calculationLines(one),
    ]),
  ];
  return lines.join("\n");
}
