/** Opens workbooks in LibreOffice, recalculates everything and reads what it found. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const PLACES = [process.env["WARMBACK_SOFFICE"], "/usr/bin/soffice", "/usr/local/bin/soffice"];
const SOFFICE = PLACES.find((path) => path !== undefined && existsSync(path));

/** Where LibreOffice is missing the tests are named as not run; with CI=true they fail. */
export const skipsLibreOffice = SOFFICE === undefined && process.env["CI"] !== "true";
export const titled = (title: string): string =>
  skipsLibreOffice ? `NOT RUN (apt-get install libreoffice-calc): ${title}` : title;

/** Recalculates on opening, whatever program wrote the file. */
const SETTINGS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item></oor:items>`;

/** @returns the workbook as LibreOffice writes it again; throws where it can't open one */
export const recalculated = (bytes: Uint8Array, extension = "xlsx"): Uint8Array => converted(bytes, extension, "xlsx");

/** @returns the workbook in another format, recalculated; throws where LibreOffice can't open one */
export function converted(bytes: Uint8Array, extension: string, to: string): Uint8Array {
  if (SOFFICE === undefined) throw new Error("LibreOffice is not installed");
  const folder = mkdtempSync(join(tmpdir(), "warmback-package-"));
  try {
    const profile = join(folder, "profile");
    mkdirSync(join(profile, "user"), { recursive: true });
    writeFileSync(join(profile, "user/registrymodifications.xcu"), SETTINGS);
    mkdirSync(join(folder, "out"));
    const file = join(folder, `book.${extension}`);
    writeFileSync(file, bytes);
    const args = [
      `-env:UserInstallation=file://${profile}`,
      "--headless",
      "--convert-to",
      to,
      "--outdir",
      join(folder, "out"),
      file,
    ];
    execFileSync(SOFFICE, args, { stdio: "pipe", timeout: 150_000 });
    return new Uint8Array(readFileSync(join(folder, `out/book.${to}`)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
