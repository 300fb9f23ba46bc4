/** Imports run one way: src, scripts → the core's doors → catalogue → topics → kernel → numeric; inside a topic functions → solvers → equations → data. */

const TOPICS = "climate|refrigerant|cycle|line|pressure|aircon|pool|air|water|exchanger|pipe|control|cost|sink|note";
/** Files of printed equations: "equations.ts", "sunEquations.ts". */
const EQUATIONS = "quations\\.ts$";

const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

module.exports = {
  forbidden: [
    rule("no-circle", "A circle of imports, of types too.", {}, { circular: true }),
    {
      ...rule(
        "no-topic-circle",
        "Topics build on lower topics only.",
        { path: "^core/[^/]+" },
        { circular: true, via: { pathNot: "^core$" } },
      ),
      scope: "folder",
    },
    // Packages are left to the compiler: it reads their "exports".
    rule("no-missing", "The import can't be resolved.", {}, { couldNotResolve: true, pathNot: "^@" }),
    rule(
      "core-alone",
      "The core knows no host, no build and no tests.",
      { path: "^core/" },
      { path: "^(src|scripts|manifest|test|bench)/" },
    ),
    rule(
      "core-pure",
      "No part of Node in the core, but for the programs that make its fits.",
      { path: "^core/", pathNot: "^core/[^/]+/fit/" },
      { dependencyTypes: ["core"] },
    ),
    rule("core-packages", "The core uses no package.", { path: "^core/" }, { path: "node_modules" }),
    rule(
      "numeric-lowest",
      "General methods know no quantities.",
      { path: "^core/numeric/" },
      { path: "^core/(?!numeric/)" },
    ),
    rule("kernel-low", "The kernel knows no topic.", { path: "^core/kernel/" }, { path: "^core/(?!kernel/|numeric/)" }),
    rule(
      "topics-not-catalogue",
      "Topics get the catalogue at run time.",
      { path: `^core/(${TOPICS})/` },
      { path: "^core/catalogue" },
    ),
    rule(
      "catalogue-by-index",
      "The catalogue reads the topics' lists.",
      { path: "^core/catalogue" },
      { path: `^core/(${TOPICS})/(?!index)` },
    ),
    rule(
      "functions-only-by-index",
      "A calculation never calls a cell function: both share a solver.",
      { path: `^core/(${TOPICS})/(?!index)` },
      { path: `^core/(${TOPICS})/(functions/|index)` },
    ),
    rule(
      "functions-dont-evaluate",
      "Only functions about functions run others.",
      { path: `^core/(?!note/)(${TOPICS})/` },
      { path: "^core/kernel/(call/(evaluate|admit|admitRange|present)|explain/(explain|check|working))\\.ts$" },
    ),
    rule(
      "equations-know-no-solver",
      "Equations build on equations and data.",
      { path: `^core/(${TOPICS})/.*${EQUATIONS}` },
      { path: `^core/(${TOPICS})/`, pathNot: `${EQUATIONS}|/data/` },
    ),
    rule(
      "methods-below-solvers",
      "Equations of state and their methods know no function.",
      { path: "^core/refrigerant/(data|fit|helmholtz|equilibrium)/" },
      { path: "^core/refrigerant/(functions|state|saturation|transport)/" },
    ),
    rule(
      "data-lowest",
      "Tables know their type and nothing else.",
      { path: "^core/[^/]+/data/" },
      { path: `^core/(${TOPICS})/`, pathNot: "/data/" },
    ),
    rule(
      "src-by-doors",
      "The hosts take the core through its doors for run time, for notes and for pictures.",
      { path: "^src/" },
      { path: "^core/", pathNot: "^core/(index|notes|pictures)\\.ts$" },
    ),
    rule(
      "scripts-by-doors",
      "The scripts take the core through its doors for run time and for help texts.",
      { path: "^scripts/" },
      { path: "^core/", pathNot: "^core/(index|help)\\.ts$" },
    ),
    rule(
      "pictures-by-door",
      "Pictures are drawn from what the run-time door holds: the panel has no second core.",
      { path: "^core/pictures?(/|\\.ts$)" },
      { path: "^core/", pathNot: "^core/(index\\.ts$|picture/)", dependencyTypesNot: ["type-only"] },
    ),
    rule(
      "doors-outside",
      "Code behind the doors doesn't import them.",
      { path: "^core/", pathNot: "^core/pictures?(/|\\.ts$)" },
      { path: "^core/(index|help|notes|pictures)\\.ts$" },
    ),
    rule(
      "no-pictures-at-run-time",
      "Pictures and help texts stay out of the functions script.",
      { path: "^(core/(index|catalogue)\\.ts$|src/functions/)" },
      { path: "^core/(pictures?(/|\\.ts$)|help\\.ts$)" },
    ),
    rule("scripts-build", "What builds stays out of what runs.", { path: "^(src|manifest)/" }, { path: "^scripts/" }),
    rule(
      "workbook-low",
      "The port and its readers know no panel and no functions script.",
      { path: "^src/workbook/" },
      { path: "^src/(taskpane|preview|functions)/" },
    ),
    rule(
      "functions-script-alone",
      "The functions script works without panel and preview.",
      { path: "^src/functions/" },
      { path: "^src/(taskpane|preview|sheets)/" },
    ),
    rule("panel-without-preview", "The panel runs in Excel.", { path: "^src/taskpane/" }, { path: "^src/preview/" }),
    rule(
      "preview-without-excel",
      "The preview doesn't use the adapter for Excel.",
      { path: "^src/preview/" },
      { path: "^src/workbook/excel/" },
    ),
    rule(
      "file-worker-alone",
      "The worker of the page's files has neither the functions script nor the sheet engine.",
      { path: "^src/preview/file/jobs/file(Worker|Runner)\\.ts$" },
      { path: "^src/(functions/(?!buildHash|hostArguments)|preview/(univer|page)/)", reachable: true },
    ),
    rule(
      "sheets-are-data",
      "Starter sheets know no host.",
      { path: "^src/sheets/" },
      { path: "^src/(taskpane|preview|functions)/" },
    ),
    rule(
      "no-tests-in-product",
      "The product doesn't use its tests.",
      { path: "^(core|src|scripts|manifest)/" },
      { path: "^(test|bench)/" },
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    exclude: { path: "^dist/" },
  },
};
