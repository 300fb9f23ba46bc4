/** Files that are dropped beside every box for files: those of weather are read, others are said to belong elsewhere. */
import { isWeatherName } from "./views/weatherFile";

const holdsFile = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes("Files") === true;

export interface DropActions {
  readWeather(file: File): void;
  announce(sentence: string): void;
}

/** Without it the browser would show the file in place of the panel. */
export function watchDrops({ readWeather, announce }: DropActions): void {
  document.addEventListener("dragover", (event) => {
    if (holdsFile(event)) event.preventDefault();
  });
  document.addEventListener("drop", (event) => {
    if (event.defaultPrevented || !holdsFile(event)) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file === undefined) return;
    if (isWeatherName(file.name)) readWeather(file);
    else announce(`${file.name} isn't a weather file or a log: EPW, CSV, TXT, or one of them packed as .gz or .zip.`);
  });
}
