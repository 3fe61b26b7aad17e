import './noEval.ts';
import type { PackedColumns } from '../../core/debrief/columns.ts';
import { traceRun } from '../../core/debrief/traceRun.ts';
import { Run } from '../../core/run/run.ts';
import type { DebriefReply, DebriefRequest } from './debriefMessages.ts';

const reply = (message: DebriefReply, transfer: Transferable[] = []): void => postMessage(message, { transfer });

/** Plays a recording beside the page and hands over every two seconds of it as soon as they are there. */
addEventListener('message', ({ data }: MessageEvent<DebriefRequest>) => {
  for (const news of traceRun(data.file, (scenario, seed) => new Run(scenario, seed, data.settled))) {
    reply({ kind: 'news', news }, news.chunk ? buffersOf(news.chunk.numbers) : []);
  }
  reply({ kind: 'done' });
});

const buffersOf = ({ first, kinds, small, whole }: PackedColumns): ArrayBuffer[] => [first, kinds, small, whole].map(({ buffer }) => buffer as ArrayBuffer);
