/** The licence texts of everything that a build ships, as one text file. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../root";
import type { ShippedPackage } from "./shippedPackages";

/** Licences that ask for no more than their text and notices; another one needs a decision first. */
const ACCEPTED = new Set(["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0", "Unlicense", "Zlib"]);

const PERMISSION = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;

const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

/** The text of a licence, for packages that name it and leave its text out. */
const STANDARD_TEXTS: Readonly<Record<string, string>> = { MIT: PERMISSION, ISC };

/** Words of an SPDX expression that are licences; `OR` leaves the choice to us, `AND` binds to both. */
function isAccepted(expression: string): boolean {
  const bare = expression.replace(/[()]/g, " ").trim();
  const choices = bare.split(/\s+OR\s+/);
  return choices.some((choice) => choice.split(/\s+AND\s+/).every((licence) => ACCEPTED.has(licence.trim())));
}

/** The Apache licence has no place for a name: any package's copy of it is the text. */
const apacheIn = (packages: readonly ShippedPackage[]): string | undefined =>
  packages.flatMap(({ texts }) => texts).find((text) => /^\s*Apache License\s+Version 2\.0/.test(text));

function textOf(
  { name, licence, author, texts }: ShippedPackage,
  standards: Readonly<Record<string, string | undefined>>,
): string {
  if (texts.length > 0) return texts.join("\n\n");
  const standard = standards[licence];
  if (standard === undefined) throw new Error(`${name}: names ${licence} and carries no licence text`);
  const holder = author === "" ? `the authors of ${name}` : author;
  return `The package carries no licence text of its own. Its package.json names ${licence}:\n\nCopyright (c) ${holder}\n\n${standard}`;
}

const LINE = "-".repeat(80);

/**
 * @throws Error for a licence that isn't among those accepted, and for a package without any text
 */
export function licencesText(packages: readonly ShippedPackage[]): string {
  const refused = packages.filter(({ licence }) => !isAccepted(licence));
  if (refused.length > 0)
    throw new Error(
      `shipped under a licence that needs a decision: ${refused.map(({ name, licence }) => `${name} (${licence})`).join(", ")}`,
    );
  const standards = { ...STANDARD_TEXTS, "Apache-2.0": apacheIn(packages) };
  const own = readFileSync(join(ROOT, "LICENSE"), "utf8").trim();
  return `${[
    `Warmback\n\n${own}`,
    ...packages.map((one) => `${one.name} ${one.version} (${one.licence})\n\n${textOf(one, standards)}`),
  ].join(`\n\n${LINE}\n\n`)}\n`;
}
