/** Has Excel open a finished copy as a new workbook; where it won't, gives the copy as a download. */
import { downloadFile, WORKBOOK_TYPE } from "../downloadFile";
import { timeSlices } from "../timeSlices";
import { supports } from "./run";
import { sentence } from "./sentences";

/** Bytes that are turned into base 64 at once: three of them make four characters. */
const PIECE = 3 * 8_192;

async function base64(bytes: Uint8Array): Promise<string> {
  const pause = timeSlices({}, []);
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += PIECE) {
    pieces.push(btoa(String.fromCharCode(...bytes.subarray(at, at + PIECE))));
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  return pieces.join("");
}

/** Why Excel won't open it; undefined where it was asked and didn't refuse. */
async function refusalOf(bytes: Uint8Array): Promise<string | undefined> {
  if (!supports("1.8")) return "this Excel can't open a workbook for an add-in";
  try {
    await Excel.createWorkbook(await base64(bytes));
    return undefined;
  } catch (error) {
    return sentence(error);
  }
}

/** @returns where the copy is, as a whole sentence; that Excel did open it can't be known */
export async function openCopy(bytes: Uint8Array, name: string): Promise<string> {
  const refusal = await refusalOf(bytes);
  if (refusal === undefined) return "Excel was asked to open the copy as a new workbook: save it there under a name.";
  try {
    downloadFile(bytes as Uint8Array<ArrayBuffer>, name, WORKBOOK_TYPE);
  } catch (error) {
    throw new Error(`Excel didn't open the copy (${refusal}), and it can't be downloaded here`, { cause: error });
  }
  return `Excel didn't open the copy (${refusal}). It was given as a download: look for “${name}” among your downloads.`;
}
