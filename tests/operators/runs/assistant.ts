import type { BreakRun } from '../../support/breakRun.ts';
import { CLUMSY_ASSISTANT } from '../../support/rooms.ts';

/** The assistant, who does what is asked as well as they can. */
export const ASSISTANT_RUNS: readonly BreakRun[] = [
  {
    what: 'a clumsy assistant reaches for the cord over the edge of the bed',
    room: CLUMSY_ASSISTANT,
    play: (op) => op.send({ type: 'ask', request: 'takeCord' }).wait(6),
    breaks: [{ rule: 'sheath-on-bare-hand', surface: 'sheath#1:45', against: 'assistant.right:hand', spread: ['0 sheath#1:45', '0 sheath#1:44'], severity: 'major' }],
  },
];
