import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { printedForms } from "../../src/functions/help/forms";
import { helpPages } from "../../src/functions/help/pages";
import { mathmlFor, symbolTex, texFor } from "../../src/functions/help/tex";
import { TOPICS } from "../../src/functions/help/topics";

const PAGES = helpPages();
const pageOf = (id: string): string => PAGES[`help/${id}.html`] ?? "";

describe("printed forms as TeX", () => {
  test.each([
    ["f = 64 / Re", String.raw` f = \frac{64}{ \mathrm{Re}}`],
    ["dT = Tl - Td", String.raw` \Delta T =  T_{\mathrm{l}}- T_{\mathrm{d}}`],
    ["y = 2 * -1.5e5 * x", String.raw` y = 2\cdot\left(-1.5\cdot10^{5}\right)\cdot x`],
    ["y = 1e6 * x", String.raw` y = 1\cdot10^{6}\cdot x`],
  ])("%s", (form, tex) => expect(texFor(form)).toBe(tex));

  test.each([
    ["rhoV", String.raw`\rho_{\mathrm{V}}`],
    ["eta_s", String.raw`\eta_{\mathrm{s}}`],
    ["p0", "p_{0}"],
    ["LFL", String.raw`\mathrm{LFL}`],
    ["dpdT", String.raw`\frac{\mathrm{d} p}{\mathrm{d} T}`],
  ])("the symbol %s", (name, tex) => expect(symbolTex(name)).toBe(tex));

  test("of a choice between two expressions has both cases", () =>
    expect(mathmlFor("y = x >= 3 ? a : b")).toMatch(/<mtable>.*otherwise/s));

  test("all become MathML", async () => {
    const forms = await printedForms(join(import.meta.dirname, "../../core"));
    expect(forms.length).toBeGreaterThan(40);
    for (const form of forms) expect(mathmlFor(form), form).toMatch(/^<math[^]*<\/math>$/);
  });
});

describe("help pages", () => {
  test("stand for every function and for every topic", () => {
    for (const { id, topic } of CATALOGUE) {
      expect(pageOf(id), id).not.toBe("");
      expect(PAGES["help/index.html"], id).toContain(`<a href="${id}.html">${id}</a>`);
      expect(Object.keys(TOPICS)).toContain(topic);
    }
  });

  test.each(CATALOGUE.map(({ id }) => [id] as const))("%s: carries no script and no odd number", (id) => {
    const text = pageOf(id);
    expect(text).not.toMatch(/<script|javascript:|\son[a-z]+=/i);
    expect(text).not.toMatch(/undefined|\[object|NaN|Infinity/);
    expect(text).toContain('<html lang="en">');
    expect(text).toContain('<a class="skip" href="#main">');
    expect(text.match(/<h1>/g)).toHaveLength(1);
  });

  test("link to pages that exist", () => {
    for (const [path, text] of Object.entries(PAGES))
      for (const [, target = ""] of text.matchAll(/href="([^"#:]+)(?:#[^"]*)?"/g))
        expect(Object.keys(PAGES), `${path} → ${target}`).toContain(`help/${target}`);
  });

  test("show equation, limits in both systems, working, check, caution and citation", () => {
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
});
