/**
 * Cost of a step of the whole room under busy hands: with the probe sheathed from the start, against the rooms in which the assistant
 * brings the probe to be sheathed, and in which a gown is put on. Run: npm run bench -- room [--json] [--seconds 30] [--seed 7]
 * The rooms step in alternating blocks in one process, so that a busy machine slows them alike.
 */
import { readFileSync } from 'node:fs';
import { STEPS_PER_SECOND } from '../core/base/time.ts';
import type { Command } from '../core/commands/command.ts';
import { Run } from '../core/run/run.ts';
import { parseScenario } from '../core/scenario/parseScenario.ts';
import { BusyHands } from './busyHands.ts';

const FIRST = 'quiet-room';
const ROOMS = [FIRST, 'sheath-short', 'gown-roomy'] as const;
const BLOCK = 60;
const WARM_UP = 240;
/** The assistant is asked anew so often, in steps. */
const ASK_STEPS = 8 * STEPS_PER_SECOND;
const STEP_MS = 1000 / STEPS_PER_SECOND;

const option = (name: string, fallback: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? fallback : Number(process.argv[at + 1]);
};

class TimedRoom {
  private readonly times: number[] = [];
  private readonly run: Run;
  private readonly hands: BusyHands;

  constructor(readonly name: (typeof ROOMS)[number], seed: number) {
    const read = parseScenario(readFileSync(new URL(`../../scenarios/${name}.json`, import.meta.url), 'utf8'));
    if (!read.ok) throw new Error(`${name}: the scenario cannot be read`);
    this.run = new Run(read.value, seed);
    this.hands = new BusyHands(seed);
  }

  block(): void {
    for (let k = 0; k < BLOCK; k++) {
      const step = this.run.stepCount;
      const asks: Command[] = step % ASK_STEPS === 0 ? [{ type: 'ask', request: this.name === FIRST ? 'takeCord' : 'bringProbe' }] : [];
      const commands = [...asks, ...this.hands.at(step)];
      const start = performance.now();
      this.run.step(commands);
      this.times.push(performance.now() - start);
    }
  }

  /** Median and 95th percentile, in milliseconds a step. */
  figures(): { readonly medianMs: number; readonly lateMs: number } {
    const sorted = this.times.slice(WARM_UP).sort((a, b) => a - b);
    return { medianMs: sorted[sorted.length >> 1]!, lateMs: sorted[Math.floor(sorted.length * 0.95)]! };
  }
}

const rooms = ROOMS.map((name) => new TimedRoom(name, option('seed', 7)));
for (let k = 0; k < (option('seconds', 30) * STEPS_PER_SECOND) / BLOCK; k++) for (const room of rooms) room.block();
const first = rooms[0]!.figures().medianMs;
const rows = rooms.map((room) => ({ room: room.name, ...room.figures(), ofFirst: room.figures().medianMs / first, timesRealTime: STEP_MS / room.figures().medianMs }));
if (process.argv.includes('--json')) console.log(JSON.stringify({ rooms: rows }));
else console.table(rows.map(({ room, ...figures }) => ({ room, ...Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, value.toFixed(2)])) })));
