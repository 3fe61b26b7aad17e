/**
 * Cost of a physics step, side by side with a general rigid-body engine on the same scene and hand script.
 * Run: npx tsx src/bench/physicsBench.ts [--json] [--seconds 20] [--seed 7]
 * Both engines run in one process in alternating blocks, so that a busy machine slows them alike. The motions diverge after a
 * while, so this compares the cost of the same task, not of the same motion.
 */
import { buildBedScene, type BedScene } from './bedScene.ts';
import { ABUSED, CALM, HandScript, STILL, WORKING, type HandLimits } from './handScript.ts';
import { OwnEngine } from './ownEngine.ts';
import { loadRapier, RapierEngine } from './rapierEngine.ts';
import type { SceneEngine } from './sceneEngine.ts';

const BLOCK = 30;
const WARM_UP = 60;
const STEP_MS = 1000 / 120;

interface Row {
  readonly nodes: string;
  readonly hands: string;
  readonly ownMs: number;
  readonly rapierMs: number;
  readonly ratio: number;
}

class TimedRun {
  readonly times: number[] = [];
  private readonly scene: BedScene;
  private readonly script: HandScript;

  constructor(private readonly engine: SceneEngine, drapeNodes: number, cordNodes: number, limits: HandLimits, seed: number) {
    this.scene = buildBedScene(engine, drapeNodes, cordNodes);
    this.script = new HandScript(this.scene, limits, seed);
  }

  block(): void {
    for (let k = 0; k < BLOCK; k++) {
      this.script.drive();
      const start = performance.now();
      this.engine.step();
      this.times.push(performance.now() - start);
    }
  }

  median(): number {
    const sorted = this.times.slice(WARM_UP).sort((a, b) => a - b);
    return sorted[sorted.length >> 1]!;
  }
}

function compare(drapeNodes: number, cordNodes: number, hands: string, limits: HandLimits, seconds: number, seed: number): Row {
  const own = new TimedRun(new OwnEngine({ sleep: false }), drapeNodes, cordNodes, limits, seed);
  const rapier = new TimedRun(new RapierEngine(), drapeNodes, cordNodes, limits, seed);
  for (let k = 0; k < (seconds * 120) / BLOCK; k++) {
    own.block();
    rapier.block();
  }
  const ownMs = own.median();
  const rapierMs = rapier.median();
  return { nodes: `${drapeNodes}/${cordNodes}`, hands, ownMs, rapierMs, ratio: ownMs / rapierMs };
}

/** Real time over computing time of the scene once it sleeps; 0 if it does not within 20 s. */
function asleepSpeed(drapeNodes: number, cordNodes: number): number {
  const engine = new OwnEngine();
  const script = new HandScript(buildBedScene(engine, drapeNodes, cordNodes), STILL, 1);
  for (let k = 0; k < 20 * 120 && !engine.world.isAsleep(); k++) {
    script.drive();
    engine.step();
  }
  if (!engine.world.isAsleep()) return 0;
  const start = performance.now();
  for (let k = 0; k < 1200; k++) {
    script.drive();
    engine.step();
  }
  return (1200 * STEP_MS) / (performance.now() - start);
}

const option = (name: string, fallback: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? fallback : Number(process.argv[at + 1]);
};

await loadRapier();
const seconds = option('seconds', 20);
const seed = option('seed', 7);
const rows: Row[] = [];
for (const [drapeNodes, cordNodes] of [[60, 50], [121, 101]] as const) {
  for (const [hands, limits] of [['still', STILL], ['0.3 m/s', CALM], ['1 m/s', WORKING], ['2 m/s', ABUSED]] as const) {
    rows.push(compare(drapeNodes, cordNodes, hands, limits, seconds, seed));
  }
}
const asleepTimesRealTime = asleepSpeed(60, 50);
if (process.argv.includes('--json')) {
  console.log(JSON.stringify({ rows, asleepTimesRealTime }));
} else {
  console.table(rows.map((row) => ({ ...row, ownMs: row.ownMs.toFixed(3), rapierMs: row.rapierMs.toFixed(3), ratio: row.ratio.toFixed(2) })));
  console.log(`asleep: ${asleepTimesRealTime.toFixed(0)} x real time`);
}
