/** The README's function table, derived from the catalogue. */
import { format, resolveConfig } from "prettier";
import { CATALOGUE } from "../core";

const BEGIN = "<!-- functions: made by npm run readme -->";
const END = "<!-- /functions -->";

const table = (): string =>
  [
    "| function | what it answers |",
    "| --- | --- |",
    ...CATALOGUE.map(({ id, summary }) => `| \`${id}\` | ${summary} |`),
  ].join("\n");

/** The text with a new table between its marks, formatted like the repository's files. */
export const withFunctionTable = async (readme: string): Promise<string> => {
  const [from, to] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (from < 0 || to < from) throw new Error("README.md lacks the marks of the function table");
  const text = `${readme.slice(0, from + BEGIN.length)}\n\n${table()}\n\n${readme.slice(to)}`;
  return format(text, { ...(await resolveConfig("README.md")), parser: "markdown" });
};
