/**
 * The lines of a stream as they arrive, trimmed and without empty ones: each group is what one piece of the stream completed.
 * So a filter's answers follow its input, and no more than one piece is held.
 */
export async function* lineGroups(pieces: AsyncIterable<string>): AsyncGenerator<readonly string[]> {
  let begun = "";
  const filled = (lines: readonly string[]): readonly string[] =>
    lines.map((line) => line.trim()).filter((line) => line !== "");
  for await (const piece of pieces) {
    const lines = (begun + piece).split("\n");
    begun = lines.pop() ?? "";
    const group = filled(lines);
    if (group.length > 0) yield group;
  }
  const last = filled([begun]);
  if (last.length > 0) yield last;
}
