/** Benches: npm run bench, or some of them by name: npm run bench -- debrief. What else follows `--` goes to each of them. */
const BENCHES: Readonly<Record<string, () => Promise<unknown>>> = {
  physics: () => import('./physicsBench.ts'),
  room: () => import('./roomBench.ts'),
  debrief: () => import('./debriefBench.ts'),
};

const named = process.argv.slice(2).filter((word) => word in BENCHES);
for (const [name, run] of Object.entries(BENCHES)) if (named.length === 0 || named.includes(name)) await run();

export {};
