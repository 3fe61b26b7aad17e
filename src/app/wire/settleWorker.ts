import './noEval.ts';
import { settle } from '../../core/room/settle.ts';
import type { Scenario } from '../../core/scenario/schema.ts';

/** Lets the scene of a scenario come to rest beside the page. */
addEventListener('message', ({ data }: MessageEvent<Scenario>) => postMessage(settle(data)));
