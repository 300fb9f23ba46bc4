/** The host's side: takes the client's requests, holds the workbook, tells of events. */
import type { Answer, Reply, Request, RequestBody } from "../client/protocol";
import { DELAY_FOR_CELL_EDIT, HostError, REFUSED } from "../client/protocol";
import type { Result, ResultOf } from "../model/cells";
import { newBook } from "../model/workbook";
import type { Profile } from "../profiles";
import { eventHub } from "./events";
import { interpret, labelOf } from "./interpret";
import { object, type Host, type HostParts } from "./objects";
import { noFunctions } from "./cellCalls";
import { isAside, trafficLog } from "./traffic";
import { undoList } from "./undo";

const NO_RESULT: ResultOf = (): Result | undefined => undefined;

function headersOf(list: unknown): Record<string, string> {
  const flat = list as readonly string[];
  const headers: Record<string, string> = {};
  for (let at = 0; at + 1 < flat.length; at += 2) headers[flat[at] ?? ""] = flat[at + 1] ?? "";
  return headers;
}

/** The client's message: custom data, method, path, headers, body, permission, flags … */
function requestOf([customData, , , headers, body, , flags]: readonly unknown[]): Request {
  const text = String(body);
  return {
    body: JSON.parse(text) as RequestBody,
    bytes: Buffer.byteLength(text),
    flags: Number(flags),
    headers: headersOf(headers),
    customData: String(customData),
  };
}

const textOf = ({ Results, TraceIds, Error: error }: Answer): string =>
  JSON.stringify({ Results, TraceIds, ...(error && { Error: error }) });

const refused = (name: keyof typeof REFUSED): Reply => ({ refused: REFUSED[name], message: name });

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

export function makeHost(profile: Profile, sheets: readonly string[], parts: HostParts): Host {
  let waiting: (() => void)[] = [];
  let count = 0;
  let kept = 0;
  let pending = 0;

  /** Undefined where the request may be carried out. */
  async function admit(request: Request, number: number): Promise<Reply | undefined> {
    if (profile.payload !== undefined && request.bytes > profile.payload)
      return refused("RequestPayloadSizeLimitExceeded");
    const refusal = number < 0 ? undefined : host.refusal?.(number);
    if (refusal !== undefined) return refused(refusal);
    if (host.editing && (request.flags & DELAY_FOR_CELL_EDIT) === 0) return refused("InvalidOperationInCellEditMode");
    while (host.editing) await new Promise<void>((resolve) => waiting.push(resolve));
    return undefined;
  }

  async function receive(message: readonly unknown[]): Promise<Reply> {
    pending += 1;
    try {
      return await answer(message);
    } finally {
      pending -= 1;
    }
  }

  async function answer(message: readonly unknown[]): Promise<Reply> {
    const request = requestOf(message);
    const aside = isAside(request);
    const number = aside ? -1 : count++;
    const entry = host.traffic.add(request);
    await turn();
    const reply = await admit(request, number);
    if (reply !== undefined) return reply;
    if (!aside) host.before?.(number, request);
    const text = textOf(interpret(host, request, number));
    entry.answerBytes = Buffer.byteLength(text);
    host.events.flush();
    return profile.payload !== undefined && entry.answerBytes > profile.payload
      ? refused("ResponsePayloadSizeLimitExceeded")
      : { text };
  }

  const host: Host = {
    profile,
    types: parts.types,
    book: newBook(...sheets),
    events: eventHub(),
    traffic: trafficLog(),
    undo: undoList(),
    unknown: [],
    references: new Map(),
    created: [],
    dirty: [],
    functions: noFunctions,
    paneVisible: true,
    resultOf: NO_RESULT,
    pending: () => pending,
    editing: false,
    inFront: true,
    fault: undefined,
    refusal: undefined,
    before: undefined,
    keep(on) {
      const id = `reference ${String(++kept)}`;
      host.references.set(id, on);
      return id;
    },
    root: ({ customData }) => object(customData === "WacPartition" ? "WacWorkbook" : "Workbook", null),
    service(name) {
      const type = parts.services[name];
      return type && object(type, null);
    },
    meet(request, action, index) {
      if (host.fault === undefined) return;
      // The runtime of the custom functions starts by itself: tests break off what goes to the workbook, or makes one.
      if (isAside(request) && request.customData !== "WacPartition") return;
      const code = host.fault({ request, action, index, label: labelOf(request, action) });
      if (code !== undefined) throw new HostError(code);
    },
    receive,
    finishEditing() {
      host.editing = false;
      const released = waiting;
      waiting = [];
      for (const go of released) go();
    },
  };
  return host;
}
