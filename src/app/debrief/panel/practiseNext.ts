import type { Break } from '../../../core/ledger/break.ts';
import type { Scenario } from '../../../core/scenario/schema.ts';

type Skill = Scenario['trains'][number];

const SKILL_WORDS: Readonly<Record<Skill, string>> = {
  order: 'the order of the steps',
  hands: 'keeping hands and sleeves clear',
  cord: 'keeping the bare cord off the field',
  drape: 'keeping the drape where it was laid',
  steadiness: 'a steady probe',
  interruptions: 'going on after an interruption',
  recovery: 'noticing a break and putting it right',
};

/** What a break asks to be practised: what the rule is about, or putting right when it was seen too late. */
export function skillOf(broken: Break | null): Skill {
  if (broken === null) return 'interruptions';
  if (/cord|sheath|tail/.test(broken.rule)) return 'cord';
  if (/drape|drift|skin/.test(broken.rule)) return 'drape';
  return broken.noticedStep === null && broken.reach !== 'none' ? 'recovery' : 'hands';
}

/** A scenario that gives practice in what went wrong: this one when it does, otherwise the shortest that does, otherwise this one. */
export function practiseNext(broken: Break | null, scenarios: readonly Scenario[], now: Scenario): { readonly scenario: Scenario; readonly why: string } {
  const skill = skillOf(broken);
  const fitting = scenarios.filter(({ trains }) => trains.includes(skill)).sort((a, b) => a.minutes - b.minutes);
  const same = scenarios.find(({ id }) => id === now.id) ?? now;
  const scenario = fitting.find(({ id }) => id === now.id) ?? fitting[0] ?? same;
  return { scenario, why: `${scenario.id === now.id ? 'The same room again' : 'Another room'}, for ${SKILL_WORDS[skill]}.` };
}
