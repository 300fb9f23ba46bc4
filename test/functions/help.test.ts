import { join, normalize } from "node:path";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { placedArgs } from "../../core/kernel/define/unitsArgument";
import { isFault } from "../../core/kernel/values/fault";
import { printedEquations } from "../../scripts/help/forms";
import { collectHelp } from "../../scripts/help/gather";
import { helpPages } from "../../scripts/help/pages";
import { mathmlFor, symbolTex, texFor } from "../../scripts/help/tex";
import { STARTER_SHEETS } from "../../src/sheets";
import { TOPICS } from "../../scripts/help/topics";

const PAGES = helpPages();
/** Without the places where a formula may break. */
const pageOf = (id: string): string => (PAGES[`help/${id}.html`] ?? "").replaceAll("<wbr>", "");

describe("printed forms as TeX", () => {
  test.each([
    ["f = 64 / Re", String.raw` f = \frac{64}{ \mathrm{Re}}`],
    ["dT = Tl - Td", String.raw` \Delta T =  T_{\mathrm{l}}- T_{\mathrm{d}}`],
    ["y = 2 * -1.5e5 * x", String.raw` y = 2\cdot\left(-1.5\cdot10^{5}\right)\cdot x`],
    ["y = 1e6 * x", String.raw` y = 1\cdot10^{6}\cdot x`],
  ])("writes the form %s as TeX", (form, tex) => expect(texFor(form)).toBe(tex));

  test.each([
    ["rhoV", String.raw`\rho_{\mathrm{V}}`],
    ["eta_s", String.raw`\eta_{\mathrm{s}}`],
    ["p0", "p_{0}"],
    ["LFL", String.raw`\mathrm{LFL}`],
    ["dpdT", String.raw`\frac{\mathrm{d} p}{\mathrm{d} T}`],
  ])("writes the symbol %s as TeX", (name, tex) => expect(symbolTex(name)).toBe(tex));

  test("shows both cases of a choice between two expressions", () =>
    expect(mathmlFor("y = x >= 3 ? a : b")).toMatch(/<mtable>.*otherwise/s));

  test("every printed form becomes MathML", async () => {
    const forms = [...(await printedEquations(join(import.meta.dirname, "../../core"))).keys()];
    expect(forms).toHaveLength(377);
    for (const form of forms) expect(mathmlFor(form), form).toMatch(/^<math[^]*<\/math>$/);
  });
});

describe("help pages", () => {
  test("every function and every topic has a help page", () => {
    for (const { id, topic } of CATALOGUE) {
      expect(pageOf(id), id).not.toBe("");
      expect(PAGES["help/index.html"], id).toContain(`<a href="${id}.html">${id}</a>`);
      expect(Object.keys(TOPICS)).toContain(topic);
    }
  });

  test.each(CATALOGUE.map(({ id }) => [id] as const))("%s carries no script and no odd number", (id) => {
    const text = pageOf(id);
    expect(text).not.toMatch(/<script|javascript:|\son[a-z]+=/i);
    expect(text).not.toMatch(/undefined|\[object|NaN|Infinity/);
    expect(text).toContain('<html lang="en">');
    expect(text).toContain('<a class="skip" href="#main">');
    expect(text.match(/<h1>/g)).toHaveLength(1);
  });

  test("every starter sheet and the panel have a help page that the index links to", () => {
    for (const { id, name } of STARTER_SHEETS) {
      expect(PAGES[`help/sheet-${id}.html`], name).toContain(`<h1>${name}</h1>`);
      expect(PAGES["help/index.html"]).toContain(`href="sheet-${id}.html"`);
    }
    expect(PAGES["help/index.html"]).toContain('href="panel.html"');
    expect(PAGES["help/sheet-recovery-sizing.html"]).toContain('<a href="POOL.YEAR.html">POOL.YEAR</a>');
  });

  test("a help page says once not to point at a blank cell if an argument may be left out", () => {
    const advice = /don't point at a blank cell/g;
    for (const definition of CATALOGUE) {
      const optional = placedArgs(definition).filter(
        ([, arg]) => arg.presence !== "required" && arg.shape.type !== "repeat",
      );
      const times = pageOf(definition.id).match(advice)?.length ?? 0;
      expect(times, definition.id).toBe(optional.length > 0 ? 1 : 0);
    }
    expect(PAGES["help/index.html"]?.match(advice)).toHaveLength(1);
  });

  test("every link of a help page leads to a page that exists", () => {
    for (const [path, text] of Object.entries(PAGES))
      for (const [, target = ""] of text.matchAll(/href="([^"#:]+)(?:#[^"]*)?"/g))
        expect(Object.keys(PAGES), `${path} → ${target}`).toContain(normalize(`help/${target}`));
  });

  test("every link within a help page leads to a section of it", () => {
    for (const { id } of CATALOGUE)
      for (const [, target = ""] of pageOf(id).matchAll(/href="#([^"]+)"/g))
        expect(pageOf(id), `${id} → ${target}`).toContain(` id="${target}"`);
    expect(pageOf("POOL.YEAR")).toContain('<a href="#worked-example">Worked example</a>');
  });

  test("a help page shows equation, limits in both systems, working, check, caution and citation", () => {
    const text = pageOf("PIPE.HEADLOSS");
    expect(text).toContain("<math");
    expect(text).toContain("<code>h = f * L / D * v^2 / (2 * g)</code>");
    expect(text).toContain("above 0 gpm (SI: above 0 m³/h)");
    expect(text).toContain("gpm (SI: m³/h)");
    expect(text).toContain("=WARMBACK.PIPE.HEADLOSS(40,&quot;2 in&quot;,100,,,&quot;Hazen-Williams&quot;)");
    expect(text).toContain("Its working");
    expect(text).toContain("PIPE-FAST-WATER");
    expect(text).toContain("The source itself was read.");
    expect(text).toContain('<a href="PIPE.BORE.html">PIPE.BORE</a>');
  });

  test("a help page transposes a wide result and shows the first and last of many rows", () => {
    const text = pageOf("POOL.YEAR");
    expect(text).toContain("What it shows, transposed, a column in each row: the first and the last of 13 rows");
    expect(text).toMatch(/<th[^>]*>month<\/th><th[^>]*>Jan<\/th><th[^>]*>Year<\/th>/);
    const [, taken = "0"] = /heat taken \(kWh\)<\/th><td[^>]*>[\d.,]+<\/td><td[^>]*>([\d.,]+)</.exec(text) ?? [];
    expect(Number(taken.replaceAll(",", ""))).toBeGreaterThan(0);
  });

  test("a help page names a long formula's ranges, prints them beneath, and offers the whole to copy", () => {
    const text = pageOf("POOL.YEAR");
    expect(text).toContain("<code>=WARMBACK.POOL.YEAR(inputs,climate,&quot;SI&quot;)</code>");
    expect(text).toContain("The range “climate”: the first 7 and the last of 12 rows");
    const [, whole = ""] = /The whole formula, to copy<\/summary>\s*<pre[^>]*><code>(.*)<\/code>/.exec(text) ?? [];
    expect(whole).toMatch(/^=WARMBACK\.POOL\.YEAR\({.*;20\.29,[^}]*},&quot;SI&quot;\)$/);
  });

  test("a help page tells the formulas of checks apart by the rows in which they differ", () => {
    const briefs = [...pageOf("EXCHANGER.COIL").matchAll(/<summary><code class="formula">(.*?)<\/code>/g)];
    expect(briefs).toHaveLength(5);
    expect(new Set(briefs.map(([, brief]) => brief)).size).toBe(briefs.length);
  });

  test("a help page folds a long working", () => {
    expect(pageOf("EXCHANGER.BALANCE")).toMatch(/<details class="working">\s*<summary>Its working, \d+ lines</);
    expect(pageOf("PIPE.HEADLOSS")).not.toContain('<details class="working">');
  });
});

describe("The example of a function", () => {
  const rectangular = (raw: unknown): boolean =>
    !Array.isArray(raw) || new Set((raw as readonly unknown[][]).map(({ length }) => length)).size <= 1;

  test.each(CATALOGUE.map((definition) => [definition.id, definition] as const))(
    "the example of %s gives a value, and a sheet can hold its ranges",
    (_id, definition) => {
      const { example } = collectHelp(definition);
      if (example === undefined) throw new Error("no example");
      expect(isFault(example.explanation.out) ? example.explanation.out.message : "").toBe("");
      expect(example.raw.every(rectangular)).toBe(true);
    },
  );
});
