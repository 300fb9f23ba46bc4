/** Printed forms (mathjs text) as TeX and as MathML. Used by the build only. */
import { parse, type MathNode } from "mathjs";
import temml from "temml";

const GREEK =
  /^(alpha|beta|gamma|delta|epsilon|zeta|theta|eta|kappa|lambda|omega|sigma|Delta|Sigma|Phi|Psi|mu|nu|xi|pi|rho|tau|phi|chi|psi)(.*)$/;

/** Letters that stand upright: names of numbers, abbreviations, words. */
const isWord = (name: string): boolean =>
  /^[A-Z]{2,}\d*$/.test(name) || /^(Re|Pr|Nu|Gr|Ra|Sc|Sh|Le|Bi|Fo)$/.test(name) || /^[a-z]{5,}$/.test(name);

const upright = (text: string): string => `\\mathrm{${text}}`;

const below = (letter: string, rest: string): string =>
  rest === "" ? letter : `${letter}_{${/^\d+$/.test(rest) ? rest : upright(rest)}}`;

/** A symbol's name as TeX: "rhoV" is ρ with V below, "dT" is ΔT, "LFL" stands upright. */
export const symbolTex = (name: string): string => {
  const slope = /^d([A-Za-z])d([A-Za-z])$/.exec(name);
  if (slope) return `\\frac{${upright("d")} ${slope[1] ?? ""}}{${upright("d")} ${slope[2] ?? ""}}`;
  if (/^d[A-Z]/.test(name)) return `\\Delta ${symbolTex(name.slice(1))}`;
  const plain = name.replace(/_/g, "");
  const greek = GREEK.exec(plain);
  if (greek) return below(`\\${greek[1] ?? ""}`, greek[2] ?? "");
  if (isWord(plain)) return upright(plain);
  return below(plain.charAt(0), plain.slice(1));
};

interface SymbolLike extends MathNode {
  readonly name: string;
}

const handler = (node: MathNode): string | undefined =>
  node.type === "SymbolNode" ? ` ${symbolTex((node as SymbolLike).name)}` : undefined;

/** A negative number behind a multiplication sign stands in brackets; a power of ten needs no plus sign. */
const tidied = (tex: string): string =>
  tex.replace(/10\^\{\+/g, "10^{").replace(/\\cdot(-[\d.]+(?:\\cdot10\^\{-?\d+\})?)/g, "\\cdot\\left($1\\right)");

const sideTex = (side: string): string => tidied(parse(side).toTex({ parenthesis: "auto", handler }));

/** The one equals sign that parts a form's sides; comparisons have others. */
const EQUALS = /(?<![<>=!])=(?!=)/;

/** A printed form as TeX. @throws Error where the form can't be read */
export const texFor = (form: string): string =>
  form
    .split(EQUALS)
    .map((side) => sideTex(side.trim()))
    .join(" = ");

/** A printed form as a MathML element. @throws Error where the form can't be read */
export const mathmlFor = (form: string): string =>
  temml.renderToString(texFor(form), { displayMode: true, throwOnError: true });
