/**
 * The panel's script. It checks the functions script first: everything else takes the core from there. If that script is
 * missing or belongs to another build, the page says so.
 */
import { functionsFault } from "../functions/buildHash";

function showFault(root: HTMLElement, text: string): void {
  const line = document.createElement("p");
  line.className = "fault";
  line.setAttribute("role", "alert");
  line.textContent = text;
  root.classList.add("panel");
  root.replaceChildren(line);
}

async function open(root: HTMLElement): Promise<void> {
  const fault = functionsFault(globalThis.warmback);
  if (fault !== undefined) return showFault(root, fault);
  try {
    const { start } = await import(/* webpackMode: "eager" */ "./start");
    const reason = await start(root);
    if (reason !== undefined) showFault(root, reason);
  } catch (error) {
    showFault(root, `The panel didn't open: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const root = document.getElementById("panel");
if (root !== null) void open(root);
