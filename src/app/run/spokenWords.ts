import type { Command } from '../../core/commands/command.ts';

type Spoken = Extract<Command, { type: 'ask' | 'answer' }>;

/** Words that each request or answer is known by; the longest that stands in what was typed counts. */
const KNOWN: readonly (readonly [readonly string[], Spoken])[] = [
  [['hold the cord', 'hold cord', 'take the cord', 'cord', 'cable', 'hold'], { type: 'ask', request: 'takeCord' }],
  [['give slack', 'give me slack', 'slack', 'more cord', 'looser'], { type: 'ask', request: 'giveSlack' }],
  [['let go of the cord', 'let the cord go', 'let go', 'letgo', 'release', 'drop it'], { type: 'ask', request: 'letGo' }],
  [['stop', 'halt', 'wait', 'hold still', 'freeze'], { type: 'ask', request: 'stop' }],
  [['wipe my face', 'wipe', 'my face', 'nose', 'itch', 'scratch'], { type: 'ask', request: 'wipeFace' }],
  [['take this away', 'take that away', 'take it away', 'away', 'pick it up', 'pick up', 'rubbish', 'remove'], { type: 'ask', request: 'takeAway' }],
  [['thank you, i stop', 'thank you', 'thanks', 'i stop', 'you are right', 'well spotted'], { type: 'answer', how: 'stop' }],
  [['it is fine', 'its fine', 'it’s fine', "it's fine", 'fine', 'never mind', 'ok', 'no problem'], { type: 'answer', how: 'fine' }],
];

/** Examples for whoever was not understood. */
export const SPOKEN_EXAMPLES = 'hold the cord, give slack, let go, stop, wipe my face, take this away';

/** What typed words ask of the assistant or answer them, whatever stands around them; null when nothing is understood. */
export function spokenCommand(typed: string): Spoken | null {
  const words = ` ${typed.toLowerCase().replace(/[^a-z',’]+/g, ' ').trim()} `;
  let best: Spoken | null = null;
  let longest = 0;
  for (const [names, command] of KNOWN) {
    for (const name of names) {
      if (name.length > longest && words.includes(` ${name}`)) {
        best = command;
        longest = name.length;
      }
    }
  }
  return best;
}
