/** The local server of a build. Codings and tags: RFC 9110, sections 8.4, 8.8.3, 12.5.3 and 15.4.5. */
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer, request } from "node:http";
import type { IncomingHttpHeaders } from "node:http";
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
