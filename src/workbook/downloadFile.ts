/** Gives bytes to the user as a file of the browser's downloads. */

export const WORKBOOK_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The browser may ask for the bytes a while after the click. */
const KEPT = 60_000;

export function downloadFile(bytes: BlobPart, name: string, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEPT);
}
