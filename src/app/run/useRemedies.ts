import { useState } from 'preact/hooks';
import type { RemedyId } from '../../core/commands/command.ts';
import type { LiveRun } from './LiveRun.ts';
import { remedyChoices, type RemedyChoice } from './remedyChoices.ts';

export interface Remedies {
  /** Remedy whose thing is being chosen. */
  readonly choosing: RemedyId | null;
  ask(remedy: RemedyId): void;
  choose(choice: RemedyChoice): void;
  /** A key 1 to 6: a remedy, or while one asks which thing, one of those. */
  digit(digit: number, remedy: RemedyId): void;
  back(): void;
}

/** Remedies from the wish to the command, with the choice that some of them need. */
export function useRemedies(live: LiveRun): Remedies {
  const [choosing, setChoosing] = useState<RemedyId | null>(null);
  const choicesOf = (remedy: RemedyId): readonly RemedyChoice[] => remedyChoices(remedy, live.run.scenario);
  const ask = (remedy: RemedyId): void => {
    if (choicesOf(remedy).length > 0) setChoosing(remedy);
    else live.hands.order({ type: 'remedy.start', remedy });
  };
  const choose = (choice: RemedyChoice | undefined): void => {
    if (!choosing || !choice) return;
    live.hands.order({ type: 'remedy.start', remedy: choosing, thing: choice.thing });
    setChoosing(null);
  };
  return {
    choosing,
    ask,
    choose,
    digit: (digit, remedy) => (choosing ? choose(choicesOf(choosing)[digit - 1]) : ask(remedy)),
    back: () => setChoosing(null),
  };
}
