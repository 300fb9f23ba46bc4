import { describe, expect, test } from "vitest";
import { checkManifest, type Finding } from "../../scripts/manifest/check";
import { sampleBuild, sampleMetadata, sampleXml, type Metadata, type SampleParts } from "./sample";

type Break = readonly [
  title: string,
  edit: readonly [from: string | RegExp, to: string],
  rule: Finding["rule"],
  says: string,
];

const LONG_ID = "Open.Label.That.Is.Much.Too.Long.1";

/** One edit of the good manifest each; the message must name the fault. */
const BROKEN: readonly Break[] = [
  ["an end tag is missing", ["</Hosts>", ""], "well-formed", "unexpected close tag"],
  ["an ampersand is bare", ["Warmback panel", "Warmback & panel"], "well-formed", "not well-formed XML"],
  ["the root is another element", [/OfficeApp\b/g, "OfficeAddIn"], "structure", "the root is <OfficeAddIn>"],
  [
    "it is a content add-in",
    ['"TaskPaneApp"', '"ContentApp"'],
    "structure",
    "xsi:type ContentApp, expected TaskPaneApp",
  ],
  ["Version precedes Id", [/(<Id>.*<\/Id>)\s*(<Version>.*<\/Version>)/, "$2$1"], "structure", "<Id> follows <Version>"],
  [
    "Hosts stand after Requirements",
    [/(<Hosts>\s*<Host Name[^]*?<\/Hosts>)([^]*?<\/Requirements>)/, "$2$1"],
    "structure",
    "<Hosts> follows <Requirements>",
  ],
  [
    "Permissions stand before DefaultSettings",
    [/(<DefaultSettings>[^]*?<\/DefaultSettings>)([^]*?<\/Permissions>)/, "$2$1"],
    "structure",
    "<DefaultSettings> follows <Permissions>",
  ],
  [
    "the runtime follows the form factors",
    [/(<Runtimes>[^]*?<\/Runtimes>)([^]*?<\/DesktopFormFactor>)/, "$2$1"],
    "structure",
    "<Runtimes> follows <DesktopFormFactor>",
  ],
  [
    "Page precedes Script",
    [/(<Script>[^]*?<\/Script>)(\s*)(<Page>[^]*?<\/Page>)/, "$3$2$1"],
    "structure",
    "<Script> follows <Page>",
  ],
  [
    "the icon follows the action",
    [/(<\/Supertip>\s*)(<Icon>[^]*?<\/Icon>)(\s*<Action[^]*?<\/Action>)/, "$1$3$2"],
    "structure",
    "<Icon> follows <Action>",
  ],
  [
    "Urls stand before Images",
    [/(<bt:Images>[^]*?<\/bt:Images>)(\s*)(<bt:Urls>[^]*?<\/bt:Urls>)/, "$3$2$1"],
    "structure",
    "<Images> follows <Urls>",
  ],
  [
    "the provider is missing",
    [/<ProviderName>.*<\/ProviderName>/, ""],
    "structure",
    "<OfficeApp> lacks <ProviderName>",
  ],
  ["the id is given twice", [/(<Id>.*<\/Id>)/, "$1$1"], "structure", "holds 2 <Id>"],
  [
    "an element is unknown",
    ["</DefaultSettings>", "<RequestedWidth>300</RequestedWidth></DefaultSettings>"],
    "structure",
    "<RequestedWidth> is not allowed in <DefaultSettings>",
  ],
  ["a resource list lost its prefix", [/bt:LongStrings/g, "LongStrings"], "structure", "<LongStrings> is in namespace"],
  [
    "the overrides are of a mail add-in",
    ["office/taskpaneappversionoverrides", "office/mailappversionoverrides"],
    "structure",
    "<VersionOverrides> is in namespace",
  ],
  [
    "the host's type is PowerPoint's",
    ['xsi:type="Workbook"', 'xsi:type="Presentation"'],
    "structure",
    "<Host> has xsi:type Presentation, expected Workbook",
  ],
  [
    "a type lost its prefix",
    ['Control xsi:type="Button"', 'Control type="Button"'],
    "structure",
    "<Control> has xsi:type none, expected Button",
  ],
  [
    "a resid is missing",
    ['<FunctionFile resid="Pane.Url"/>', "<FunctionFile/>"],
    "structure",
    "<FunctionFile> has no resid",
  ],
  [
    "a resid leads nowhere",
    ['<Label resid="Open.Label"/>', '<Label resid="Open.Lable"/>'],
    "resource",
    'names resource "Open.Lable", which doesn\'t exist',
  ],
  [
    "a label is a long text",
    ['<Label resid="Open.Label"/>', '<Label resid="Open.Text"/>'],
    "resource",
    '<Label> in <Control> needs a short String, "Open.Text" is a long String',
  ],
  [
    "a page is a text",
    ['<LearnMoreUrl resid="Help.Url"/>', '<LearnMoreUrl resid="Open.Title"/>'],
    "resource",
    "<LearnMoreUrl> in <GetStarted> needs a Url",
  ],
  [
    "an icon is a page",
    ['size="80" resid="Icon.80"', 'size="80" resid="Help.Url"'],
    "resource",
    '<Image> in <Icon> needs a Image, "Help.Url" is a Url',
  ],
  [
    "two resources share an id",
    ['String id="Open.Title"', 'String id="Open.Label"'],
    "resource",
    '"Open.Label" is given twice',
  ],
  [
    "a resource is left over",
    ["<bt:ShortStrings>", '<bt:ShortStrings><bt:String id="Old.Label" DefaultValue="Old"/>'],
    "resource",
    '"Old.Label" is used nowhere',
  ],
  ["a resource id is too long", [/Open\.Label/g, LONG_ID], "length", `"${LONG_ID}": at most 32 characters, got 34`],
  [
    "a short text is too long",
    ['DefaultValue="Warmback panel"', `DefaultValue="${"p".repeat(126)}"`],
    "length",
    'short String "Open.Label": at most 125 characters, got 126',
  ],
  [
    "a long text is too long",
    [/DefaultValue="Read the caution[^"]*"/, `DefaultValue="${"p".repeat(251)}"`],
    "length",
    'long String "Open.Text": at most 250 characters, got 251',
  ],
  [
    "an address is too long",
    ["/functions.js", `/functions.js?${"x".repeat(2048)}`],
    "length",
    'Url "Functions.Script": at most 2048 characters',
  ],
  [
    "the shown name is too long",
    ['<DisplayName DefaultValue="Warmback"', `<DisplayName DefaultValue="${"W".repeat(126)}"`],
    "length",
    "DisplayName: 1 to 125 characters, got 126",
  ],
  [
    "the description is empty",
    [/<Description DefaultValue="[^"]*"/, '<Description DefaultValue=""'],
    "length",
    "Description: 1 to 250 characters, got 0",
  ],
  ["the id has braces", [/<Id>(.*)<\/Id>/, "<Id>{$1}</Id>"], "identity", "Id: expected a GUID without braces"],
  ["the id is too short", [/<Id>.(.*)<\/Id>/, "<Id>$1</Id>"], "identity", "Id: expected a GUID"],
  [
    "the version has three numbers",
    ["1.0.1.0", "1.0.1"],
    "identity",
    'Version: expected four numbers (Excel on the web), got "1.0.1"',
  ],
  ["the version is below 1.0", ["1.0.1.0", "0.1.0.0"], "identity", "1.0 or above"],
  ["the version has a letter", ["1.0.1.0", "1.0.1.0b"], "identity", "Version: expected four numbers"],
  ["the locale is a language only", ["en-US", "en"], "identity", "DefaultLocale: expected a culture name"],
  [
    "permissions stand twice",
    ["<Permissions>", "<Permissions>ReadDocument</Permissions><Permissions>"],
    "permission",
    "exactly one element, got 2",
  ],
  ["permissions are missing", [/<Permissions>.*<\/Permissions>/, ""], "permission", "exactly one element, got 0"],
  [
    "the permission is too small",
    ["ReadWriteDocument</P", "ReadDocument</P"],
    "permission",
    'expected ReadWriteDocument, got "ReadDocument"',
  ],
  [
    "Word is a host too",
    ['<Host Name="Workbook"/>', '<Host Name="Workbook"/><Host Name="Document"/>'],
    "host",
    "got Workbook, Document",
  ],
  [
    "a fourth requirement set is demanded",
    ['<Set Name="SharedRuntime"', '<Set Name="RibbonApi" MinVersion="1.2"/><Set Name="SharedRuntime"'],
    "requirement",
    "requirement set RibbonApi 1.2 is not one of",
  ],
  [
    "the functions' set is newer",
    ['"CustomFunctionsRuntime" MinVersion="1.3"', '"CustomFunctionsRuntime" MinVersion="1.5"'],
    "requirement",
    "expected version 1.3, got 1.5",
  ],
  [
    "the shared runtime isn't demanded",
    [/<Set Name="SharedRuntime"[^>]*>/, ""],
    "requirement",
    "SharedRuntime must appear once, got 0",
  ],
  [
    "a requirement's version is left to the default",
    ['"CustomFunctionsRuntime" MinVersion="1.3"', '"CustomFunctionsRuntime"'],
    "requirement",
    "expected version 1.3, got 1.1",
  ],
  [
    "the overrides replace the requirements",
    [
      /(xsi:type="VersionOverridesV1_0">)/,
      '$1<Requirements><bt:Sets><bt:Set Name="AddinCommands"/></bt:Sets></Requirements>',
    ],
    "requirement",
    "would replace the outer ones",
  ],
  ["the runtime is short-lived", ['lifetime="long"', 'lifetime="short"'], "runtime", 'lifetime "long", got "short"'],
  [
    "the runtime is another page",
    ['<Runtime resid="Pane.Url"', '<Runtime resid="Help.Url"'],
    "runtime",
    'the runtime names "Help.Url": not shared',
  ],
  [
    "the functions have a page of their own",
    [/(<Page>\s*<SourceLocation resid=)"Pane.Url"/, '$1"Help.Url"'],
    "runtime",
    'the custom functions\' Page names "Help.Url"',
  ],
  [
    "the command opens another page",
    [/(type="ShowTaskpane">\s*<SourceLocation resid=)"Pane.Url"/, '$1"Help.Url"'],
    "runtime",
    'the pane\'s command names "Help.Url"',
  ],
  [
    "the function file is another page",
    ['<FunctionFile resid="Pane.Url"', '<FunctionFile resid="Help.Url"'],
    "runtime",
    'the FunctionFile names "Help.Url"',
  ],
  [
    "the outer page is another page",
    [/(<SourceLocation DefaultValue="[^"]*)taskpane\.html/, "$1help/index.html"],
    "runtime",
    "DefaultSettings opens",
  ],
  [
    "no command opens the pane",
    [
      /<Action xsi:type="ShowTaskpane">[^]*?<\/Action>/,
      '<Action xsi:type="ExecuteFunction"><FunctionName>open</FunctionName></Action>',
    ],
    "runtime",
    "no ribbon command opens the pane",
  ],
  [
    "the prefix is too long",
    ['DefaultValue="WARMBACK"', `DefaultValue="${"W".repeat(33)}"`],
    "namespace",
    "at most 32 characters",
  ],
  [
    "the prefix has a space",
    ['DefaultValue="WARMBACK"', 'DefaultValue="WARM BACK"'],
    "namespace",
    "capitals, digits, period, underscore",
  ],
  [
    "the prefix is another one",
    ['DefaultValue="WARMBACK"', 'DefaultValue="WARMTH"'],
    "namespace",
    'workbooks store "WARMBACK"',
  ],
  [
    "one address is http",
    ['"https://warmback.example/functions.js"', '"http://warmback.example/functions.js"'],
    "url",
    'resource "Functions.Script": must be https, got http',
  ],
  [
    "one address is local",
    ["https://warmback.example/functions.json", "https://localhost:3000/functions.json"],
    "url",
    'resource "Functions.Metadata": the production manifest must not point at this computer',
  ],
  [
    "one address is another host's",
    ["https://warmback.example/assets/icon-32.png", "https://elsewhere.example/assets/icon-32.png"],
    "url",
    "IconUrl: is outside the add-in's own https://warmback.example/",
  ],
  [
    "an address is relative",
    ['"https://warmback.example/functions.js"', '"functions.js"'],
    "url",
    "not an absolute address",
  ],
  [
    "an address names no built file",
    ["assets/icon-80.png", "assets/icon-80-dark.png"],
    "url",
    "the build has no assets/icon-80-dark.png",
  ],
  [
    "a domain is added",
    [
      "<Hosts>\n    <Host Name",
      "<AppDomains><AppDomain>https://localhost:3000</AppDomain></AppDomains><Hosts>\n    <Host Name",
    ],
    "url",
    "<AppDomain> holds an address that the add-in doesn't need",
  ],
  [
    "a translated text points elsewhere",
    [
      /(<SupportUrl DefaultValue="[^"]*")\/>/,
      '$1><Override Locale="de-DE" Value="https://elsewhere.example/hilfe"/></SupportUrl>',
    ],
    "url",
    "<Override> holds an address",
  ],
  [
    "the list's icon is the sharp one",
    [/(<IconUrl DefaultValue="[^"]*)icon-32/, "$1icon-64"],
    "icon",
    "IconUrl: expected assets/icon-64.png to be 32 × 32 px, got 64 × 64 px",
  ],
  [
    "a ribbon icon has another size",
    ['<bt:Image size="16"', '<bt:Image size="20"'],
    "icon",
    "to be 20 × 20 px, got 16 × 16 px",
  ],
  ["a ribbon icon lacks a size", ['<bt:Image size="80" resid="Icon.80"/>', ""], "icon", "<Icon> lacks the 80 px image"],
];

const spoken = (findings: readonly Finding[], rule: Finding["rule"]): string =>
  findings
    .filter((finding) => finding.rule === rule)
    .map(({ message }) => message)
    .join("\n");

describe("a manifest is refused when", () => {
  test.each(BROKEN)("%s", (_title, [from, to], rule, says) => {
    const broken = sampleXml().replace(from, to);
    expect(broken).not.toBe(sampleXml());
    expect(spoken(checkManifest(broken, sampleBuild()), rule)).toContain(says);
  });
});

type BuildBreak = readonly [title: string, parts: SampleParts, rule: Finding["rule"], says: string];

const BROKEN_BUILDS: readonly BuildBreak[] = [
  ["the pane's page is missing", { without: ["taskpane.html"] }, "url", "the build has no taskpane.html"],
  ["the help's start page is missing", { without: ["help/index.html"] }, "url", "the build has no help/index.html"],
  [
    "an icon has another picture",
    { swapped: { "assets/icon-80.png": 64 } },
    "icon",
    "to be 80 × 80 px, got 64 × 64 px",
  ],
  ["an icon is no PNG", { swapped: { "assets/icon-32.png": 0 } }, "icon", "to be 32 × 32 px, got no PNG"],
  [
    "a function's help page is missing",
    { without: ["help/POOL.LOSSES.html"] },
    "functions",
    "POOL.LOSSES: helpUrl: the build has no help/POOL.LOSSES.html",
  ],
  ["the metadata is too big", { bytes: 1_000_000 }, "functions", "must stay under 1000000 bytes, got 1000000"],
  ["the metadata is a list", { metadata: [] }, "functions", "has no list of functions"],
  ["the metadata lists nothing", { metadata: { functions: [] } }, "functions", "lists no function"],
];

describe("a build is refused when", () => {
  test.each(BROKEN_BUILDS)("%s", (_title, parts, rule, says) => {
    expect(spoken(checkManifest(sampleXml(), sampleBuild(parts)), rule)).toContain(says);
  });
});

type First = Metadata["functions"][number];
type MetadataBreak = readonly [title: string, edit: (first: First, all: Metadata) => void, says: string];

const renamed =
  (id: string) =>
  (first: First): void =>
    void Object.assign(first, { id, name: id });
const firstParameter =
  (change: object) =>
  (first: First): void =>
    void Object.assign(first.parameters[0] ?? {}, change);

const BROKEN_METADATA: readonly MetadataBreak[] = [
  ["an id has a small letter", renamed("PIPE.Headloss"), "id: capitals, digits and periods"],
  ["an id has an underscore", renamed("PIPE_HEADLOSS"), "id: capitals, digits and periods"],
  ["an id begins with a digit", renamed("2PIPE.HEADLOSS"), "id: capitals, digits and periods"],
  ["an id has two characters", renamed("PH"), "id has 3 to 64 characters, got 2"],
  ["an id has 65 characters", renamed("P".repeat(65)), "id has 3 to 64 characters, got 65"],
  ["an id is a cell's address", renamed("PVC40"), "PVC40: id is also a cell's address"],
  ["an id is another one's too", renamed("POOL.LOSSES"), "two functions are stored as POOL_LOSSES"],
  ["a name differs from its id", (first) => void (first.name = "PIPE.HEAD"), 'name must equal the id, got "PIPE.HEAD"'],
  [
    "a description is too long",
    (first) => void (first.description = "d".repeat(129)),
    "description has at most 128 characters, got 129",
  ],
  ["a description is blank", (first) => void (first.description = " "), "description is missing or empty"],
  [
    "a parameter's description is too long",
    firstParameter({ description: "d".repeat(129) }),
    "parameter 1 (flow): description has at most 128",
  ],
  [
    "a parameter's name has a space",
    firstParameter({ name: "water flow" }),
    'name must be a plain identifier, got "water flow"',
  ],
  [
    "a parameter's name is too long",
    firstParameter({ name: "f".repeat(65) }),
    "name has at most 64 characters, got 65",
  ],
  ["two parameters share a name", firstParameter({ name: "run" }), 'parameter name "run" is given twice'],
  ["a parameter's type is unknown", firstParameter({ type: "integer" }), "type is one of any, boolean, number, string"],
  ["a parameter's shape is unknown", firstParameter({ dimensionality: "list" }), "dimensionality is scalar or matrix"],
  [
    "a required parameter follows an optional one",
    firstParameter({ optional: true }),
    "parameter 2 is required but follows an optional one",
  ],
  ["a choice has no list", firstParameter({ customEnumId: "SIZES" }), 'there is no custom enum "SIZES"'],
  ["a function is volatile", (first) => void (first.options = { volatile: true }), "option volatile is not allowed"],
  ["a function streams", (first) => void (first.options = { stream: true }), "option stream is not allowed"],
  [
    "errors are passed into functions",
    (_first, all) => void (all.allowErrorForDataTypeAny = true),
    "allowErrorForDataTypeAny must stay unset",
  ],
  [
    "a choice list is given twice",
    (_first, all) => void all.enums?.push(...all.enums),
    'custom enum "UNITS" is given twice',
  ],
  [
    "a help address is http",
    (first) => void (first.helpUrl = first.helpUrl.replace("https", "http")),
    "helpUrl must lead to https",
  ],
  [
    "a help address is another function's",
    (first) => void (first.helpUrl = first.helpUrl.replace("HEADLOSS", "BORE")),
    "helpUrl must lead to https://…/help/PIPE.HEADLOSS.html",
  ],
  [
    "a help address is local",
    (first) => void (first.helpUrl = "https://localhost:3000/help/PIPE.HEADLOSS.html"),
    "helpUrl is outside the add-in's own https://warmback.example/",
  ],
];

describe("functions.json is refused when", () => {
  test.each(BROKEN_METADATA)("%s", (_title, edit, says) => {
    const metadata = sampleMetadata();
    const [first] = metadata.functions;
    if (!first) throw new Error("the sample lists no function");
    edit(first, metadata);
    expect(spoken(checkManifest(sampleXml(), sampleBuild({ metadata })), "functions")).toContain(says);
  });
});
