/** Carries out a request: resolves its object paths, performs its actions in order, stops at the first that fails. */
import type { Action, Answer, ArgumentInfo, ObjectPath, QueryInfo, Request } from "../client/protocol";
import { HostError } from "../client/protocol";
import { checkSet, checkUndo, documented } from "./gate";
import type { Host } from "./objects";
import { isObject, type Given, type HostObject, type ObjectType } from "./objects";
import { query, stamp } from "./query";

/** One request under way. */
interface Session {
  readonly host: Host;
  readonly request: Request;
  readonly objects: Map<number, HostObject | null>;
  /** The undo group, or the request itself where it belongs to none. */
  readonly group: string;
  readonly grouped: boolean;
}

/** The header in which a run's undo group reaches the host: ours, since this client knows no groups yet. */
export const GROUP_HEADER = "x-undo-group";

const typeOf = (host: Host, { type }: HostObject): ObjectType<unknown> => host.types[type] as ObjectType<unknown>;

function unknown(host: Host, member: string): never {
  host.unknown.push(member);
  throw new HostError("NotImplemented", `the stand-in doesn't know ${member}: add it in test/excelHost/members`);
}

function changed({ host, group, grouped }: Session, type: string, name: string): void {
  if (grouped) checkUndo(host.profile, type, name);
  host.undo.changed(host.profile.platform, documented(type, name), group);
}

/** Arguments with the objects that they name in place. */
function argumentsOf(session: Session, info: ArgumentInfo | undefined): readonly unknown[] {
  const ids = info?.ReferencedObjectPathIds ?? [];
  return (info?.Arguments ?? []).map((value, at) => {
    const id = ids[at];
    return typeof id === "number" && id > 0 ? resolve(session, id) : value;
  });
}

function call(session: Session, on: HostObject, name: string, info: ArgumentInfo | undefined): Given {
  const { host } = session;
  checkSet(host.profile, on.type, name, false);
  const type = typeOf(host, on);
  const change = type.changes?.[name];
  if (name === "_KeepReference") {
    on.kept ??= host.keep(on);
    return { value: null };
  }
  if (/^_(?:R|Unr)egister\w*Event$/.test(name)) return { value: null };
  const method = type.methods?.[name] ?? change ?? unknown(host, documented(on.type, name));
  if (change !== undefined) changed(session, on.type, name);
  return method(on.target, argumentsOf(session, info), host);
}

function resolve(session: Session, id: number): HostObject | null {
  const known = session.objects.get(id);
  if (known !== undefined) return known;
  const path = session.request.body.ObjectPaths[String(id)];
  if (path === undefined) throw new HostError("InvalidObjectPath");
  const found = follow(session, path);
  session.objects.set(id, found);
  return found;
}

function follow(session: Session, path: ObjectPath): HostObject | null {
  const { host } = session;
  const { ObjectPathType: kind, Name: name } = path;
  if (kind === 1) return host.root(session.request);
  if (kind === 2) return host.service(name) ?? unknown(host, name);
  if (kind === 6) return host.references.get(name) ?? gone();
  if (kind === 7 || path.ParentObjectPathId === undefined) return null;
  const parent = resolve(session, path.ParentObjectPathId);
  if (parent === null) return null;
  const type = typeOf(host, parent);
  if (kind === 4) {
    checkSet(host.profile, parent.type, name, false);
    const part = type.parts?.[name] ?? unknown(host, documented(parent.type, name));
    return part(parent.target, host);
  }
  if (kind === 5) {
    const [key] = argumentsOf(session, path.ArgumentInfo);
    if (type.item === undefined) return unknown(host, `${parent.type}.getItem`);
    return type.item(parent.target, key, host) ?? missing();
  }
  const given = call(session, parent, name, path.ArgumentInfo);
  if (given === null || isObject(given)) return given;
  return unknown(host, `${documented(parent.type, name)} as an object`);
}

const gone = (): never => {
  throw new HostError("InvalidObjectPath");
};
const missing = (): never => {
  throw new HostError("ItemNotFound");
};

function setProperty(session: Session, on: HostObject, { Name: name, ArgumentInfo: info }: Action): void {
  const { host } = session;
  checkSet(host.profile, on.type, name, true);
  const property = typeOf(host, on).properties?.[name];
  if (property?.set === undefined) return unknown(host, `${documented(on.type, name)} to set`);
  changed(session, on.type, name);
  property.set(on.target, argumentsOf(session, info)[0], host);
}

function perform(session: Session, action: Action): unknown {
  if (action.ActionType === 5) return null;
  const on = resolve(session, action.ObjectPathId);
  if (action.ActionType === 1) return on === null ? null : stamp(session.host, on);
  if (action.ActionType === 2) {
    const info: QueryInfo = action.QueryInfo ?? {};
    return on === null ? null : query(session.host, on, info);
  }
  if (action.ActionType === 3) {
    if (on === null) return action.Name === "_KeepReference" ? null : gone();
    const given = call(session, on, action.Name, action.ArgumentInfo);
    return given !== null && !isObject(given) ? given.value : null;
  }
  if (action.ActionType === 4) return on === null ? gone() : (setProperty(session, on, action), null);
  return unknown(session.host, `actions of type ${String(action.ActionType)}`);
}

/** What an action is, as tests name it: "Worksheet.copy", "set Range.formulas", "load Range". */
export function labelOf(request: Request, action: Action): string {
  const path = request.body.ObjectPaths[String(action.ObjectPathId)];
  if (action.ActionType === 5) return "trace";
  const on = path === undefined ? "" : pathLabel(request, path);
  if (action.ActionType === 1) return on;
  if (action.ActionType === 2) return `load ${on}`;
  return action.ActionType === 4 ? `set ${on}.${action.Name}` : `${on}.${action.Name}`;
}

function pathLabel(request: Request, { ObjectPathType: kind, Name: name, ParentObjectPathId: id }: ObjectPath): string {
  if (kind === 1) return "root";
  if (kind === 6) return "kept";
  if (kind === 7) return "null";
  const parent = id === undefined ? undefined : request.body.ObjectPaths[String(id)];
  const own = kind === 5 ? "item" : name;
  return parent === undefined || parent.ObjectPathType !== 4 ? own : `${parent.Name}.${own}`;
}

/** @returns what the client reads: results up to the action that failed, and its error */
export function interpret(host: Host, request: Request, number: number): Answer {
  const group = request.headers[GROUP_HEADER];
  const session: Session = {
    host,
    request,
    objects: new Map(),
    group: group ?? `request ${String(number)}`,
    grouped: group !== undefined,
  };
  const results: { ActionId: number; Value: unknown }[] = [];
  const traces: number[] = [];
  for (const [index, action] of request.body.Actions.entries()) {
    try {
      host.meet(request, action, index);
      results.push({ ActionId: action.Id, Value: perform(session, action) });
      if (action.ActionType === 5) traces.push(action.Id);
    } catch (error) {
      if (!(error instanceof HostError)) throw error;
      const answer = { Code: error.code, Message: error.message, ActionIndex: index, Location: action.Name };
      return { Results: results, TraceIds: traces, Error: answer };
    }
  }
  return { Results: results, TraceIds: traces };
}
