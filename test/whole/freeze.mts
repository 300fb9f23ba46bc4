/**
 * Adds what is new in the catalogue to frozen.json. What stands there already is kept: a change of it is a break of
 * people's workbooks and must be made by hand, with a line in the change log. Run: npx tsx test/whole/freeze.mts
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { CATALOGUE } from "../../core/catalogue";
import { frozenOf, type Frozen } from "./frozen";

const path = new URL("frozen.json", import.meta.url);
const kept = existsSync(path) ? (JSON.parse(readFileSync(path, "utf8")) as Record<string, Frozen>) : {};

const longer = (old: readonly string[], now: readonly string[]): readonly string[] =>
  old.every((each, place) => now[place] === each) ? now : old;

const merged = (old: Frozen | undefined, now: Frozen): Frozen =>
  old === undefined
    ? now
    : {
        args: longer(old.args, now.args),
        words: Object.fromEntries(
          Object.entries({ ...now.words, ...old.words }).map(([name, words]) => [
            name,
            longer(words, now.words[name] ?? []),
          ]),
        ),
        gives: longer(old.gives, now.gives),
        cautions: [...new Set([...old.cautions, ...now.cautions])].sort(),
      };

const next = Object.fromEntries(
  [...new Set([...Object.keys(kept), ...CATALOGUE.map(({ id }) => id)])].sort().map((id) => {
    const definition = CATALOGUE.find((each) => each.id === id);
    const old = kept[id];
    return [id, definition ? merged(old, frozenOf(definition)) : old];
  }),
);
writeFileSync(path, await format(JSON.stringify(next), { parser: "json", printWidth: 120 }));
process.stdout.write(`${Object.keys(next).length} functions are frozen\n`);
