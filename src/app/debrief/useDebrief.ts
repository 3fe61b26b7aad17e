import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { DebriefSource } from '../../core/debrief/debriefSource.ts';
import { nearMisses } from '../../core/debrief/nearMisses.ts';
import type { RunLog } from '../../core/debrief/runLog.ts';
import { timeline } from '../../core/debrief/timeline.ts';
import type { NearMiss, Timeline } from '../../core/debrief/timelineTypes.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Services } from '../services.ts';
import { PlayHead } from './PlayHead.ts';
import { writtenTimeline } from './writtenTimeline.ts';

/** While a run is played again, the page looks at what there is so often, in milliseconds. */
const LOOK_EVERY_MS = 400;
/** Looking takes longer the longer the log; the page rests so many times as long in between. */
const PAUSE_PER_WORK = 8;

/** All that the debrief shows of a run: from the written result at once, and exactly as the recording is played again. */
export interface Debrief {
  readonly source: DebriefSource | null;
  readonly log: RunLog | null;
  /** Changes whenever there is more. */
  readonly revision: number;
  readonly result: RunResult | null;
  readonly timeline: Timeline;
  readonly nearMisses: readonly NearMiss[];
  readonly fault: string | null;
}

const NOTHING: Timeline = { breaks: [], notices: [], remedies: [], cues: [], tasks: [], touches: [] };

export function useDebrief(openDebrief: Services['openDebrief'], file: RunFile): Debrief & { readonly head: PlayHead } {
  const head = useMemo(() => new PlayHead(file.steps, 0), [file]);
  const { source, log, revision, fault } = useSource(openDebrief, file, head);
  // A run of another version of the simulation stays as it was saved, whatever comes of playing it here.
  const final = log?.complete && source?.exact ? log : null;
  const result = final?.result ?? file.result ?? log?.result ?? null;
  const lanes = useMemo(() => {
    if (final) return timeline(final);
    const written = file.result && writtenTimeline(file.result);
    if (log === null) return written ?? NOTHING;
    const played = timeline(log);
    return written ? { ...written, touches: played.touches } : played;
  }, [log, final, file]);
  const misses = useMemo(() => (source && log ? nearMisses(log, source.trace.clearances()) : []), [source, log]);
  return { source, log, revision, result, timeline: lanes, nearMisses: misses, fault, head };
}

function useSource(openDebrief: Services['openDebrief'], file: RunFile, head: PlayHead): { source: DebriefSource | null; log: RunLog | null; revision: number; fault: string | null } {
  const [source, setSource] = useState<DebriefSource | null>(null);
  const [{ log, revision }, setSeen] = useState<{ readonly log: RunLog | null; readonly revision: number }>({ log: null, revision: 0 });
  const [fault, setFault] = useState<string | null>(null);
  const timer = useRef(0);
  useEffect(() => {
    let gone = false;
    let stop = (): void => {};
    let pauseMs = LOOK_EVERY_MS;
    openDebrief(file).then(
      (opened) => {
        if (gone) return opened.stop();
        const look = (): void => {
          timer.current = 0;
          head.setPlayable(opened.trace.lastStep);
          const beganMs = performance.now();
          if (opened.log) timeline(opened.log);
          pauseMs = Math.max(LOOK_EVERY_MS, PAUSE_PER_WORK * (performance.now() - beganMs));
          setSeen((before) => ({ log: opened.log, revision: before.revision + 1 }));
        };
        stop = () => opened.stop();
        opened.onGrow(() => {
          if (opened.share >= 1 || opened.fault !== null) {
            clearTimeout(timer.current);
            look();
          } else if (timer.current === 0) timer.current = window.setTimeout(look, pauseMs);
        });
        setSource(opened);
        look();
      },
      () => setFault('The recording could not be played again in this browser. The report is not touched by this.'),
    );
    return () => {
      gone = true;
      clearTimeout(timer.current);
      timer.current = 0;
      stop();
    };
  }, [file, head]);
  return { source, log, revision, fault: source?.fault ?? fault };
}
