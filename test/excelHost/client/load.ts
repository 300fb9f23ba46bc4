/**
 * Loads Microsoft's client library, whole and unchanged, into a context of its own: its state (event registrations,
 * custom functions) is that of one page. The page around it is the least that the library asks for.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import vm from "node:vm";
import type { Platform } from "../profiles";
import type { Reply } from "./protocol";

const file = (name: string): string => createRequire(import.meta.url).resolve(`@microsoft/office-js/dist/${name}`);

/** The library of Excel on the web. The desktops' differ in their channel to the host, which is ours here anyway. */
export const CLIENT = file("excel-web-16.00.debug.js");
const LOADER = file("office.debug.js");

/** Of office.js itself only the list of associated functions is needed: between these marks. Its rest looks for a host. */
const LIST_FROM = "(function (OfficeExt) {\n    var Association";
const LIST_TO = "(function (Office) {\n    var actions";

const scripts = new Map<string, vm.Script>();

function script(name: string, text: () => string): vm.Script {
  const known = scripts.get(name) ?? new vm.Script(text(), { filename: name });
  scripts.set(name, known);
  return known;
}

function associations(): string {
  const text = readFileSync(LOADER, "utf8").replaceAll("\r\n", "\n");
  const from = text.indexOf(LIST_FROM);
  const to = text.indexOf(LIST_TO, from);
  if (from < 0 || to < 0) throw new Error(`${LOADER} no longer has its list of associated functions between the marks`);
  return `var OfficeExt = {};\n${text.slice(from, to)}`;
}

/** What the library sends and what it listens to. */
export interface Channel {
  send(message: readonly unknown[]): Promise<Reply>;
}

type Handler = (message: unknown) => void;

export interface Client {
  readonly Excel: typeof Excel;
  readonly Office: Record<string, unknown>;
  readonly OfficeExtension: typeof OfficeExtension;
  readonly CustomFunctions: Record<string, unknown>;
  /** Gives a message of the host to everyone who listens. */
  tell(message: { readonly entries: readonly object[] }): void;
}

/** Timers that keep no test run waiting: the library repeats a failed clean-up after five seconds. */
const later = (call: () => void, wait?: number, ...rest: unknown[]): NodeJS.Timeout =>
  setTimeout(call, wait, ...(rest as [])).unref();

function page(office: Record<string, unknown>, hostPlatform: string): Record<string, unknown> {
  const { context } = office;
  const hostInfo = { hostType: "excel", hostPlatform, flags: 2 };
  const quiet = { ...console, warn: () => undefined, log: () => undefined };
  const window: Record<string, unknown> = {
    ...{ console: quiet, setTimeout: later, clearTimeout, setInterval, clearInterval, performance },
    // Shared with the tests, so that "instanceof Error" holds on both sides.
    ...{ Promise, Error, JSON, Date },
    navigator: { userAgent: "", language: "en-us" },
    location: { href: "https://addin.example/taskpane.html", protocol: "https:", search: "", hash: "", host: "" },
    document: { readyState: "complete", addEventListener: () => undefined },
    addEventListener: () => undefined,
    Microsoft: { Office: { WebExtension: office } },
    Office: office,
    // As office.js leaves it in a shared runtime: bit 2 of the flags starts the custom functions.
    OSF: { _OfficeAppFactory: { getHostInfo: () => hostInfo, getContext: () => context } },
  };
  for (const name of ["window", "self", "top", "parent"]) window[name] = window;
  return window;
}

/** What office.js calls the platforms. On "web" the library sends each change a second time, for a preview of it. */
const PLATFORMS = { web: "web", windows: "win32", mac: "mac" } as const;

/** @param office what office.js has already laid down when the library comes: context, onReady and the like */
export function loadClient(channel: Channel, office: Record<string, unknown>, platform: Platform): Client {
  const window = page(office, PLATFORMS[platform]);
  const context = vm.createContext(window);
  script(LOADER, associations).runInContext(context);
  script(CLIENT, () => readFileSync(CLIENT, "utf8")).runInContext(context);
  const handlers: Handler[] = [];
  const osf = window["OSF"] as { DDA: { RichApi: Record<string, unknown> } };
  Object.assign(osf.DDA.RichApi, {
    executeRichApiRequestAsync: (message: readonly unknown[], done: (result: unknown) => void) =>
      void channel.send(message).then((reply) => done(resultOf(reply))),
    richApiMessageManager: {
      register: (handler: Handler) => Promise.resolve(void handlers.push(handler)),
    },
  });
  return {
    Excel: window["Excel"] as typeof Excel,
    Office: window["Office"] as Record<string, unknown>,
    OfficeExtension: window["OfficeExtension"] as typeof OfficeExtension,
    CustomFunctions: window["CustomFunctions"] as Record<string, unknown>,
    tell: (message) => {
      for (const handler of handlers) handler(message);
    },
  };
}

const resultOf = (reply: Reply): object =>
  "text" in reply
    ? { status: "succeeded", value: { data: [200, [], reply.text] } }
    : { status: "failed", error: { code: reply.refused, message: reply.message } };
