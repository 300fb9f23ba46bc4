/** A place to drop a file on, with a button to choose one. */
import { h } from "../elements";

/** @param take gets the file's bytes and name */
export function fileDrop(label: string, take: (bytes: Uint8Array, name: string) => void): HTMLElement {
  const give = (file: File | undefined): void => {
    if (file !== undefined) void file.arrayBuffer().then((bytes) => take(new Uint8Array(bytes), file.name));
  };
  const input = h("input", {
    type: "file",
    accept: ".xlsx,.xlsm",
    "data-key": "saved file",
    change: ({ target }) => {
      if (target instanceof HTMLInputElement) give(target.files?.[0]);
    },
  });
  const over = (event: Event): void => {
    event.preventDefault();
    root.classList.toggle("over", event.type === "dragover");
  };
  const root = h(
    "label",
    {
      class: "drop",
      dragover: over,
      dragleave: over,
      drop: (event) => {
        over(event);
        if (event instanceof DragEvent) give(event.dataTransfer?.files[0]);
      },
    },
    h("span", {}, label),
    input,
  );
  return root;
}
