/**
 * A stand-in for Excel that is as strict as Excel: Microsoft's own client library, whole and unchanged, in front of a
 * host of ours that carries out its requests over a plain workbook in memory. The library brings the proxies, the
 * batches, PropertyNotLoaded, InvalidObjectPath and the custom-functions runtime; the host brings what only Excel
 * enforces. There is no calculation: tests say what formulas come to (`host.resultOf`, `setResult`).
 *
 *   const excel = excelHost(WEB, ["Sheet1", "Data"]);
 *   const restore = install(excel);          // Excel, Office and CustomFunctions where the product looks for them
 *   …                                        // the product's own commands
 *   expect(excel.host.traffic.requests()).toBe(3);
 *   restore();                               // fails where a member was asked for that the stand-in doesn't know
 *
 * To add a member: put it into the table of its object in members/ under its name in requests (first letter large):
 *   `properties` with get and set, `parts` for objects within, `methods` that change nothing, `changes` that do. A new
 *   object gets a line in members/targets.ts first. Its API set comes from sets/apiSets.json; after an update of
 *   @types/office-js write that anew (sets/write.mts). What can't be undone stands in host/undo.ts.
 * To add a profile: one line in profiles.ts. Every contract test then runs on it too.
 * To add an oddity: one function in oddities.ts that puts a workbook or the host into that state, and one test in
 *   oddities.test.ts that shows it through the library, its source (documentation or issue) beside it.
 * To break a command off at an action: faults.ts.
 */
import { GROUP_HEADER } from "./host/interpret";
import { makeHost } from "./host/host";
import type { Host } from "./host/objects";
import { functionCalls } from "./host/functions";
import { loadClient, type Client } from "./client/load";
import { officeStub, type OfficeStub } from "./client/office";
import { TYPES } from "./members";
import { SERVICES } from "./members/services";
import { atMost, type Profile } from "./profiles";

export interface ExcelStandIn {
  readonly host: Host;
  readonly client: Client;
  readonly office: OfficeStub;
  /** The library's Excel, its `run` with undo groups: they came with ExcelApi 1.20, after this library. */
  readonly Excel: typeof Excel;
}

type Batch = (context: Excel.RequestContext) => Promise<unknown>;

/** Runs with `mergeUndoGroup` mark their requests, so that the host knows what belongs together. */
function withUndoGroups(client: Client, { profile }: Host): typeof Excel {
  let groups = 0;
  const real = client.Excel.run as unknown as (...args: readonly unknown[]) => Promise<unknown>;
  function run(...args: readonly unknown[]): Promise<unknown> {
    const [options, batch] = args as [Excel.RunOptions | undefined, Batch | undefined];
    if (options?.mergeUndoGroup !== true || batch === undefined || !atMost("1.20", profile.api)) return real(...args);
    const group = `group ${String(++groups)}`;
    return real(options, (context: Excel.RequestContext) => {
      context.requestHeaders[GROUP_HEADER] = group;
      return batch(context);
    });
  }
  return Object.assign(Object.create(client.Excel) as typeof Excel, { run });
}

/** A freshly opened Excel with one workbook. */
export function excelHost(profile: Profile, sheets: readonly string[] = ["Sheet1"]): ExcelStandIn {
  const host = makeHost(profile, sheets, { types: TYPES, services: SERVICES });
  const office = officeStub(profile);
  const client = loadClient({ send: (message) => host.receive(message) }, office.office, profile.platform);
  host.events.tell = client.tell;
  host.events.tellSelection = office.selectionChanged;
  host.functions = functionCalls(host);
  return { host, client, office, Excel: withUndoGroups(client, host) };
}

/**
 * Puts Excel where the product looks for it.
 * @returns what takes it away again; it throws where the product used a member that the stand-in doesn't know
 */
export function install({ host, client, office, Excel }: ExcelStandIn): () => void {
  const globals = globalThis as unknown as Record<string, unknown>;
  const names = ["Excel", "Office", "OfficeExtension", "CustomFunctions"];
  const before = names.map((name) => [name, globals[name]] as const);
  Object.assign(globals, {
    Excel,
    Office: office.office,
    OfficeExtension: client.OfficeExtension,
    CustomFunctions: client.CustomFunctions,
  });
  return () => {
    for (const [name, value] of before) globals[name] = value;
    if (host.unknown.length > 0) throw new Error(`the stand-in doesn't know ${[...new Set(host.unknown)].join(", ")}`);
  };
}

export { cellAt, formatAt, sheetNamed } from "./model/workbook";
export { addTable } from "./members/tables";
export { setResult } from "./model/cells";
export * from "./model/edits";
export * from "./profiles";
