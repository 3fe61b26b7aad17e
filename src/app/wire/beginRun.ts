import { failure, success, type Result } from '../../core/base/result.ts';
import { Recorder } from '../../core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../../core/recording/recording.ts';
import { resumeErrorWords, resumeRun } from '../../core/recording/resumeRun.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import type { RunStore } from '../../storage/RunStore.ts';
import { loadRunPage } from '../run/LazyRun.ts';
import type { LiveRun, Slowdown } from '../run/LiveRun.ts';
import type { RunChoice } from '../services.ts';
import { engineName } from './engineName.ts';
import { journalKeeper } from './journalKeeper.ts';
import type { SettleAhead } from './SettleAhead.ts';

/** The simulation and the page that plays it are loaded when a run begins or soon will, not before. */
const loadRun = async () => {
  const [{ Run }, { LiveRun }] = await Promise.all([import('../../core/run/run.ts'), import('../run/LiveRun.ts'), loadRunPage()]);
  return { Run, LiveRun };
};

/** Does beforehand, while nobody waits, what a run of the scenario needs. */
export function prepareRun(ahead: SettleAhead, scenario: Scenario): void {
  void loadRun();
  void ahead.settled(scenario);
}

/** Begins a run as it was chosen; coaching is part of the scenario that is recorded. */
export async function beginRun(store: RunStore, ahead: SettleAhead, { scenario, coaching, slowdown, seed }: RunChoice): Promise<LiveRun> {
  const [{ Run, LiveRun }, settled] = await Promise.all([loadRun(), ahead.settled(scenario)]);
  const played = { ...scenario, coaching };
  const header = runHeader({
    runId: crypto.randomUUID(),
    engine: engineName(navigator.userAgent),
    startedAt: new Date().toISOString(),
    scenario: played,
    seed,
  });
  const journal = await store.begin(header);
  return new LiveRun({ run: new Run(played, seed, settled), recorder: new Recorder(header), keeper: journalKeeper(journal), coaching, slowdown });
}

/** Takes a broken-off run up again, paused where it stopped. The error is one sentence. */
export async function continueRun(store: RunStore, ahead: SettleAhead, runId: string): Promise<Result<LiveRun, string>> {
  const loaded = await store.load(runId);
  if (!loaded.ok) return loaded;
  const { recording, snapshot, fault } = loaded.value;
  if (fault) return failure(fault);
  const [{ Run, LiveRun }, settled] = await Promise.all([loadRun(), ahead.settled(recording.header.scenario)]);
  const resumed = resumeRun(recording, (scenario, seed) => new Run(scenario, seed, settled), snapshot);
  if (!resumed.ok) return failure(resumeErrorWords(resumed.error));
  const { run, recorder } = resumed.value;
  const journal = await store.begin(recorder.header);
  const live = new LiveRun({ run, recorder, keeper: journalKeeper(journal), coaching: recording.header.scenario.coaching, slowdown: lastPace(recording) });
  live.mode.send({ type: 'pause' });
  return success(live);
}

/** Pace at which a recording ends. */
export function lastPace({ commands }: Pick<RunFile, 'commands'>): Slowdown {
  for (const step of [...commands].reverse()) for (const command of [...step.commands].reverse()) if (command.type === 'pace') return command.slowdown;
  return 1;
}
