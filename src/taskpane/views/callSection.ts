/** One call of ours in the selected cell: result, cautions, arguments, working. */
import { basisOf, type CellFunction, NAMESPACE, type CellInput } from "../../../core";
import type { Area } from "../../workbook/port";
import type { ReadCall } from "../../workbook/reader/read";
import { isOutcomeFault } from "../../workbook/values";
import { isCancelled } from "../../workbook/timeSlices";
import type { PanelServices } from "../services";
import { h, markScrollable, replace, type Child } from "../elements";
import type { Explainer } from "../model/explainer";
import type { ExplainedCall } from "../jobs/job";
import { explainedArguments, readArguments } from "./arguments";
import { picturesBox } from "../pictures/box";
import { faultText, resultOf } from "./result";
import { endedBy, progressBox, stoppedBox } from "./progressBox";
import { severityClass, severityMark } from "./severity";
import { workingOf } from "./steps";
import { studySection } from "./study";

/** The place of a call in the view and in the workbook. */
export interface CallPlace {
  readonly key: string;
  /** The cells that its formula fills. */
  readonly area: Area;
  readonly explainer: Explainer;
  /** Cancels the work when the user moves on. */
  readonly signal: AbortSignal;
}

const cautionList = ({ cautions }: ExplainedCall): Child =>
  cautions.length === 0
    ? undefined
    : [
        h("h4", {}, "Cautions"),
        h(
          "ul",
          { class: "plain" },
          cautions.map(({ severity, code, text }) =>
            h(
              "li",
              { class: `caution ${severityClass(severity)}` },
              h("p", {}, severityMark(severity), h("span", { class: "code" }, code)),
              h("p", {}, text),
            ),
          ),
        ),
      ];

const working = (services: PanelServices, explained: ExplainedCall, key: string): HTMLElement =>
  h(
    "details",
    { class: "working", open: true, "data-key": `${key} working` },
    h("summary", { "data-key": `${key} working summary` }, "Working"),
    workingOf(services, explained.working, explained.system),
  );

/** The argument values of a call; undefined if one couldn't be read or is an error. */
const valuesOf = ({ args }: ReadCall): readonly CellInput[] | undefined => {
  const values = args.flatMap((argument) => ("value" in argument ? [argument.value] : []));
  return values.length === args.length ? values : undefined;
};

const explainedParts = (
  services: PanelServices,
  definition: CellFunction,
  explained: ExplainedCall,
  call: ReadCall,
  { key, area, signal }: CallPlace,
): readonly Child[] => {
  const { args } = call;
  const of = { id: definition.id, key, area };
  const { outcome, pictures, system } = explained;
  const refused = isOutcomeFault(outcome) && explained.working.nodes.length === 0;
  return [
    resultOf(definition, outcome, system, basisOf(explained.args)),
    cautionList(explained),
    isOutcomeFault(outcome) ? undefined : picturesBox(services, pictures, of, valuesOf(call)),
    isOutcomeFault(outcome) ? undefined : studySection(services, valuesOf(call), of, signal),
    refused ? readArguments(definition, args) : explainedArguments(explained.args),
    refused ? undefined : working(services, explained, key),
  ];
};

const unexplained = (definition: CellFunction, { args, outcome }: ReadCall): readonly Child[] => [
  outcome !== undefined && isOutcomeFault(outcome) ? faultText(outcome.code, outcome.message) : undefined,
  readArguments(definition, args),
];

interface Due {
  readonly definition: CellFunction;
  readonly call: ReadCall;
  readonly values: readonly CellInput[];
}

/** A place for a call that takes long: shows the arguments until the explanation is ready. */
function workedLater(services: PanelServices, { definition, call, values }: Due, place: CallPlace): HTMLElement {
  const { explainer, key, signal } = place;
  const { id } = definition;
  const body = h("div", { class: "call-body" });
  const meanwhile = (box: HTMLElement): void => replace(body, box, readArguments(definition, call.args));
  const work = async (asked: boolean): Promise<void> => {
    const ending = endedBy(signal);
    const own = `${key} run`;
    const box = progressBox(services, {
      what: `Working out ${id}`,
      key: own,
      cancel: () => ending.abort(),
      asked,
      signal,
    });
    meanwhile(box.root);
    try {
      const explained = await explainer.work(id, values, { signal: ending.signal, onProgress: box.update });
      replace(body, explainedParts(services, definition, explained, call, place));
      markScrollable(body);
    } catch (error) {
      if (signal.aborted) return;
      meanwhile(stoppedBox(error, own, () => work(true)));
      services.readOut(isCancelled(error) ? `Cancelled: ${id}.` : `Not worked out: ${id}.`);
    } finally {
      box.end();
    }
  };
  void work(false);
  return body;
}

/** A call in a section of its own. */
export function callSection(services: PanelServices, call: ReadCall, place: CallPlace): HTMLElement | undefined {
  const definition = services.engine.catalogue.find(({ id }) => id === call.id);
  if (definition === undefined) return undefined;
  const values = valuesOf(call);
  const explained = values && place.explainer.known(call.id, values);
  const parts = (): Child => {
    if (values === undefined) return unexplained(definition, call);
    if (explained === undefined) return workedLater(services, { definition, call, values }, place);
    return explainedParts(services, definition, explained, call, place);
  };
  return h(
    "section",
    { class: "card call" },
    h("h3", { class: "function-name" }, h("span", {}, `${NAMESPACE}.`, h("wbr"), call.id)),
    h("p", {}, definition.summary, " ", helpLink(call.id, place.key)),
    parts(),
  );
}

/** Desktop Excel would open a link in a bare window of its own: ask it for the browser instead, where it can. */
export function openOutside(event: Event): void {
  if (typeof Office === "undefined" || !(event.currentTarget instanceof HTMLAnchorElement)) return;
  const context = Office.context as typeof Office.context | undefined;
  if (context?.requirements?.isSetSupported("OpenBrowserWindowApi", "1.1") !== true) return;
  event.preventDefault();
  context.ui.openBrowserWindow(event.currentTarget.href);
}

/** A link to a function's help page, which opens in a new window. */
export const helpLink = (id: string, key: string): HTMLElement =>
  h(
    "a",
    {
      href: `help/${id}.html`,
      target: "_blank",
      rel: "noopener",
      "data-key": `${key} help`,
      "aria-label": `Help page of ${id} (opens in a new window)`,
      click: openOutside,
    },
    "Help page",
  );
