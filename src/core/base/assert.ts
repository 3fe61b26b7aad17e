/** Always-on check for our own bugs; files and people are answered with a `Result` instead. */
export function assert(condition: boolean, message: string): asserts condition {
  if (!condition) throw new Error(`Assertion failed: ${message}`);
}
