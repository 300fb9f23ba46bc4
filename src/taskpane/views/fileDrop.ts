/** A place to drop a file on, with a button to choose one. */
import { h } from "../elements";

interface FileDropOptions {
  /** Endings of names, as a file input takes them. */
  readonly accept: string;
  readonly key: string;
}

const WORKBOOKS: FileDropOptions = { accept: ".xlsx,.xlsm", key: "saved file" };

/** @param take gets the file's bytes and name */
export function fileDrop(
  label: string,
  take: (bytes: Uint8Array, name: string) => void,
  { accept, key }: FileDropOptions = WORKBOOKS,
): HTMLElement {
  const give = (file: File | undefined): void => {
    if (file !== undefined) void file.arrayBuffer().then((bytes) => take(new Uint8Array(bytes), file.name));
  };
  const input = h("input", {
    type: "file",
    accept,
    "data-key": key,
    change: ({ target }) => {
      if (!(target instanceof HTMLInputElement)) return;
      give(target.files?.[0]);
      // The same file may be chosen again.
      target.value = "";
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
