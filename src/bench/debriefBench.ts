/**
 * Cost of a debrief: opening a long run, going to any instant, memory, and what-if.
 * Run: npm run bench -- debrief [--json] [--seconds 900] [--seed 7]
 * Opening plays the run once more, so it is told as a share of the run's own length and of plain stepping, timed just before in the
 * same process on the first minute, which is also recorded and verified. A longer run is opened from its commands alone.
 * `allMB` is what a debrief keeps once it is opened, `readMB` what it keeps once lanes and suggestion have been read.
 */
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { STEPS_PER_SECOND } from '../core/base/time.ts';
import { DebriefOfRun } from '../core/debrief/DebriefOfRun.ts';
import type { RunLog } from '../core/debrief/runLog.ts';
import { suggestion } from '../core/debrief/suggestion.ts';
import { timeline } from '../core/debrief/timeline.ts';
import { traceRun } from '../core/debrief/traceRun.ts';
import { whatIf } from '../core/debrief/whatIf.ts';
import type { Change } from '../core/debrief/whatIfTypes.ts';
import { Rng } from '../core/base/rng.ts';
import { Recorder } from '../core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../core/recording/recording.ts';
import { Run } from '../core/run/run.ts';
import { parseScenario } from '../core/scenario/parseScenario.ts';
import { BusyHands } from './busyHands.ts';
import { touchLog } from './touchLog.ts';

const TOUCHES = 10_000;
/** Length of the run that is recorded whole, in seconds. */
const RECORDED_SECONDS = 60;
/** Opening a longer run says how far it is. */
const LONG_STEPS = 120 * STEPS_PER_SECOND;
let told = 0;
const MB = 1e6;

const option = (name: string, fallback: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? fallback : Number(process.argv[at + 1]);
};

/** Time on the clock and of the processor; the latter says more on a busy machine, though it counts the collector's threads too. */
function timed<T>(work: () => T): { readonly ms: number; readonly cpuMs: number; readonly value: T } {
  const [start, used] = [performance.now(), process.cpuUsage()];
  const value = work();
  const ms = performance.now() - start;
  const { user, system } = process.cpuUsage(used);
  return { ms, cpuMs: (user + system) / 1000, value };
}

/** The value below which that share of them lie. */
const quantile = (values: readonly number[], share: number): number => [...values].sort((p, q) => p - q)[Math.min(values.length - 1, Math.floor(share * values.length))]!;

function scenarioOf(file: string) {
  const read = parseScenario(readFileSync(new URL(`../../scenarios/${file}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

const SCENARIO = scenarioOf('quiet-room');
const header = runHeader({ runId: 'bench', engine: 'bench', scenario: SCENARIO, seed: SCENARIO.seed, startedAt: '2026-01-01T00:00:00.000Z' });

/** A run that was played and recorded: what opening it costs beside this, and whether it is verified. */
function record(seconds: number, seed: number): { readonly file: RunFile; readonly cpuMs: number } {
  const run = new Run(SCENARIO);
  const recorder = new Recorder(header);
  const hands = new BusyHands(seed);
  const last = Math.round(seconds * STEPS_PER_SECOND) - 1;
  const { cpuMs } = timed(() => {
    for (let step = 0; step <= last; step++) {
      const commands = step === last ? [{ type: 'run.end' } as const] : hands.at(step);
      run.step(commands);
      recorder.played(commands, run);
    }
  });
  return { file: recorder.finish(run), cpuMs };
}

/** The commands of a long run as a recording without hashes and result: the hands need no room to choose, so it is played only once. */
function commandsAlone(seconds: number, seed: number): RunFile {
  const hands = new BusyHands(seed);
  const steps = Math.round(seconds * STEPS_PER_SECOND);
  const commands = Array.from({ length: steps }, (_, step) => ({ step, commands: hands.at(step) })).filter((one) => one.commands.length > 0);
  return { header, steps, commands, hashes: [], result: null, score: null };
}

/** Bytes in use once everything that is not needed is gone. */
function memory(): number {
  setFlagsFromString('--expose-gc');
  for (let k = 0; k < 3; k++) (runInNewContext('gc') as () => void)();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

/** A line for every tenth of a long run, beside the figures. */
function progress(steps: number, all: number, ms: number): void {
  const tenth = Math.floor((10 * steps) / all);
  if (all <= LONG_STEPS || tenth === told) return;
  told = tenth;
  console.error(`opening: ${tenth * 10} % after ${(ms / 1000).toFixed(0)} s`);
}

function opening(file: RunFile) {
  const before = memory();
  const debrief = new DebriefOfRun(file, () => {});
  let firstMs = 0;
  const { ms, cpuMs } = timed(() => {
    const start = performance.now();
    for (const news of traceRun(file, (scenario, seed) => new Run(scenario, seed))) {
      debrief.take(structuredClone(news));
      firstMs ||= performance.now() - start;
      progress(news.chunk?.steps ?? 0, file.steps, performance.now() - start);
    }
    debrief.end();
  });
  const bytes = memory() - before;
  return { debrief, ms, cpuMs, firstMs, bytes };
}

function seeking({ trace }: DebriefOfRun, seed: number): number[] {
  const chance = new Rng(seed);
  return Array.from({ length: 1000 }, () => timed(() => trace.pictureAt(chance.next() * trace.lastStep)).ms);
}

function whatIfTimes(log: RunLog, seed: number): { readonly ms: number; readonly cpuMs: number }[] {
  const chance = new Rng(seed);
  const touches = log.facts.flatMap((fact) => (fact.kind === 'touch.began' ? [fact] : []));
  const { breaks } = whatIf(log, { kind: 'nothing' });
  const change = (): Change => {
    const kind = chance.next();
    if (kind < 0.4) return { kind: 'undoTouch', touch: touches[Math.floor(chance.next() * touches.length)]!.touch };
    if (kind < 0.6 && breaks.length > 0) return { kind: 'undoBreak', number: 1 + Math.floor(chance.next() * breaks.length) };
    return { kind: 'remedy', remedy: 'changeGlove', things: ['glove.left#1'], step: Math.floor(chance.next() * log.steps) };
  };
  for (let k = 0; k < 5; k++) whatIf(log, change());
  return Array.from({ length: 200 }, () => timed(() => whatIf(log, change())));
}

const seconds = option('seconds', 900);
const seed = option('seed', 7);
const recorded = record(Math.min(seconds, RECORDED_SECONDS), seed);
const brief = opening(recorded.file);
const { debrief, ms, firstMs, bytes } = seconds <= RECORDED_SECONDS ? brief : opening(commandsAlone(seconds, seed));
const seeks = seeking(debrief, seed);
const log = debrief.log!;
const opened = memory();
const index = timed(() => timeline(log)).ms;
const found = timed(() => suggestion(log)).ms;
const readBytes = bytes + memory() - opened;
const generated: RunLog = { ...log, facts: touchLog(log.facts.filter(({ kind, step }) => kind === 'surface.added' && step === 0), TOUCHES, 900 * STEPS_PER_SECOND, seed), steps: 900 * STEPS_PER_SECOND };
const changes = whatIfTimes(generated, seed);
const figures = {
  seconds,
  openingSeconds: ms / 1000,
  openingShareOfRun: ms / 1000 / seconds,
  openingOverPlainSteps: brief.cpuMs / recorded.cpuMs,
  firstPictureMs: firstMs,
  verified: brief.debrief.verification?.verdict === 'verified',
  traceMB: debrief.trace.bytes / MB,
  allMB: bytes / MB,
  readMB: readBytes / MB,
  touches: log.facts.filter(({ kind }) => kind === 'touch.began').length,
  seekMedianMs: quantile(seeks, 0.5),
  seekP99Ms: quantile(seeks, 0.99),
  lanesMs: index,
  suggestionMs: found,
  whatIfMedianMs: quantile(changes.map((one) => one.ms), 0.5),
  whatIfP99Ms: quantile(changes.map((one) => one.ms), 0.99),
  whatIfMedianCpuMs: quantile(changes.map((one) => one.cpuMs), 0.5),
  whatIfP99CpuMs: quantile(changes.map((one) => one.cpuMs), 0.99),
};
if (process.argv.includes('--json')) console.log(JSON.stringify(figures));
else console.table(Object.entries(figures).map(([figure, value]) => ({ figure, value: typeof value === 'number' ? Number(value.toFixed(3)) : value })));
