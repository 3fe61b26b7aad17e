import { describe, expect, it } from 'vitest';
import { requestsIn } from '../../../src/app/run/requestsIn.ts';
import { spokenCommand, spokenExamples } from '../../../src/app/run/spokenWords.ts';
import { LOADING, scenarioWith } from '../support/scenario.ts';

const FIELD = scenarioWith();
const ADJUSTABLE = scenarioWith({ room: { bed: { adjustable: true } } });
const LOADING_ADJUSTABLE = { ...LOADING, room: ADJUSTABLE.room };
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
  ])('%s', (typed, command) => expect(spokenCommand(typed, FIELD)).toEqual(command));

  it.each(['', '   ', 'needle', '42'])('“%s” means nothing', (typed) => expect(spokenCommand(typed, FIELD)).toBeNull());

  it.each([
    ['Bring the probe, please', asks('bringProbe')],
    ['probe please', asks('bringProbe')],
    ['Probe, please!', asks('bringProbe')],
    ['lower', asks('lower')],
    ['now lower the probe', asks('lower')],
    ['a bit further down', asks('lower')],
    ['pull', asks('pullTail')],
    ['pull the tail', asks('pullTail')],
    ['open a packet', asks('openPacket')],
    ['offer it', asks('offerPacket')],
    ['open one more', asks('openPacket')],
    ['let go', asks('letGo')],
    ['hold the cord', asks('takeCord')],
  ])('while a probe is sheathed: %s', (typed, command) => expect(spokenCommand(typed, LOADING)).toEqual(command));

  it.each(['bring the probe', 'lower', 'pull', 'open a packet'])('“%s” means nothing where there is nothing of it to ask for', (typed) => expect(spokenCommand(typed, FIELD)).toBeNull());

  it.each([
    ['raise the bed', asks('bedUp')],
    ['Bed up, please', asks('bedUp')],
    ['a little higher', asks('bedUp')],
    ['could you lower the bed', asks('bedDown')],
    ['bed down', asks('bedDown')],
    ['the bed lower', asks('bedDown')],
    ['lower', asks('lower')],
    ['lower the probe', asks('lower')],
    ['down', asks('lower')],
  ])('with a bed that goes up and down: %s', (typed, command) => expect(spokenCommand(typed, LOADING_ADJUSTABLE)).toEqual(command));

  it.each(['raise the bed', 'bed down', 'higher'])('“%s” means nothing to a bed that does not move', (typed) => expect(spokenCommand(typed, FIELD)).toBeNull());

  it.each([['the field', FIELD], ['sheathing', LOADING], ['an adjustable bed', LOADING_ADJUSTABLE]])('the examples of %s are each understood, one for each request', (_, scenario) => {
    const understood = spokenExamples(scenario).split(', ').map((example) => spokenCommand(example, scenario));
    expect(understood).toEqual(requestsIn(scenario).map(({ request }) => asks(request)));
  });
});
