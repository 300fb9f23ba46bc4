/**
 * The HTTP headers of every published file: one set, used by the local server, by the written header file and by the tests.
 * Paths are relative to the build's root; a leading slash, a query and a fragment are ignored; "" is the start page.
 */

const START_PAGE = "index.html";

/** The folder that office.js is loaded from and loads from. */
const OFFICE_SCRIPTS = ["https://appsforoffice.microsoft.com/lib/"];

/** office.js shows its message for a host that it doesn't know in a frame from here. */
const OFFICE_MESSAGES = ["https://appsforoffice.microsoft.com"];

/**
 * Pages that Excel on the web frames add-ins in, those of Teams and of governments' clouds among them. Microsoft publishes no
 * list; these come from the threads OfficeDev/office-js issue 3342 and OfficeDev/office-js-docs-pr issue 4911. A host that is
 * left out shows a blank pane. Desktop Excel doesn't frame.
 */
const OFFICE_FRAMES = [
  "https://*.officeapps.live.com",
  "https://*.live.com",
  "https://*.office.com",
  "https://*.office365.us",
  "https://*.microsoft365.com",
  "https://*.cloud.microsoft",
  "https://*.sharepoint.com",
  "https://*.sharepoint.us",
  "https://teams.microsoft.com",
  "https://*.teams.microsoft.com",
];

type Policy = Readonly<Record<string, readonly string[]>>;

const NONE = ["'none'"];
const SELF = ["'self'"];
/** Style ATTRIBUTES only: MathML from the build and office.js set them; style elements and scripts stay barred. */
const STYLE_ATTRIBUTES = { "style-src-attr": ["'unsafe-inline'"] };

const STRICT: Policy = {
  "default-src": NONE,
  "script-src": SELF,
  "style-src": SELF,
  ...STYLE_ATTRIBUTES,
  "img-src": ["'self'", "data:"],
  "font-src": SELF,
  "connect-src": SELF,
  "worker-src": SELF,
  "base-uri": NONE,
  "form-action": NONE,
  "frame-ancestors": SELF,
};

const PANE: Policy = {
  ...STRICT,
  "script-src": [...SELF, ...OFFICE_SCRIPTS],
  "frame-src": OFFICE_MESSAGES,
  "frame-ancestors": [...SELF, ...OFFICE_FRAMES],
};

/** Of the help pages the index alone has a script, in a file of its own; it connects to nothing. */
const HELP: Policy = {
  "default-src": NONE,
  "script-src": SELF,
  "style-src": ["'self'", "'unsafe-inline'"],
  "img-src": ["'self'", "data:"],
  "font-src": SELF,
  "base-uri": NONE,
  "form-action": NONE,
  "frame-ancestors": [...SELF, ...OFFICE_FRAMES],
};

/** The sheet engine of the preview sets style elements and draws to blobs; it needs no eval. */
const PREVIEW: Policy = {
  "default-src": SELF,
  "style-src": ["'self'", "'unsafe-inline'"],
  "img-src": ["'self'", "data:", "blob:"],
  "font-src": ["'self'", "data:"],
  "object-src": NONE,
  "base-uri": NONE,
  "form-action": NONE,
  "frame-ancestors": SELF,
};

/** A worker obeys the policy of its own file, not its page's. */
const SCRIPT: Policy = { "default-src": NONE, "script-src": SELF, "connect-src": SELF };

/** An SVG opened by itself is a document. */
const DRAWING: Policy = { "default-src": NONE, "style-src": ["'unsafe-inline'"] };

const TYPES: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  json: "application/json; charset=utf-8",
  map: "application/json; charset=utf-8",
  xml: "application/xml; charset=utf-8",
  txt: "text/plain; charset=utf-8",
  csv: "text/csv; charset=utf-8",
  svg: "image/svg+xml",
  png: "image/png",
  ico: "image/vnd.microsoft.icon",
  woff2: "font/woff2",
  wasm: "application/wasm",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

const PICTURES = ["svg", "png", "ico"];

function plainPath(path: string): string {
  const bare = path.replace(/[?#].*$/, "").replace(/^\/+/, "");
  return bare === "" || bare.endsWith("/") ? `${bare}${START_PAGE}` : bare;
}

function extensionOf(path: string): string {
  const name = plainPath(path).split("/").at(-1) ?? "";
  return name.includes(".") ? name.slice(name.lastIndexOf(".") + 1).toLowerCase() : "";
}

/** Media type by the file's extension; an unknown one is plain bytes, which no browser runs or shows. */
export function contentType(path: string): string {
  return TYPES[extensionOf(path)] ?? "application/octet-stream";
}

function policyOf(path: string, extension: string): Policy | undefined {
  if (extension === "js") return SCRIPT;
  if (extension === "svg") return DRAWING;
  if (extension !== "html") return undefined;
  if (path.startsWith("help/")) return HELP;
  if (path === "taskpane.html") return PANE;
  return /^(preview\/)?(index|preview)\.html$/.test(path) ? PREVIEW : STRICT;
}

const written = (policy: Policy): string =>
  Object.entries(policy)
    .map(([directive, sources]) => [directive, ...sources].join(" "))
    .join("; ");

/** A content hash in the name: the file under this name never changes. */
const isHashed = (path: string): boolean => /[.-][0-9a-f]{8,}\.(js|css|json|map|svg|png|woff2|wasm)$/.test(path);

function cacheRule(path: string, extension: string): string {
  if (isHashed(path)) return "public, max-age=31536000, immutable";
  // Office doesn't show ribbon icons that come with no-cache or no-store (Microsoft Learn, "Image element").
  return PICTURES.includes(extension) ? "public, max-age=86400" : "no-cache";
}

/** Fetched by Excel on the web from its own origin: the metadata and its script, the help and the icons. */
const isShared = (path: string): boolean => /^(functions\.(js|json)$|help\/|assets\/)/.test(path);

/** The headers of one published file, by their usual names. */
export function headersFor(path: string): Readonly<Record<string, string>> {
  const plain = plainPath(path);
  const extension = extensionOf(plain);
  const policy = policyOf(plain, extension);
  return {
    "Content-Type": contentType(plain),
    "Cache-Control": cacheRule(plain, extension),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    ...(policy && { "Content-Security-Policy": written(policy) }),
    ...(extension === "html" && {
      "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
    }),
    ...(isShared(plain) && { "Access-Control-Allow-Origin": "*", "Cross-Origin-Resource-Policy": "cross-origin" }),
  };
}

/** Hosts that read `_headers` take so many rules and drop the rest (Cloudflare Pages, "Headers"). */
export const MOST_HEADER_RULES = 100;

const textOf = (path: string): string =>
  Object.entries(headersFor(path))
    .map(([name, value]) => `\n  ${name}: ${value}`)
    .join("");

/** A folder is one rule if all its files have the same headers; any other file is a rule of its own. */
function rulesOf(paths: readonly string[]): ReadonlyMap<string, string> {
  const folders = new Map<string, Set<string>>();
  for (const path of paths) {
    const folder = path.slice(0, path.indexOf("/") + 1);
    folders.set(folder, (folders.get(folder) ?? new Set()).add(textOf(path)));
  }
  return new Map(
    paths.map((path) => {
      const folder = path.slice(0, path.indexOf("/") + 1);
      const isOne = folder !== "" && folders.get(folder)?.size === 1;
      return [isOne ? `/${folder}*` : `/${path}`, textOf(path)];
    }),
  );
}

/**
 * The header file that several static hosts read (`_headers`): a path, then its headers, indented. No file is matched by
 * two rules: those hosts would join both rules' headers, which would make every policy the intersection of two.
 * @throws Error if there are more rules than hosts read
 */
export function headersFile(paths: readonly string[]): string {
  const start = paths.includes(START_PAGE) ? [`/${textOf(START_PAGE)}`] : [];
  const rules = [...start, ...[...rulesOf([...paths].sort())].map(([path, headers]) => path + headers)];
  if (rules.length > MOST_HEADER_RULES)
    throw new Error(`the header file has ${String(rules.length)} rules: hosts read ${String(MOST_HEADER_RULES)}`);
  return rules.join("\n\n") + "\n";
}
