import type { Command, RequestId } from '../../core/commands/command.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { canBeAsked, requestsIn } from './requestsIn.ts';

type Spoken = Extract<Command, { type: 'ask' | 'answer' }>;

/** Words that each request or answer is known by; the longest that stands in what was typed counts. */
const KNOWN: readonly (readonly [readonly string[], Spoken])[] = [
  [['hold the cord', 'hold cord', 'take the cord', 'cord', 'cable', 'hold'], { type: 'ask', request: 'takeCord' }],
  [['give slack', 'give me slack', 'slack', 'more cord', 'looser'], { type: 'ask', request: 'giveSlack' }],
  [['let go of the cord', 'let the cord go', 'let go', 'letgo', 'release', 'drop it'], { type: 'ask', request: 'letGo' }],
  [['stop', 'halt', 'wait', 'hold still', 'freeze'], { type: 'ask', request: 'stop' }],
  [['wipe my face', 'wipe', 'my face', 'nose', 'itch', 'scratch'], { type: 'ask', request: 'wipeFace' }],
  [['take this away', 'take that away', 'take it away', 'away', 'pick it up', 'pick up', 'rubbish', 'remove'], { type: 'ask', request: 'takeAway' }],
  [['bring the probe', 'bring me the probe', 'probe please', 'probe, please', 'the probe', 'bring'], { type: 'ask', request: 'bringProbe' }],
  [['lower it', 'lower the probe', 'lower', 'let it down', 'down'], { type: 'ask', request: 'lower' }],
  [['pull the tail', 'pull the end', 'pull the sheath', 'tail', 'pull'], { type: 'ask', request: 'pullTail' }],
  [['offer an item', 'offer it', 'offer', 'hold it out'], { type: 'ask', request: 'offerPacket' }],
  [['open a packet', 'open another packet', 'packet', 'open'], { type: 'ask', request: 'openPacket' }],
  [['raise the bed', 'bed up', 'bed higher', 'higher', 'raise'], { type: 'ask', request: 'bedUp' }],
  [['lower the bed', 'bed down', 'bed lower'], { type: 'ask', request: 'bedDown' }],
  [['tie the back', 'tie me', 'tie my gown', 'tie the gown', 'tie'], { type: 'ask', request: 'tieBack' }],
  [['take the card', 'take my card', 'the card', 'card', 'turn'], { type: 'ask', request: 'takeCard' }],
  [['thank you, i stop', 'thank you', 'thanks', 'i stop', 'you are right', 'well spotted'], { type: 'answer', how: 'stop' }],
  [['it is fine', 'its fine', 'it’s fine', "it's fine", 'fine', 'never mind', 'ok', 'no problem'], { type: 'answer', how: 'fine' }],
];

/** An example of each request. */
const EXAMPLES: Readonly<Record<RequestId, string>> = {
  takeCord: 'hold the cord',
  giveSlack: 'give slack',
  letGo: 'let go',
  stop: 'stop',
  wipeFace: 'wipe my face',
  takeAway: 'take this away',
  bringProbe: 'bring the probe',
  lower: 'lower it',
  pullTail: 'pull the tail',
  openPacket: 'open a packet',
  offerPacket: 'offer an item',
  bedUp: 'raise the bed',
  bedDown: 'lower the bed',
  tieBack: 'tie the back',
  takeCard: 'take the card',
};

/** Examples for whoever was not understood, of what can be asked for in a run of the scenario. */
export const spokenExamples = (scenario: Scenario): string => requestsIn(scenario).map(({ request }) => EXAMPLES[request]).join(', ');

/** What typed words ask of the assistant in a run of the scenario, or answer them, whatever stands around them; null when nothing is understood. */
export function spokenCommand(typed: string, scenario: Scenario): Spoken | null {
  const words = ` ${typed.toLowerCase().replace(/[^a-z',’]+/g, ' ').trim()} `;
  let best: Spoken | null = null;
  let longest = 0;
  for (const [names, command] of KNOWN) {
    if (command.type === 'ask' && !canBeAsked(command.request, scenario)) continue;
    for (const name of names) {
      if (name.length > longest && words.includes(` ${name}`)) {
        best = command;
        longest = name.length;
      }
    }
  }
  return best;
}
