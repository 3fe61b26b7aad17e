import type { RemedyId } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import { outcomeWords } from './outcomeWords.ts';
import { remedyFor, type RemedyChoice } from './remedyFor.ts';
import type { RunLog } from './runLog.ts';
import { clockWords, wholeOf } from './surfaceWords.ts';
import { whatIf } from './whatIf.ts';
import type { Alternative, Change } from './whatIfTypes.ts';

/**
 * What could have gone otherwise about a break: that it had not happened, and each fitting remedy once the touch that caused it was
 * over. Each comes with what it would have changed.
 */
export function alternatives(log: RunLog, number: number): Alternative[] {
  const { ledger } = indexOf(log);
  const known = ledger.breaks[number - 1];
  if (!known) return [];
  const undone = told(log, { kind: 'undoBreak', number }, `${avoidedWords(log, known)} at ${clockWords(known.step)}.`);
  const over = rootOver(log, known);
  return [...replacedBefore(log, known), ...remediesOf(log, known, over).map((choice) => remedyBy(log, choice, over)), undone];
}

/** A remedy done by a step, with what it would have changed. */
export const remedyBy = (log: RunLog, { remedy, things, words }: RemedyChoice, step: number): Alternative =>
  told(log, { kind: 'remedy', remedy, things, step }, `${words} by ${clockWords(step)}.`);

function told(log: RunLog, change: Change, title: string): Alternative {
  const outcome = whatIf(log, change);
  return { change, title, sentence: outcomeWords(outcome), outcome };
}

const fittingRemedies = (log: RunLog, { rule }: Break): readonly RemedyId[] => indexOf(log).rules.find(({ id }) => id === rule)?.remedies ?? [];

/** An item that had fallen could have been replaced before it was taken back. */
function replacedBefore(log: RunLog, known: Break): Alternative[] {
  const item = known.against === null ? null : surfaceOf(log, known.against);
  const choice = item && remedyFor(log, item, known.step - 1);
  return choice?.remedy === 'replaceItem' && fittingRemedies(log, known).includes('replaceItem') ? [remedyBy(log, choice, known.step - 1)] : [];
}

/** Remedies that answer what the mishap itself spoiled, as its rule names them. */
function remediesOf(log: RunLog, known: Break, step: number): RemedyChoice[] {
  const fitting = fittingRemedies(log, known);
  const choices = new Map<string, RemedyChoice>();
  for (const { surface, depth } of known.spread) {
    const choice = depth === 0 ? remedyFor(log, surfaceOf(log, surface), step) : null;
    if (choice && fitting.includes(choice.remedy)) choices.set(choice.things.join(' '), choice);
  }
  return [...choices.values()];
}

/** Step at which what caused the break was over (the touch, or the stay in a wrong place), or that of the root itself while it lasts. */
function rootOver(log: RunLog, known: Break): number {
  const ends = indexOf(log).ledger.rootFacts(known.number).map((place) => (log.facts[place]!.step === known.step ? endOf(log, place) : known.step));
  const over = Math.max(known.step, ...ends);
  return over >= log.steps - 1 ? known.step : over;
}

function endOf(log: RunLog, place: number): number {
  const fact = log.facts[place]!;
  if (fact.kind === 'touch.began') return indexOf(log).touchOf.get(fact.touch)!.toStep;
  if (fact.kind !== 'zone.entered') return fact.step;
  const left = log.facts.slice(place).find((later) => later.kind === 'zone.left' && later.surface === fact.surface && later.zone === fact.zone);
  return left?.step ?? log.steps;
}

/** How the break would have been avoided, as a clause. */
function avoidedWords(log: RunLog, known: Break): string {
  const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
  const lost = capital(wholeOf(surfaceOf(log, known.surface)).prose);
  if (known.against !== null) return `${lost} kept clear of ${wholeOf(surfaceOf(log, known.against)).prose}`;
  const trigger = indexOf(log).rules.find(({ id }) => id === known.rule)?.triggers[0];
  if (trigger?.kind === 'drift') return 'The drape kept where it was laid';
  if (trigger?.kind !== 'zone') return `${lost} kept as it was`;
  return `${lost} kept ${{ belowField: 'above the field', outOfSight: 'in sight', margin: 'inside the field', offField: 'on the field', overField: 'from over the field', armpit: 'out of the armpit', uncovered: 'under the glove' }[trigger.zone]}`;
}
