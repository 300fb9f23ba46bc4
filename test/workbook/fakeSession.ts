/**
 * The load and sync discipline of office-addin-mock, with what it lacks: proxies made by methods, writes that take
 * effect at the sync, null objects, events.
 */
import { OfficeMockObject } from "office-addin-mock";
import type { FakeWorkbook } from "./fakeModel";

export async function fire(book: FakeWorkbook, event: string, details: object): Promise<void> {
  for (const handler of book.events.get(event) ?? []) await handler(details);
}

export type Bag = Record<string, unknown>;
/** The mock's own way to give a property its value, private to its types only. */
type Settable = { setValue(name: string, value: unknown): void };

export interface Session {
  readonly book: FakeWorkbook;
  queue: (() => void)[];
  loads: { mock: OfficeMockObject; load: (names: string) => void; names: string; fresh: (name: string) => unknown }[];
  nulls: { target: Bag; absent: () => boolean }[];
  /** Events that this batch sets off. */
  after: (() => Promise<void>)[];
}

/** A proxy object: `values` are loaded by name, `setters` take effect at the next sync. */
export function proxy(
  session: Session,
  values: Record<string, () => unknown>,
  methods: Bag,
  setters: Record<string, (value: unknown) => void> = {},
  absent: () => boolean = () => false,
): unknown {
  const shape: Bag = {};
  for (const name of Object.keys(values)) {
    const [outer = name, inner] = name.split("/");
    if (outer !== "items" && inner !== undefined) shape[outer] = { ...(shape[outer] as Bag | undefined), [inner]: 0 };
    else shape[outer] = 0;
  }
  const mock = new OfficeMockObject(shape, "excel" as never);
  const target = mock as unknown as Bag;
  const load = mock.load.bind(mock);
  target["load"] = (names: string) => {
    const flat = names.replace(/items\/[\w/]+/g, "items");
    for (const name of names.split(",")) if (!(name.trim() in values)) throw new Error(`no property ${name} to load`);
    load(flat);
    session.loads.push({ mock, load, names, fresh: (name) => (absent() ? undefined : values[name]?.()) });
    return target;
  };
  target["isNullObject"] = "Error, isNullObject was read before a sync";
  session.nulls.push({ target, absent });
  Object.assign(target, methods);
  return new Proxy(target, {
    set(_, name, value: unknown) {
      const setter = setters[String(name)];
      if (setter === undefined) throw new Error(`nothing to set called ${String(name)}`);
      session.queue.push(() => setter(value));
      return true;
    },
  });
}

/** Carries out what was queued, then gives what was loaded. */
export async function sync(session: Session): Promise<void> {
  session.book.syncs++;
  const { queue, loads } = session;
  session.queue = [];
  session.loads = [];
  for (const step of queue) step();
  for (const { target, absent } of session.nulls) target["isNullObject"] = absent();
  for (const { mock, load, names, fresh } of loads) {
    for (const name of names.split(",").map((one) => one.trim())) {
      const [outer = name, inner] = name.split("/");
      const value = fresh(name);
      if (outer === "items" || inner === undefined) (mock as unknown as Settable).setValue(outer, value);
      else (mock as unknown as Record<string, Settable>)[outer]?.setValue(inner, value);
    }
    load(names.replace(/items\/[\w/]+/g, "items"));
    await mock.sync();
  }
  await new Promise((resolve) => setImmediate(resolve));
  for (const tell of session.after.splice(0)) void tell();
}
