import { Rng } from '../base/rng.ts';
import type { Skill } from '../scenario/rubric.ts';
import type { Scenario } from '../scenario/schema.ts';
import { shortfalls } from './shortfalls.ts';
import type { Score } from './score.ts';

/** One concrete thing to do next, with the run that does it. */
export interface Exercise {
  /** Why, as a teacher would say it: one or two sentences. */
  readonly why: string;
  readonly scenarioId: string;
  readonly title: string;
  readonly station: Scenario['station'];
  /** Another seed than the run's, so that it is not learned by heart. */
  readonly seed: number;
  readonly minutes: number;
}

/** What must be known of a scenario to choose it. */
export type Offer = Pick<Scenario, 'id' | 'title' | 'station' | 'minutes' | 'trains'>;

/** The run that was scored. */
export interface Practised {
  readonly scenarioId: string;
  /** Where it began. */
  readonly station: Scenario['station'];
  readonly seed: number;
}

const EXERCISES_MAX = 3;
const SEEDS = 4294967296;

/**
 * What to practise next after a scored run: one to three exercises for what fell short, the gravest first, from the scenarios on
 * offer. Shortfalls that one scenario trains come together. With nothing to choose from, nothing.
 */
export function practiseNext(score: Score, run: Practised, offers: readonly Offer[]): readonly Exercise[] {
  const chosen: { readonly offer: Offer; readonly whys: string[] }[] = [];
  const first = shortfalls(score).filter(({ skill }, k, all) => all.findIndex((one) => one.skill === skill) === k);
  for (const shortfall of first) {
    const offer = offerFor(shortfall.skill, run, offers);
    const known = chosen.find((one) => one.offer === offer);
    if (known && known.whys.length < 2) known.whys.push(shortfall.why);
    else if (offer && !known && chosen.length < EXERCISES_MAX) chosen.push({ offer, whys: [shortfall.why] });
  }
  const chance = new Rng(run.seed);
  return chosen.map(({ offer: { id, title, station, minutes }, whys }) => ({ why: whys.join(' '), scenarioId: id, title, station, seed: otherSeed(chance, run.seed), minutes }));
}

/** Address that starts an exercise, from the page's own. */
export const exerciseLink = ({ scenarioId, seed }: Exercise): string => `?scenario=${scenarioId}&seed=${seed}`;

/** The scenario that trains little else than the skill, of the same station if there is one; of equals the one just played, then the first. */
function offerFor(skill: Skill | null, run: Practised, offers: readonly Offer[]): Offer | null {
  const same = offers.find(({ id }) => id === run.scenarioId) ?? null;
  if (skill === null) return same ?? offers[0] ?? null;
  const training = offers.filter(({ trains }) => trains.includes(skill));
  const here = training.filter(({ station }) => station === run.station);
  const fit = here.length > 0 ? here : training;
  if (fit.length === 0) return same ?? offers[0] ?? null;
  const fewest = Math.min(...fit.map(({ trains }) => trains.length));
  const best = fit.filter(({ trains }) => trains.length === fewest);
  return best.find(({ id }) => id === run.scenarioId) ?? best[0]!;
}

function otherSeed(chance: Rng, seed: number): number {
  const next = Math.floor(chance.next() * SEEDS);
  return next === seed ? (next + 1) % SEEDS : next;
}

