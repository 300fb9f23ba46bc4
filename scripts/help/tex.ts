/** Printed forms (mathjs text) as TeX and as MathML. Used by the build only. */
import { parse, type MathNode } from "mathjs";
import temml from "temml";

const GREEK =
  /^(alpha|beta|gamma|delta|epsilon|zeta|theta|eta|kappa|lambda|omega|sigma|Delta|Sigma|Phi|Psi|mu|nu|xi|pi|rho|tau|phi|chi|psi)(.*)$/;

/** Symbols set upright: names of numbers, abbreviations, words. */
const isWord = (name: string): boolean =>
  /^[A-Z]{2,}\d*$/.test(name) || /^(Re|Pr|Nu|Gr|Ra|Sc|Sh|Le|Bi|Fo)$/.test(name) || /^[a-z]{5,}$/.test(name);

const upright = (text: string): string => `\\mathrm{${text}}`;

const below = (letter: string, rest: string): string =>
  rest === "" ? letter : `${letter}_{${/^\d+$/.test(rest) ? rest : upright(rest)}}`;

/** A symbol's name as TeX: "rhoV" is ρ with V below, "dT" is ΔT, "LFL" is upright. */
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

/** Puts a negative number after a multiplication sign in brackets; drops the plus sign of a power of ten. */
const tidied = (tex: string): string =>
  tex.replace(/10\^\{\+/g, "10^{").replace(/\\cdot(-[\d.]+(?:\\cdot10\^\{-?\d+\})?)/g, "\\cdot\\left($1\\right)");

const sideTex = (side: string): string => tidied(parse(side).toTex({ parenthesis: "auto", handler }));

/** The equals sign between a form's sides, not those of comparisons. */
const EQUALS = /(?<![<>=!])=(?!=)/;

/** A printed form as TeX. @throws Error if the form can't be parsed */
export const texFor = (form: string): string =>
  form
    .split(EQUALS)
    .map((side) => sideTex(side.trim()))
    .join(" = ");

/** A printed form as a MathML element. @throws Error if the form can't be parsed */
export const mathmlFor = (form: string): string =>
  temml.renderToString(texFor(form), { displayMode: true, throwOnError: true });
