/** Ends the program in order when who reads its output has seen enough, as `head` does. */
export function endWithReader(): void {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 1));
}
