/** Breaks a text into lines of so many letters; a longer word goes on in the next line, after a hyphen or a slash where it has one. */
export function wordLines(text: string, letters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ").flatMap((each) => wordParts(each, letters))) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length + 1 <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function wordParts(word: string, letters: number): readonly string[] {
  if (word.length <= letters) return [word];
  const atSign = Math.max(word.lastIndexOf("-", letters - 1), word.lastIndexOf("/", letters - 1)) + 1;
  const end = atSign > 0 ? atSign : letters;
  return [word.slice(0, end), ...wordParts(word.slice(end), letters)];
}
