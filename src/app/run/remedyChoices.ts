import type { RemedyId } from '../../core/commands/command.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { capital } from '../parts/sentence.ts';
import { THING_WORDS } from './words.ts';

/** One thing that a remedy can be meant for. */
export interface RemedyChoice {
  readonly thing: string;
  readonly words: string;
}

/** What must be chosen before a remedy begins; empty where there is only one. */
export function remedyChoices(remedy: RemedyId, scenario: Scenario): readonly RemedyChoice[] {
  switch (remedy) {
    case 'changeGlove':
      return [
        { thing: 'right', words: 'Right glove' },
        { thing: 'left', words: 'Left glove' },
      ];
    case 'coverDrape':
      return [
        { thing: 'right', words: 'Right side of the drape' },
        { thing: 'left', words: 'Left side of the drape' },
      ];
    case 'replaceItem':
      return itemChoices(scenario);
    default:
      return [];
  }
}

/** Items by what they are; two of a kind are numbered. */
function itemChoices(scenario: Scenario): RemedyChoice[] {
  return scenario.items.map((item, k) => {
    const alike = scenario.items.filter((other) => other.kind === item.kind);
    const number = alike.length > 1 ? ` ${scenario.items.slice(0, k + 1).filter((other) => other.kind === item.kind).length}` : '';
    return { thing: item.id, words: capital(THING_WORDS[item.kind] + number) };
  });
}
