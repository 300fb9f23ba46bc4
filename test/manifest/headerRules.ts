/** Reads a header file as static hosts do. */

interface HeaderRule {
  readonly path: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
}

/** The rules of the file's text: a path, then its headers, indented. */
export function headerRules(text: string): readonly HeaderRule[] {
  return text
    .trimEnd()
    .split("\n\n")
    .map((block) => {
      const [path = "", ...lines] = block.split("\n");
      const headers = lines.map((line) => {
        const [, name = "", value = ""] = /^ {2}([^:]+): (.*)$/.exec(line) ?? [];
        return [name, value] as const;
      });
      return { path, headers };
    });
}

/** A star at the end matches everything behind it; any other path is itself. */
const matches = (rule: string, path: string): boolean =>
  rule.endsWith("*") ? path.startsWith(rule.slice(0, -1)) : rule === path;

/** What a host sends with a path: the headers of all rules that match it, values of one name joined by commas. */
export function sentHeaders(rules: readonly HeaderRule[], path: string): Readonly<Record<string, string>> {
  const sent: Record<string, string> = {};
  for (const rule of rules.filter((each) => matches(each.path, path)))
    for (const [name, value] of rule.headers) sent[name] = name in sent ? `${sent[name] ?? ""}, ${value}` : value;
  return sent;
}
