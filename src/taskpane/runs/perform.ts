/** Does the work: the same code in a worker and, where none can be had, on the page. */
import { CATALOGUE, cite, type Compiled, COMPILED, explain, type Verdict, verdictsOf } from "../../../core";
import { picturesOf, PICTURED } from "../../../core/pictures";
import { outcomeOf } from "../../functions/outcome";
import { describedOf } from "../model/described";
import { explainedOf } from "../model/explained";
import type { Call, Checked, Explained, Gives, Kind, Needs, Progress, Told } from "./job";

export interface Around {
  /** Is told how far the work is. */
  tell(progress: Progress): void;
  /** Lets others have their turn; throws where the work was ended. */
  turn(): Promise<void>;
}

const compiledOf = (id: string): Compiled => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`there is no function ${id}`);
  return compiled;
};

const tellCall = ({ id, args }: Call): Told => {
  const { out, cautions } = explain(compiledOf(id), args, CATALOGUE, { steps: false });
  return { outcome: outcomeOf(out), cautions };
};

const explainCall = async ({ id, args }: Call, { tell, turn }: Around): Promise<Explained> => {
  const compiled = compiledOf(id);
  const drawn = PICTURED.includes(id);
  const total = drawn ? 2 : 1;
  tell({ done: 0, total, text: drawn ? "result and working, then pictures" : "result and working" });
  await turn();
  const explained = explainedOf(explain(compiled, args, CATALOGUE));
  if (!drawn) return explained;
  tell({ done: 1, total, text: "pictures" });
  await turn();
  return { ...explained, pictures: picturesOf(compiled, args) };
};

const checkedOf = ({ id, what, expected, agrees, check }: Verdict): Checked => ({
  id,
  what,
  expected,
  agrees,
  from: cite(check.from),
});

const checkAll = async ({ tell, turn }: Around): Promise<readonly Checked[]> => {
  const found: Checked[] = [];
  const total = CATALOGUE.length;
  for (const [done, definition] of CATALOGUE.entries()) {
    tell({ done, total, text: `${String(done)} of ${String(total)} functions` });
    await turn();
    for (const check of definition.checks) found.push(...verdictsOf(definition, check, CATALOGUE).map(checkedOf));
  }
  return found;
};

const PERFORMERS: { readonly [K in Kind]: (needs: Needs<K>, around: Around) => Gives<K> | Promise<Gives<K>> } = {
  tell: tellCall,
  describe: ({ id, args }) => describedOf(explain(compiledOf(id), args, CATALOGUE)),
  explain: explainCall,
  check: (_, around) => checkAll(around),
};

/** @throws Error where there is no such function; refused calls are results */
export const perform = async <K extends Kind>(kind: K, needs: Needs<K>, around: Around): Promise<Gives<K>> =>
  PERFORMERS[kind](needs, around);
