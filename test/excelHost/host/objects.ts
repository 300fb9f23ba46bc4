/** Excel's objects as tables of members: the members' names are Excel's, their first letter large as in requests. */
import type { Targets, TypeName } from "../members/targets";
import type { Action, REFUSED, Reply, Request } from "../client/protocol";
import type { ResultOf } from "../model/cells";
import type { BookModel } from "../model/workbook";
import type { Profile } from "../profiles";
import type { FunctionCalls } from "./cellCalls";
import type { EventHub } from "./events";
import type { TrafficLog } from "./traffic";
import type { UndoList } from "./undo";

/** Which action a fault hits, and the code that it answers. */
export type Fault = (met: { request: Request; action: Action; index: number; label: string }) => string | undefined;

export interface Host {
  readonly profile: Profile;
  readonly types: Types;
  readonly book: BookModel;
  readonly events: EventHub;
  readonly traffic: TrafficLog;
  readonly undo: UndoList;
  /** Members that the stand-in was asked for and doesn't know: a test that leaves one here fails. */
  readonly unknown: string[];
  /** Objects that the client keeps between requests. */
  readonly references: Map<string, HostObject>;
  /** Base-64 files of workbooks that were made and opened. */
  readonly created: string[];
  /** Areas that were marked dirty, "Sheet1!A1:B2". */
  readonly dirty: string[];
  /** Calls of cell functions that are out. */
  functions: FunctionCalls;
  /** The pane shows; else its page runs hidden. */
  paneVisible: boolean;
  /** What formulas come to, where a test says so. */
  resultOf: ResultOf;
  /** Requests that have no answer yet. */
  readonly pending: () => number;
  /** The user edits a cell. */
  editing: boolean;
  /** The workbook has the focus; else another one has. */
  inFront: boolean;
  fault: Fault | undefined;
  /** Refuses whole requests, by the name of the common API's error. */
  refusal: ((number: number) => keyof typeof REFUSED | undefined) | undefined;
  /** Runs before a request is carried out: someone else's edit between two syncs. Counts from 0. */
  before: ((number: number, request: Request) => void) | undefined;
  keep(on: HostObject): string;
  root(request: Request): HostObject;
  service(name: string): HostObject | undefined;
  meet(request: Request, action: Action, index: number): void;
  receive(message: readonly unknown[]): Promise<Reply>;
  /** The user finishes editing: requests that wait go on. */
  finishEditing(): void;
}

/** The objects that the host knows, and how the client names those that it makes itself. */
export interface HostParts {
  readonly types: Types;
  readonly services: Readonly<Record<string, TypeName>>;
}

/** An object that a request works on. */
export interface HostObject {
  readonly type: TypeName;
  readonly target: unknown;
  /** Set once the client asks to keep the object from one request to the next. */
  kept?: string;
}

export interface Property<T> {
  get?(target: T, host: Host): unknown;
  set?(target: T, value: unknown, host: Host): void;
}

/** What a method gives: an object, null for a null object, or a plain value. */
export type Given = HostObject | null | { readonly value: unknown };

export interface Method<T> {
  (target: T, args: readonly unknown[], host: Host): Given;
}

/** What the stand-in knows of one kind of object. A member that is not here fails by its name. */
export interface ObjectType<T> {
  /** By what its collection finds it again; missing for objects that no collection holds. */
  id?(target: T): string;
  readonly properties?: Readonly<Record<string, Property<T>>>;
  /** Objects within it. */
  readonly parts?: Readonly<Record<string, (target: T, host: Host) => HostObject | null>>;
  /** Methods that change nothing in the workbook. */
  readonly methods?: Readonly<Record<string, Method<T>>>;
  /** Methods that change it: what can't be undone is refused in an undo group. */
  readonly changes?: Readonly<Record<string, Method<T>>>;
  /** Of a collection: what it holds. */
  items?(target: T, host: Host): readonly HostObject[];
  /** Of a collection: the item of a name or id; undefined where it has none. */
  item?(target: T, key: unknown, host: Host): HostObject | undefined;
}

export type Types = { readonly [K in TypeName]: ObjectType<Targets[K]> };
/** Tables of members for some of the objects. */
export type SomeTypes = Partial<Types>;

export const object = <K extends TypeName>(type: K, target: Targets[K]): HostObject => ({ type, target });

/** The same, with a null object where there is nothing. */
export const objectOrNull = <K extends TypeName>(type: K, target: Targets[K] | undefined): HostObject | null =>
  target === undefined ? null : object(type, target);

/** A method that gives nothing. */
export const NOTHING: Given = { value: null };

export const isObject = (given: unknown): given is HostObject =>
  typeof given === "object" && given !== null && "type" in given && "target" in given;

/** Properties that are kept and given back as they came. */
export function plain<T>(
  names: readonly string[],
  get: (target: T, name: string) => unknown,
  set: (target: T, name: string, value: unknown, host: Host) => void,
): Readonly<Record<string, Property<T>>> {
  const property = (name: string): Property<T> => ({
    get: (target) => get(target, name),
    set: (target, value, host) => set(target, name, value, host),
  });
  return Object.fromEntries(names.map((name) => [name, property(name)]));
}
