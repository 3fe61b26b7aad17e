/** No file of ours nests deeper; anything that does is refused before it can exhaust the stack. */
const DEPTH_MAX = 40;

/** Whether a JSON value nests no deeper than `DEPTH_MAX`; looks at it level by level, without recursion. */
export function isShallow(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > DEPTH_MAX) return false;
    const next: unknown[] = [];
    for (const item of level) {
      if (typeof item !== 'object' || item === null) continue;
      for (const child of Object.values(item)) next.push(child);
    }
    level = next;
  }
  return true;
}
