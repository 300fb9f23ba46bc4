/** Debian's Chromium: where it lies and how it is started. */
export const CHROMIUM = process.env["WARMBACK_CHROMIUM"] ?? "/usr/bin/chromium";

export const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
