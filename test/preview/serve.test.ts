/** The local server of a build. Codings and tags: RFC 9110, sections 8.4, 8.8.3, 12.5.3 and 15.4.5. */
import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { createServer, request } from "node:http";
import type { IncomingHttpHeaders } from "node:http";
import { connect } from "node:net";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { headersFor } from "../../manifest/headers";
import { serve } from "../../scripts/serve";
import type { Served } from "../../scripts/serve";

const LONG = "const pool = 1;\n".repeat(500);

let folder: string;
let served: Served;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "warmback-"));
  await writeFile(join(folder, "index.html"), "<p>start</p>");
  await writeFile(join(folder, "functions.json"), "{}");
  await writeFile(join(folder, "long.js"), LONG);
  await writeFile(join(folder, "picture.png"), LONG);
  served = await serve({ folder, port: 0, open: false });
});
afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

test("The start page comes with the published headers", async () => {
  const answer = await fetch(served.address);
  expect(await answer.text()).toBe("<p>start</p>");
  for (const [name, value] of Object.entries(headersFor("/index.html"))) expect(answer.headers.get(name)).toBe(value);
});

test("A file's own headers come with it, and HEAD sends no body", async () => {
  const answer = await fetch(`${served.address}functions.json`, { method: "HEAD" });
  expect(answer.headers.get("content-type")).toBe(headersFor("functions.json")["Content-Type"]);
  expect(await answer.text()).toBe("");
});

test("What isn't there, or lies outside the build, is not found; other methods are refused", async () => {
  expect((await fetch(`${served.address}missing.js`)).status).toBe(404);
  expect((await fetch(served.address, { method: "POST" })).status).toBe(405);
  // fetch would tidy the path itself.
  const status = await new Promise<number | undefined>((resolve) => {
    request(served.address, { path: "/..%2f..%2fetc/passwd" }, (answer) => resolve(answer.resume().statusCode)).end();
  });
  expect(status).toBe(404);
});

test("A taken port gives way to the next", async () => {
  const blocker = createServer();
  await new Promise<void>((resolve) => blocker.listen(0, "127.0.0.1", resolve));
  const { port } = blocker.address() as AddressInfo;
  const other = await serve({ folder, port, open: false });
  expect(Number(new URL(other.address).port)).toBeGreaterThan(port);
  await other.close();
  blocker.close();
});

interface Raw {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

/** The bytes as sent: fetch would decode them. */
const raw = (path: string, headers: Record<string, string>): Promise<Raw> =>
  new Promise((resolve, reject) => {
    request(served.address + path, { headers }, (answer) => {
      const parts: Buffer[] = [];
      answer.on("data", (part: Buffer) => parts.push(part));
      answer.on("end", () =>
        resolve({ status: answer.statusCode, headers: answer.headers, body: Buffer.concat(parts) }),
      );
    })
      .on("error", reject)
      .end();
  });

test.each([
  ["gzip, deflate, br", "br", brotliDecompressSync],
  ["gzip", "gzip", gunzipSync],
  ["br;q=0, gzip;q=0.5", "gzip", gunzipSync],
])("A text is sent in the best coding that %s accepts", async (accepted, coding, decode) => {
  const { headers, body } = await raw("long.js", { "accept-encoding": accepted });
  expect(headers["content-encoding"]).toBe(coding);
  expect(headers.vary).toBe("Accept-Encoding");
  expect(body.length).toBeLessThan(LONG.length / 10);
  expect(Number(headers["content-length"])).toBe(body.length);
  expect(decode(body).toString()).toBe(LONG);
});

test.each([
  ["long.js", {}],
  ["picture.png", { "accept-encoding": "br" }],
  ["functions.json", { "accept-encoding": "br" }],
])("%s is sent as it is where a coding isn't asked for or gains nothing", async (path, headers) => {
  expect((await raw(path, headers)).headers["content-encoding"]).toBeUndefined();
});

test("A file that the browser has isn't sent again until it changes", async () => {
  const accepted = { "accept-encoding": "br" };
  await writeFile(join(folder, "changing.js"), LONG);
  const { headers } = await raw("changing.js", accepted);
  const known = { ...accepted, "if-none-match": headers.etag ?? "" };
  const again = await raw("changing.js", known);
  expect([again.status, again.body.length]).toEqual([304, 0]);
  await writeFile(join(folder, "changing.js"), `${LONG}const sun = 2;`);
  expect((await raw("changing.js", known)).status).toBe(200);
});

test.each([
  ["a file whose name begins with a dot", ".env"],
  ["a file in a folder whose name begins with a dot", ".cache/notes.txt"],
  ["a link to a file outside the build", "link.txt"],
  ["a file in a linked folder", "linked/secret.txt"],
])("Refuses %s", async (_, path) => {
  const outside = await mkdtemp(join(tmpdir(), "warmback-"));
  await writeFile(join(outside, "secret.txt"), "secret");
  await writeFile(join(folder, ".env"), "secret");
  await mkdir(join(folder, ".cache"), { recursive: true });
  await writeFile(join(folder, ".cache/notes.txt"), "secret");
  await symlink(join(outside, "secret.txt"), join(folder, "link.txt"));
  await symlink(outside, join(folder, "linked"));
  const { status, body } = await raw(path, {});
  for (const name of ["link.txt", "linked", ".env", ".cache"]) await rm(join(folder, name), { recursive: true });
  await rm(outside, { recursive: true });
  expect([status, body.toString()]).toEqual([404, "not found"]);
});

test("Serves a build whose own folder is reached through a link", async () => {
  const link = `${folder}-link`;
  await symlink(folder, link);
  const other = await serve({ folder: link, port: 0, open: false });
  expect((await fetch(`${other.address}functions.json`)).status).toBe(200);
  await other.close();
  await rm(link);
});

test.each([
  ["localhost:3000", 200],
  ["127.0.0.1", 200],
  ["LOCALHOST", 200],
  ["pool.example", 421],
  ["localhost.example:3000", 421],
  ["warmback.localhost", 421],
])("A request for the host %j is answered with %i", async (host, status) => {
  expect((await raw("functions.json", { host })).status).toBe(status);
});

test("Errors tell the browser not to guess a type, and a refused method names those that are allowed", async () => {
  const missing = await fetch(`${served.address}missing.js`);
  expect(missing.headers.get("x-content-type-options")).toBe("nosniff");
  const refused = await fetch(served.address, { method: "DELETE" });
  expect(refused.headers.get("x-content-type-options")).toBe("nosniff");
  expect(refused.headers.get("allow")).toBe("GET, HEAD");
});

test("A download that isn't taken is closed, and one that is taken slowly is not", async () => {
  // More than the buffers of a connection hold.
  await writeFile(join(folder, "large.png"), Buffer.alloc(64_000_000));
  const hasty = await serve({ folder, port: 0, open: false, stallMs: 800 });
  const { port } = new URL(hasty.address);
  const ask = () => {
    const socket = connect(Number(port), "127.0.0.1");
    socket.on("error", () => undefined);
    socket.write("GET /large.png HTTP/1.1\r\nHost: localhost\r\n\r\n");
    return socket;
  };
  const slow = ask();
  const stalled = ask();
  let taken = 0;
  slow.on("data", (part) => {
    taken += part.length;
    slow.pause();
    setTimeout(() => slow.resume(), 10);
  });
  stalled.pause();
  await new Promise((resolve) => setTimeout(resolve, 2_500));
  const ended = new Promise<boolean>((resolve) => {
    let bytes = 0;
    stalled.on("data", (part) => (bytes += part.length));
    stalled.once("close", () => resolve(bytes < 64_000_000));
  });
  const before = taken;
  stalled.resume();
  expect(await ended).toBe(true);
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(taken).toBeGreaterThan(before);
  slow.destroy();
  await hasty.close();
  await rm(join(folder, "large.png"));
});
