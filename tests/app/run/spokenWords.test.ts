import { describe, expect, it } from 'vitest';
import { spokenCommand } from '../../../src/app/run/spokenWords.ts';

const asks = (request: string) => ({ type: 'ask', request });
const answers = (how: string) => ({ type: 'answer', how });

describe('Words to the assistant', () => {
  it.each([
    ['Hold the cord here, please!', asks('takeCord')],
    ['CABLE', asks('takeCord')],
    ['a bit more slack', asks('giveSlack')],
    ['let go', asks('letGo')],
    ['please let go of the cord', asks('letGo')],
    ['stop', asks('stop')],
    ['my nose itches', asks('wipeFace')],
    ['could you take this away', asks('takeAway')],
    ['Thank you, I stop.', answers('stop')],
    ['it is fine', answers('fine')],
    ["it's fine", answers('fine')],
  ])('%s', (typed, command) => expect(spokenCommand(typed)).toEqual(command));

  it.each(['', '   ', 'needle', '42'])('“%s” means nothing', (typed) => expect(spokenCommand(typed)).toBeNull());
});
