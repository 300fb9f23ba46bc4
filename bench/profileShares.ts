/** Where the page's main thread spends its time while something is done: by the scripts in the browser's profile. */
import type { CDPSession } from "playwright-core";

/** Milliseconds by whose code ran. */
export interface Shares {
  /** functions.js and notes.js, called by the sheet. */
  readonly functions: number;
  /** The page's own scripts around the engine: arguments, results, slices, files. */
  readonly page: number;
  /** The packages in the page's bundles, nearly all of them the sheet engine's. */
  readonly engine: number;
  /** The panel's scripts, and what they call in functions.js. */
  readonly panel: number;
  /** Collecting garbage, drawing, and what the browser does for itself. */
  readonly browser: number;
}

type Owner = keyof Shares;

/** Microseconds between two looks of the profile. */
const INTERVAL = 200;

/** Which part owns a script of the build. */
function ownerOf(url: string): Owner {
  const name = url.replace(/[?#].*$/, "").replace(/^.*\//, "");
  if (/^(functions|notes)\.js$/.test(name)) return "functions";
  // Bundles of packages alone have a number for a name.
  if (/^preview-\d+\./.test(name)) return "engine";
  if (/^(preview|shim)\b/.test(name)) return "page";
  return name.endsWith(".js") ? "panel" : "browser";
}

interface ProfileNode {
  readonly id: number;
  readonly callFrame: { readonly functionName: string; readonly url: string };
  readonly children?: readonly number[];
}

interface Profile {
  readonly nodes: readonly ProfileNode[];
  readonly samples?: readonly number[];
  readonly timeDeltas?: readonly number[];
}

/** The owner of every node: what the panel calls is the panel's, and the browser's own functions are their caller's. */
function ownersOf(nodes: readonly ProfileNode[]): ReadonlyMap<number, Owner | "idle"> {
  const known = new Map(nodes.map((node) => [node.id, node] as const));
  const owners = new Map<number, Owner | "idle">();
  const visit = (node: ProfileNode, above: Owner): void => {
    const { functionName, url } = node.callFrame;
    const own = url === "" ? above : ownerOf(url);
    const owner = own === "functions" && above === "panel" ? "panel" : own;
    owners.set(node.id, functionName === "(idle)" ? "idle" : owner);
    for (const id of node.children ?? []) {
      const child = known.get(id);
      if (child !== undefined) visit(child, owner);
    }
  };
  const [root] = nodes;
  if (root !== undefined) visit(root, "browser");
  return owners;
}

function sharesIn({ nodes, samples = [], timeDeltas = [] }: Profile): Shares {
  const owners = ownersOf(nodes);
  const shares = { functions: 0, page: 0, engine: 0, panel: 0, browser: 0 };
  for (const [at, id] of samples.entries()) {
    const owner = owners.get(id) ?? "browser";
    // A delta is the time before its sample.
    if (owner !== "idle") shares[owner] += (timeDeltas[at + 1] ?? 0) / 1000;
  }
  return shares;
}

/** Does something and says where the main thread's time went. */
export async function profiled(session: CDPSession, run: () => Promise<void>): Promise<Shares> {
  await session.send("Profiler.enable");
  await session.send("Profiler.setSamplingInterval", { interval: INTERVAL });
  await session.send("Profiler.start");
  await run();
  const { profile } = await session.send("Profiler.stop");
  return sharesIn(profile);
}
