import { iconPath, RIBBON_ICON_SIZES, type IconSize } from "./icons";

/** Prefix of every cell function. Workbooks store it: it never changes. */
export const NAMESPACE = "WARMBACK";

/** The add-in's files that the manifest names, as paths inside the build. */
export const PAGES = {
  functions: "functions.js",
  metadata: "functions.json",
  pane: "taskpane.html",
  help: "help/index.html",
} as const;

/** Page that explains one cell function, as a path inside the build. */
export const helpPage = (id: string): string => `help/${id}.html`;

export type Variant = "production" | "development";

/** The two manifests: they differ in their files' host, identity and shown name, in nothing else. */
export const VARIANTS: Readonly<Record<Variant, { file: string; host: string; id: string; name: string }>> = {
  // The production host is a placeholder (RFC 2606 reserves ".example"): it MUST be set at release, `write.mts --host …`.
  production: {
    file: "manifest.xml",
    host: "https://warmback.example",
    id: "fd660e58-5ad8-4d13-8196-793bbd7adcc3",
    name: "Warmback",
  },
  development: {
    file: "manifest.dev.xml",
    host: "https://localhost:3000",
    id: "1271e67c-8f5c-4d81-a453-38aea166e9bf",
    name: "Warmback (development)",
  },
};

/** Greatest lengths of texts, characters (Microsoft Learn, add-in only manifest reference: String, Resources, Url). */
export const LIMITS = { resid: 32, shortString: 125, longString: 250, url: 2048, namespace: 32 } as const;

const SUMMARY =
  "Cell functions and caution notes for engineers who heat a swimming pool with the heat that an air conditioner rejects.";

/** Short texts: labels and titles. Resource ids are the keys. */
const SHORT: Readonly<Record<string, string>> = {
  "Functions.Namespace": NAMESPACE,
  "Start.Title": "Warmback is ready",
  "Group.Label": "Warmback",
  "Open.Label": "Warmback panel",
  "Open.Title": "Open the Warmback panel",
};

/** Long texts: descriptions. Resource ids are the keys. */
const LONG: Readonly<Record<string, string>> = {
  "Start.Text": `Type =${NAMESPACE}. in a cell, or open the panel from the Home tab to find a function or insert the sizing sheet.`,
  "Open.Text":
    "Read the caution notes of this workbook, see the working behind a cell, find a function, insert a starter sheet.",
};

/**
 * The manifest's four-part version: 1.major.minor.patch of the package. Excel on the web wants four numbers and
 * Microsoft's validator refuses a version below 1.0, which a package before its first release has.
 * @throws RangeError when the package's version isn't three numbers.
 */
export function manifestVersion(packageVersion: string): string {
  if (!/^\d{1,5}\.\d{1,5}\.\d{1,5}$/.test(packageVersion)) {
    throw new RangeError(`version: expected three numbers like 0.1.0, got "${packageVersion}"`);
  }
  return `1.${packageVersion}`;
}

/**
 * The host as the manifest needs it, without a closing slash; a path below the host is allowed.
 * @throws RangeError when it isn't an https address without query and fragment.
 */
export function checkedHost(host: string): string {
  const url = URL.canParse(host) ? new URL(host) : undefined;
  const plain = url !== undefined && url.search === "" && url.hash === "" && url.username === "";
  if (!plain || url.protocol !== "https:") {
    throw new RangeError(`host: expected an https address like https://warmback.example, got "${host}"`);
  }
  return (url.origin + url.pathname).replace(/\/+$/, "");
}

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const resource = (element: string, entries: readonly (readonly [string, string])[]): string =>
  entries.map(([id, value]) => `        <bt:${element} id="${id}" DefaultValue="${escaped(value)}"/>`).join("\n");

const iconId = (size: IconSize): string => `Icon.${size}`;

const ribbonIcon = (indent: string): string =>
  [
    `${indent}<Icon>`,
    ...RIBBON_ICON_SIZES.map((size) => `${indent}  <bt:Image size="${size}" resid="${iconId(size)}"/>`),
    `${indent}</Icon>`,
  ].join("\n");

function resources(at: (path: string) => string): string {
  const urls: readonly (readonly [string, string])[] = [
    ["Functions.Script", at(PAGES.functions)],
    ["Functions.Metadata", at(PAGES.metadata)],
    ["Pane.Url", at(PAGES.pane)],
    ["Help.Url", at(PAGES.help)],
  ];
  return `    <Resources>
      <bt:Images>
${resource(
  "Image",
  RIBBON_ICON_SIZES.map((size) => [iconId(size), at(iconPath(size))] as const),
)}
      </bt:Images>
      <bt:Urls>
${resource("Url", urls)}
      </bt:Urls>
      <bt:ShortStrings>
${resource("String", Object.entries(SHORT))}
      </bt:ShortStrings>
      <bt:LongStrings>
${resource("String", Object.entries(LONG))}
      </bt:LongStrings>
    </Resources>`;
}

/** One runtime holds the functions and the pane: all of them name the same page, else the runtime isn't shared. */
const HOSTS = `    <Hosts>
      <Host xsi:type="Workbook">
        <Runtimes>
          <Runtime resid="Pane.Url" lifetime="long"/>
        </Runtimes>
        <AllFormFactors>
          <ExtensionPoint xsi:type="CustomFunctions">
            <Script>
              <SourceLocation resid="Functions.Script"/>
            </Script>
            <Page>
              <SourceLocation resid="Pane.Url"/>
            </Page>
            <Metadata>
              <SourceLocation resid="Functions.Metadata"/>
            </Metadata>
            <Namespace resid="Functions.Namespace"/>
          </ExtensionPoint>
        </AllFormFactors>
        <DesktopFormFactor>
          <GetStarted>
            <Title resid="Start.Title"/>
            <Description resid="Start.Text"/>
            <LearnMoreUrl resid="Help.Url"/>
          </GetStarted>
          <FunctionFile resid="Pane.Url"/>
          <ExtensionPoint xsi:type="PrimaryCommandSurface">
            <OfficeTab id="TabHome">
              <Group id="Warmback.Group">
                <Label resid="Group.Label"/>
${ribbonIcon("                ")}
                <Control xsi:type="Button" id="Warmback.Open">
                  <Label resid="Open.Label"/>
                  <Supertip>
                    <Title resid="Open.Title"/>
                    <Description resid="Open.Text"/>
                  </Supertip>
${ribbonIcon("                  ")}
                  <Action xsi:type="ShowTaskpane">
                    <TaskpaneId>Warmback.Pane</TaskpaneId>
                    <SourceLocation resid="Pane.Url"/>
                  </Action>
                </Control>
              </Group>
            </OfficeTab>
          </ExtensionPoint>
        </DesktopFormFactor>
      </Host>
    </Hosts>`;

/** What one written manifest depends on. `host`: where the build is served, https; `packageVersion`: three numbers. */
export interface ManifestSettings {
  readonly variant: Variant;
  readonly packageVersion: string;
  /** Omitted: the variant's own host; for production that is a placeholder. */
  readonly host?: string;
}

/**
 * The add-in only (XML) manifest for Excel.
 * @throws RangeError for a host or a version that a manifest can't hold.
 */
export function manifestXml({ variant, packageVersion, host }: ManifestSettings): string {
  const { id, name, host: usualHost } = VARIANTS[variant];
  const base = checkedHost(host ?? usualHost);
  const at = (path: string): string => `${base}/${path}`;
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- Written by manifest/write.mts from manifest/manifest.ts: change it there. -->
<OfficeApp xmlns="http://schemas.microsoft.com/office/appforoffice/1.1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:bt="http://schemas.microsoft.com/office/officeappbasictypes/1.0" xsi:type="TaskPaneApp">
  <Id>${id}</Id>
  <Version>${manifestVersion(packageVersion)}</Version>
  <ProviderName>Warmback</ProviderName>
  <DefaultLocale>en-US</DefaultLocale>
  <DisplayName DefaultValue="${escaped(name)}"/>
  <Description DefaultValue="${escaped(SUMMARY)}"/>
  <IconUrl DefaultValue="${escaped(at(iconPath(32)))}"/>
  <HighResolutionIconUrl DefaultValue="${escaped(at(iconPath(64)))}"/>
  <SupportUrl DefaultValue="${escaped(at(PAGES.help))}"/>
  <Hosts>
    <Host Name="Workbook"/>
  </Hosts>
  <!-- These two sets are all that must be there: they leave out Excel for iPad and Office 2019. Anything newer is tested for at run time. -->
  <Requirements>
    <Sets DefaultMinVersion="1.1">
      <Set Name="SharedRuntime" MinVersion="1.1"/>
      <Set Name="CustomFunctionsRuntime" MinVersion="1.2"/>
    </Sets>
  </Requirements>
  <DefaultSettings>
    <SourceLocation DefaultValue="${escaped(at(PAGES.pane))}"/>
  </DefaultSettings>
  <!-- ReadWriteDocument: Excel.run needs it. Read: the formulas of the open workbook, to show their cautions and working.
       Write: only on a command of the panel (insert a function or a starter sheet, hand over, mend). Nothing leaves the workbook. -->
  <Permissions>ReadWriteDocument</Permissions>
  <VersionOverrides xmlns="http://schemas.microsoft.com/office/taskpaneappversionoverrides" xsi:type="VersionOverridesV1_0">
${HOSTS}
${resources(at)}
  </VersionOverrides>
</OfficeApp>
`;
}
