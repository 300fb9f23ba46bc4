/** A small server of a finished build, on this machine only, with the headers that are published. */
import { execFile } from "node:child_process";
import { realpath } from "node:fs/promises";
import { createServer } from "node:http";
import type { IncomingMessage, ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join, normalize, sep } from "node:path";
import { headersFor } from "../manifest/headers";
import { acceptedCoding, servedFiles } from "./servedFiles";

export interface Served {
  readonly address: string;
  close(): Promise<void>;
}

export interface ServeOptions {
  /** The build's folder. */
  readonly folder: string;
  /** The first port to try; 0 takes any free one. */
  readonly port: number;
  /** Opens a browser, if there is a screen. */
  readonly open: boolean;
  /** A connection over which nothing has moved for so long is closed. */
  readonly stallMs?: number;
}

const PORTS_TO_TRY = 20;
const STALL_MS = 30_000;

/** A page of another site whose name was turned to this machine sends its own name (DNS rebinding). */
const OWN_NAMES = new Set(["localhost", "127.0.0.1"]);

const isOwnName = (host: string | undefined): boolean => OWN_NAMES.has((host ?? "").toLowerCase().replace(/:\d+$/, ""));

/** A requested path inside the build; undefined if it leads out of it or to a name that begins with a dot. */
const pathOf = (url: string): string | undefined => {
  const path = normalize(decodeURIComponent(new URL(url, "http://localhost").pathname)).replaceAll("\\", "/");
  if (path.split("/").some((name) => name.startsWith("."))) return undefined;
  return path.endsWith("/") ? `${path}index.html` : path;
};

/** The file at a path; undefined where a symbolic link is on the way. */
const fileAt = async (folder: string, path: string): Promise<string | undefined> => {
  const file = join(await realpath(folder), path.split("/").join(sep));
  return (await realpath(file)) === file ? file : undefined;
};

const ERROR_HEADERS = {
  "Content-Type": "text/plain; charset=utf-8",
  "Cache-Control": "no-store",
  "X-Content-Type-Options": "nosniff",
};

const answer = async (
  folder: string,
  read: ReturnType<typeof servedFiles>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> => {
  const refuse = (status: number, text: string, more: Readonly<Record<string, string>> = {}): void => {
    response.writeHead(status, { ...ERROR_HEADERS, ...more }).end(request.method === "HEAD" ? undefined : text);
  };
  const { headers, method } = request;
  if (!isOwnName(headers.host)) return refuse(421, "this server answers to localhost only");
  if (method !== "GET" && method !== "HEAD") return refuse(405, "only GET and HEAD", { Allow: "GET, HEAD" });
  try {
    const path = pathOf(request.url ?? "/");
    const file = path === undefined ? undefined : await fileAt(folder, path);
    if (path === undefined || file === undefined) return refuse(404, "not found");
    const { body, coding, tag } = await read(file, acceptedCoding(headers["accept-encoding"]?.toString()));
    const caching = { ...headersFor(path), ETag: tag, Vary: "Accept-Encoding" };
    if (headers["if-none-match"] === tag) {
      response.writeHead(304, caching).end();
      return;
    }
    response
      .writeHead(200, { ...caching, "Content-Length": body.length, ...(coding && { "Content-Encoding": coding }) })
      .end(method === "HEAD" ? undefined : body);
  } catch {
    refuse(404, "not found");
  }
};

const openBrowser = (address: string): void => {
  const { platform, env } = process;
  const command = platform === "darwin" ? "open" : platform === "win32" ? "explorer" : "xdg-open";
  if (command === "xdg-open" && env["DISPLAY"] === undefined && env["WAYLAND_DISPLAY"] === undefined) return;
  // A missing browser is no error: the address is printed.
  execFile(command, [address], () => undefined);
};

/** Serves a build until it is closed. */
export const serve = async ({ folder, port, open, stallMs = STALL_MS }: ServeOptions): Promise<Served> => {
  const read = servedFiles();
  const server = createServer((request, response) => void answer(folder, read, request, response));
  server.timeout = stallMs;
  const listen = (at: number): Promise<void> =>
    new Promise((resolve, reject) => {
      server.once("error", reject);
      server.listen(at, "127.0.0.1", () => {
        server.off("error", reject);
        resolve();
      });
    });
  for (let at = port; ; at += 1) {
    try {
      await listen(at);
      break;
    } catch (thrown) {
      const taken = thrown instanceof Error && "code" in thrown && thrown.code === "EADDRINUSE";
      if (!taken || at >= port + PORTS_TO_TRY) throw thrown;
    }
  }
  const address = `http://localhost:${String((server.address() as AddressInfo).port)}/`;
  if (open) openBrowser(address);
  return {
    address,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
};
