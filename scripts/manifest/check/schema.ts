/**
 * The part of the add-in only manifest's schema that an Excel add-in with custom functions and ribbon buttons needs:
 * task pane manifest 1.1 with version overrides 1.0. Children are in the order that the schema requires.
 * Menus, custom tabs, dictionaries, equivalent add-ins and the elements of other Office programs are left out on purpose.
 *
 * Sources: Microsoft Learn, "How to find the proper order of manifest elements" (2 June 2025);
 * [MS-OWEMXML] Office Web Extensibility Manifest Format, sections 5.6 and 5.7.
 */

export const NAMESPACES = {
  base: "http://schemas.microsoft.com/office/appforoffice/1.1",
  overrides: "http://schemas.microsoft.com/office/taskpaneappversionoverrides",
  basic: "http://schemas.microsoft.com/office/officeappbasictypes/1.0",
} as const;

export type Ns = keyof typeof NAMESPACES;

/** Kind of resource that a `resid` must lead to. */
export type ResourceKind = "Image" | "Url" | "short String" | "long String";

export interface ElementShape {
  readonly name: string;
  readonly ns: Ns;
  readonly times: "one" | "optional" | "some";
  readonly children: readonly ElementShape[];
  /** Children by `xsi:type`, where the schema derives types; an unlisted type is refused. */
  readonly byType?: Readonly<Record<string, readonly ElementShape[]>>;
  readonly refers?: ResourceKind;
  readonly attributes?: readonly string[];
}

type More = Partial<Omit<ElementShape, "name" | "ns">>;

const shapes =
  (ns: Ns) =>
  (name: string, more: More = {}): ElementShape => ({ name, ns, times: "one", children: [], ...more });

const base = shapes("base");
const over = shapes("overrides");
const basic = shapes("basic");

const LOCALISED = {
  attributes: ["DefaultValue"],
  children: [base("Override", { times: "some", attributes: ["Locale", "Value"] })],
} as const satisfies More;

const requirements = (ns: Ns, inner: Ns): ElementShape =>
  shapes(ns)("Requirements", {
    times: "optional",
    children: [
      shapes(inner)("Sets", {
        children: [shapes(inner)("Set", { times: "some", attributes: ["Name"] })],
      }),
      shapes(inner)("Methods", { times: "optional" }),
    ],
  });

const source = over("SourceLocation", { refers: "Url" });
const title = over("Title", { refers: "short String" });
const description = over("Description", { refers: "long String" });
const label = over("Label", { refers: "short String" });
const icon = over("Icon", { children: [basic("Image", { times: "some", attributes: ["size"], refers: "Image" })] });

const action = over("Action", {
  byType: {
    ShowTaskpane: [over("TaskpaneId", { times: "optional" }), source, { ...title, times: "optional" }],
    ExecuteFunction: [over("FunctionName")],
  },
});

const button = over("Control", {
  times: "some",
  attributes: ["id"],
  byType: {
    Button: [
      label,
      over("Supertip", { children: [title, description] }),
      icon,
      action,
      over("Enabled", { times: "optional" }),
    ],
  },
});

const tab = over("OfficeTab", {
  times: "some",
  attributes: ["id"],
  children: [over("Group", { times: "some", attributes: ["id"], children: [label, icon, button] })],
});

const functionsPoint = over("ExtensionPoint", {
  times: "some",
  byType: {
    CustomFunctions: [
      over("Script", { children: [source] }),
      over("Page", { children: [source] }),
      over("Metadata", { children: [source] }),
      over("Namespace", { times: "optional", refers: "short String" }),
    ],
  },
});

const workbook: readonly ElementShape[] = [
  over("Runtimes", { children: [over("Runtime", { attributes: ["lifetime"], refers: "Url" })] }),
  over("AllFormFactors", { children: [functionsPoint] }),
  over("DesktopFormFactor", {
    children: [
      over("GetStarted", {
        times: "optional",
        children: [title, description, over("LearnMoreUrl", { refers: "Url" })],
      }),
      over("FunctionFile", { times: "optional", refers: "Url" }),
      over("ExtensionPoint", { times: "some", byType: { PrimaryCommandSurface: [tab] } }),
    ],
  }),
];

const resourceList = (list: string, element: string): ElementShape =>
  basic(list, {
    times: "optional",
    children: [
      basic(element, {
        times: "some",
        attributes: ["id", "DefaultValue"],
        children: [basic("Override", { times: "some", attributes: ["Locale", "Value"] })],
      }),
    ],
  });

const overrides = over("VersionOverrides", {
  byType: {
    VersionOverridesV1_0: [
      { ...description, times: "optional" },
      requirements("overrides", "basic"),
      over("Hosts", { children: [over("Host", { times: "some", byType: { Workbook: workbook } })] }),
      over("Resources", {
        children: [
          resourceList("Images", "Image"),
          resourceList("Urls", "Url"),
          resourceList("ShortStrings", "String"),
          resourceList("LongStrings", "String"),
        ],
      }),
    ],
  },
});

/** The whole document. Icons and support address are optional in the schema, but Excel's lists need them: here they are required. */
export const OFFICE_APP: ElementShape = base("OfficeApp", {
  byType: {
    TaskPaneApp: [
      base("Id"),
      base("AlternateId", { times: "optional" }),
      base("Version"),
      base("ProviderName"),
      base("DefaultLocale"),
      base("DisplayName", LOCALISED),
      base("Description", LOCALISED),
      base("IconUrl", LOCALISED),
      base("HighResolutionIconUrl", LOCALISED),
      base("SupportUrl", LOCALISED),
      base("AppDomains", { times: "optional", children: [base("AppDomain", { times: "some" })] }),
      base("Hosts", { children: [base("Host", { times: "some", attributes: ["Name"] })] }),
      requirements("base", "base"),
      base("DefaultSettings", { children: [base("SourceLocation", LOCALISED)] }),
      base("Permissions"),
      overrides,
    ],
  },
});
