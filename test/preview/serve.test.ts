/** The local server of a build. */
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { headersFor } from "../../manifest/headers";
import { serve } from "../../scripts/serve";
import type { Served } from "../../scripts/serve";

let folder: string;
let served: Served;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "warmback-"));
  await writeFile(join(folder, "index.html"), "<p>start</p>");
  await writeFile(join(folder, "functions.json"), "{}");
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
