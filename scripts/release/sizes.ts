/** Sorts the bytes of a bundle into data, texts, units and code. */
import type { Metafile } from "esbuild";
import ts from "typescript";

type Sizes = readonly (readonly [name: string, bytes: number])[];

const KINDS: readonly (readonly [name: string, matches: RegExp])[] = [
  ["data: tables and coefficients", /\/data\/|Columns\.ts$|packedSeries\.ts$/],
  ["texts: sources, cautions, glossary", /\/reference\/|autions\.ts$|glossary\.ts$|remarks\.ts$/],
  ["units: kinds, words, readers", /\/values\/|unitWords\.ts$|unitsArgument\.ts$|pressureBasis\.ts$/],
  ["definitions: arguments, checks, help", /\/functions\/|\/args\.ts$|Args\.ts$|\/define\//],
];

const CODE = "code: equations, solvers, run time";

function inputsOf({ outputs }: Metafile): readonly (readonly [path: string, bytes: number])[] {
  return Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).map(([path, { bytesInOutput }]) => [path, bytesInOutput] as const),
  );
}

function summed(entries: readonly (readonly [string, number])[]): Sizes {
  const sums = new Map<string, number>();
  for (const [name, bytes] of entries) sums.set(name, (sums.get(name) ?? 0) + bytes);
  return [...sums].sort(([, a], [, b]) => b - a);
}

/** Bytes by kind, largest first. */
export function sizesByKind(parts: Metafile): Sizes {
  return summed(
    inputsOf(parts).map(([path, bytes]) => [KINDS.find(([, matches]) => matches.test(`/${path}`))?.[0] ?? CODE, bytes]),
  );
}

/** Bytes by topic or folder below core and src, largest first. */
export function sizesByFolder(parts: Metafile): Sizes {
  return summed(inputsOf(parts).map(([path, bytes]) => [path.split("/").slice(0, 2).join("/"), bytes]));
}

/** Bytes of a script inside its string and template literals. */
export function textBytes(script: string): number {
  let sum = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
      sum += Buffer.byteLength(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("script.js", script, ts.ScriptTarget.ES2020, false, ts.ScriptKind.JS));
  return sum;
}
