/** Runs every published check of every function, the slow ones too, and tells what differs. */
import type { Catalogue } from "../../../core/kernel/catalogue";
import { verdictsOf, type Verdict } from "../../../core/kernel/check";
import { cite } from "../../../core/kernel/reference";
import type { Desk } from "../desk";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";

/** Lets the page breathe between functions. */
const pause = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

async function verdicts(catalogue: Catalogue, tell: (done: number) => void): Promise<readonly Verdict[]> {
  const found: Verdict[] = [];
  for (const [place, definition] of catalogue.entries()) {
    found.push(...definition.checks.flatMap((check) => verdictsOf(definition, check, catalogue)));
    tell(place + 1);
    await pause();
  }
  return found;
}

const differing = ({ id, what, expected, check }: Verdict): Child =>
  h("li", {}, `${id}${what === "" ? "" : `, ${what}`}: ${cite(check.from)} gives ${String(expected)}.`);

const told = (all: readonly Verdict[]): readonly Child[] => {
  const off = all.filter(({ agrees }) => !agrees);
  return [
    h("p", {}, `${String(all.length - off.length)} of ${counted(all.length, "published value")} agree.`),
    off.length === 0 ? undefined : h("ul", { class: "fault" }, off.map(differing)),
  ];
};

/** The section with the command and, in a live region, what it found. */
export const publishedChecks = (desk: Desk): HTMLElement => {
  const result = h("div", { role: "status", class: "outcome" });
  const run = async (): Promise<void> => {
    const { catalogue } = desk.engine;
    const busy = h("p", { class: "quiet", "aria-live": "off" }, "Working…");
    replace(result, busy);
    const all = await verdicts(catalogue, (done) => {
      busy.textContent = `${String(done)} of ${counted(catalogue.length, "function")}…`;
    });
    replace(result, told(all));
  };
  return h(
    "section",
    { "aria-labelledby": "checks-title" },
    h("h3", { id: "checks-title" }, "Published checks"),
    h(
      "p",
      {},
      "Works every published value again, of slow functions too. In a sheet, NOTE.SELFTEST shows them one by one.",
    ),
    h("p", { class: "actions" }, action("Run the checks", run, { key: "checks" })),
    result,
  );
};
