import fc from "fast-check";
import { describe, expect, inject, test } from "vitest";
import { contentType, headersFile, headersFor } from "../../manifest/headers";
import { filesBelow } from "../../scripts/manifest/output";
import { headerRules, sentHeaders } from "./headerRules";

const HASH = "0123abcd4567ef89";

/** One path of every kind that a build holds, with the type it must have. */
const KINDS: readonly (readonly [path: string, type: string])[] = [
  ["index.html", "text/html; charset=utf-8"],
  ["taskpane.html", "text/html; charset=utf-8"],
  ["help/index.html", "text/html; charset=utf-8"],
  ["help/PIPE.HEADLOSS.html", "text/html; charset=utf-8"],
  ["functions.js", "text/javascript; charset=utf-8"],
  ["taskpane.js", "text/javascript; charset=utf-8"],
  ["worker.js", "text/javascript; charset=utf-8"],
  ["files.js", "text/javascript; charset=utf-8"],
  [`preview.${HASH}.js`, "text/javascript; charset=utf-8"],
  ["functions.json", "application/json; charset=utf-8"],
  [`formulas.${HASH}.json`, "application/json; charset=utf-8"],
  ["taskpane.css", "text/css; charset=utf-8"],
  ["manifest.xml", "application/xml; charset=utf-8"],
  ["assets/icon-16.png", "image/png"],
  ["assets/icon.svg", "image/svg+xml"],
  [`math.${HASH}.woff2`, "font/woff2"],
  ["LICENSE.txt", "text/plain; charset=utf-8"],
  ["LICENSE", "application/octet-stream"],
];

const header = (path: string, name: string): string => headersFor(path)[name] ?? "";

function policy(path: string): Map<string, string[]> {
  const directives = header(path, "Content-Security-Policy").split("; ");
  return new Map(
    directives.map((directive) => {
      const [name = "", ...sources] = directive.split(" ");
      return [name, sources];
    }),
  );
}

test.each(KINDS)("%s has the type %s, once, and isn't sniffed", (path, type) => {
  const names = Object.keys(headersFor(path)).map((name) => name.toLowerCase());
  expect(new Set(names).size).toBe(names.length);
  expect(header(path, "Content-Type")).toBe(type);
  expect(contentType(path)).toBe(type);
  expect(header(path, "X-Content-Type-Options")).toBe("nosniff");
  expect(header(path, "Referrer-Policy")).toBe("no-referrer");
});

test("a slash in front, a query and a fragment change nothing, and the root is the start page", () => {
  expect(headersFor("/taskpane.html?_host_Info=Excel$Win32#top")).toEqual(headersFor("taskpane.html"));
  expect(headersFor("/")).toEqual(headersFor("index.html"));
  expect(headersFor("/help/")).toEqual(headersFor("help/index.html"));
});

test("no header of any path holds a line break or a sign beyond ASCII", () => {
  fc.assert(
    fc.property(fc.webPath(), (path) => {
      for (const value of Object.values(headersFor(path))) expect(value).toMatch(/^[\x20-\x7e]+$/);
    }),
  );
});

describe("content security", () => {
  const pages = KINDS.map(([path]) => path).filter((path) => path.endsWith(".html"));

  test.each([...pages, "functions.js", "worker.js", "files.js", "pane-preview.html"])(
    "%s bars eval, inline scripts and wildcards",
    (path) => {
      const directives = policy(path);
      for (const [name, sources] of directives) {
        expect(sources, name).not.toContain("'unsafe-eval'");
        expect(sources, name).not.toContain("*");
        expect(sources, name).not.toContain("https:");
        expect(sources, name).not.toContain("http:");
      }
      const scripts = directives.get("script-src") ?? directives.get("default-src") ?? [];
      expect(scripts).not.toHaveLength(0);
      expect(scripts).not.toContain("'unsafe-inline'");
      expect(scripts.some((source) => source.startsWith("data:") || source.startsWith("blob:"))).toBe(false);
    },
  );

  test.each(pages)("%s can't be rebased, can't send a form and says who may frame it", (path) => {
    const directives = policy(path);
    expect(directives.get("base-uri")).toEqual(["'none'"]);
    expect(directives.get("form-action")).toEqual(["'none'"]);
    expect(directives.get("frame-ancestors")).toContain("'self'");
  });

  test("the pane runs its own scripts and office.js, starts its own workers and talks to its own host only", () => {
    const directives = policy("taskpane.html");
    expect(directives.get("default-src")).toEqual(["'none'"]);
    expect(directives.get("script-src")).toEqual(["'self'", "https://appsforoffice.microsoft.com/lib/"]);
    expect(directives.get("frame-src")).toEqual(["https://appsforoffice.microsoft.com"]);
    expect(directives.get("worker-src")).toEqual(["'self'"]);
    expect(directives.get("connect-src")).toEqual(["'self'"]);
    expect(directives.get("style-src")).toEqual(["'self'"]);
  });

  test("Excel on the web may frame the pane and the help, nobody else's page may frame the preview", () => {
    for (const path of ["taskpane.html", "help/PIPE.HEADLOSS.html"]) {
      expect(policy(path).get("frame-ancestors")).toContain("https://*.officeapps.live.com");
      expect(policy(path).get("frame-ancestors")).toContain("https://*.cloud.microsoft");
      expect(policy(path).get("frame-ancestors")).toContain("https://teams.microsoft.com");
    }
    expect(policy("index.html").get("frame-ancestors")).toEqual(["'self'"]);
  });

  test("the preview has the policy that its sheet engine was seen to run under", () => {
    const text = header("index.html", "Content-Security-Policy");
    expect(text).toContain(
      "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:",
    );
  });

  test("a page of ours that has no rule of its own is strict", () => {
    expect(policy("other.html").get("script-src")).toEqual(["'self'"]);
    expect(policy("other.html").get("default-src")).toEqual(["'none'"]);
  });

  test("the policy of help pages allows scripts of their own files alone, and no connection", () => {
    expect(policy("help/index.html").get("script-src")).toEqual(["'self'"]);
    expect(policy("help/index.html").has("connect-src")).toBe(false);
    expect(policy("help/index.html").get("default-src")).toEqual(["'none'"]);
  });
});

describe("sharing", () => {
  test.each(["functions.json", "functions.js", "help/PIPE.HEADLOSS.html", "assets/icon-32.png"])(
    "Excel on the web may fetch %s",
    (path) => {
      expect(header(path, "Access-Control-Allow-Origin")).toBe("*");
      expect(header(path, "Cross-Origin-Resource-Policy")).toBe("cross-origin");
    },
  );

  test.each(["taskpane.html", "index.html", "taskpane.js", "other/functions.json"])(
    "%s is for its own host",
    (path) => {
      expect(headersFor(path)).not.toHaveProperty("Access-Control-Allow-Origin");
    },
  );
});

describe("caching", () => {
  test.each([
    "functions.js",
    "functions.json",
    "taskpane.html",
    "index.html",
    "help/PIPE.HEADLOSS.html",
    "manifest.xml",
    "worker.js",
    "files.js",
  ])("%s is asked for anew, so that an update arrives", (path) => {
    expect(header(path, "Cache-Control")).toBe("no-cache");
  });

  test.each([`formulas.${HASH}.json`, `preview.${HASH}.js`, `math-${HASH}.woff2`])(
    "%s never changes under its name",
    (path) => {
      expect(header(path, "Cache-Control")).toBe("public, max-age=31536000, immutable");
    },
  );

  test.each(["index.0123abcd.html", "help/COST.OFHEAT-deadbeef.html", "chunk.0123abc.js", "facade.js"])(
    "%s is not taken for a hashed file",
    (path) => {
      expect(header(path, "Cache-Control")).toBe("no-cache");
    },
  );

  test("icons may be kept: Office shows none that come with no-cache", () => {
    expect(header("assets/icon-16.png", "Cache-Control")).toBe("public, max-age=86400");
  });
});

describe("the header file", () => {
  const help = Array.from({ length: 300 }, (_, at) => `help/PIPE.${String(at)}.html`);

  test.each([
    ["one file of every kind", KINDS.map(([path]) => path)],
    ["300 help pages", [...KINDS.map(([path]) => path), ...help]],
    ["a build", filesBelow(inject("build")).filter((path) => path !== "_headers")],
  ])("gives each of %s the headers that it must have, in at most 100 rules", (_, paths) => {
    const rules = headerRules(headersFile(paths));
    expect(rules.length).toBeLessThanOrEqual(100);
    expect(paths.length).toBeGreaterThan(10);
    for (const path of paths) expect(sentHeaders(rules, `/${path}`), path).toEqual(headersFor(path));
    expect(sentHeaders(rules, "/")).toEqual(headersFor("/"));
  });

  test("has a star only at a folder's end, which every host reads alike", () => {
    for (const { path } of headerRules(headersFile([...KINDS.map(([kind]) => kind), ...help])))
      expect(path).toMatch(/^\/(?:[^*:]*|[^*:]+\/\*)$/);
  });

  test("is refused with more rules than hosts read", () => {
    const paths = Array.from({ length: 101 }, (_, at) => `page${String(at)}.html`);
    expect(() => headersFile(paths)).toThrow("the header file has 101 rules: hosts read 100");
  });
});
