import type { Skill } from '../scenario/rubric.ts';
import type { PartId, Score, ScoreLine } from './score.ts';
import { counted, listed } from './words.ts';

/** One thing that fell short, and the skill that it calls for; null for more of the same. */
export interface Shortfall {
  readonly skill: Skill | null;
  readonly why: string;
}

const PLACES: readonly (readonly [line: string, skill: Skill, words: string])[] = [
  ['where.hands', 'hands', 'with your hands, gown or what you held. Go slowly past rails, edges and your face'],
  ['where.cord', 'cord', 'with the cord. Watch where its bare part lies before you pull'],
  ['where.drape', 'drape', 'with the drape. Lift over it; do not drag'],
];

/** Everything in a score that fell short, the gravest first. Never empty: who fell short of nothing is told to do it again. */
export function shortfalls(score: Score): readonly Shortfall[] {
  const found = [...asepsis(score), ...procedure(score), ...handling(score), ...time(score)];
  if (found.length > 0) return found;
  const met = score.verdict === 'met';
  return [{ skill: null, why: met ? 'Met. Do it once more with another seed: one good run may be luck, two in a row are skill.' : 'Not yet, and only just. Do it once more.' }];
}

function asepsis(score: Score): Shortfall[] {
  const value = (id: string): number => lineOf(score, 'asepsis', id)?.value ?? 0;
  const breaks = value('breaks');
  if (breaks === 0) return [];
  const places = PLACES.filter(([id]) => value(id) > 0)
    .sort(([a], [b]) => value(b) - value(a))
    .map(([id, skill, words]): Shortfall => ({ skill, why: `${counted(value(id), 'break')} ${words}.` }));
  const [unsaid, open] = [breaks - value('said'), breaks - value('putRight')];
  const recovery: Shortfall[] = [];
  if (unsaid > 0) recovery.push({ skill: 'recovery', why: `${someOf(unsaid, breaks)} went by without a word. Say it the moment you see it.` });
  else if (open > 0) recovery.push({ skill: 'recovery', why: `${someOf(open, breaks)} stayed open. Step back, empty your hands and put it right before you go on.` });
  if (value('afterCue') > 0) recovery.push({ skill: 'interruptions', why: `${someOf(value('afterCue'), breaks)} came just after something happened around you. Hands still over the field first, then look.` });
  // What was made and not seen comes first: nobody can put right what went by.
  return [...places.slice(0, 1), ...recovery, ...places.slice(1)];
}

const someOf = (count: number, all: number): string => (count < all ? `${count} of ${all} breaks` : all === 1 ? 'The break' : `All ${all} breaks`);

function procedure(score: Score): Shortfall[] {
  const short = linesOf(score, 'procedure').filter(isShort);
  const tasks = short.filter(({ id }) => id.startsWith('task.'));
  const missing = tasks.filter(({ value }) => value === 0);
  const found: Shortfall[] = [];
  if (missing.length > 0) found.push({ skill: 'order', why: `Not done: ${listed(missing.map(({ words }) => lower(words)))}. Go through the whole order once, slowly.` });
  else if (tasks.length > 0) found.push({ skill: 'order', why: `Out of order: ${listed(tasks.map(({ words }) => lower(words)))}.` });
  if (short.some(({ id, value }) => id === 'steadiness' && value !== null)) found.push({ skill: 'steadiness', why: 'The probe wandered while it was at the site. Rest the heel of your hand and hold still.' });
  if (short.some(({ id, value }) => id === 'sharps' && value! > 0)) found.push({ skill: 'order', why: 'A needle went into the rubbish bin. Sharps have their own container.' });
  return found;
}

function handling(score: Score): Shortfall[] {
  const short = (id: string): boolean => isShort(lineOf(score, 'handling', id));
  if (!enoughWork(score)) return [];
  const found: Shortfall[] = [];
  if (short('drift')) found.push({ skill: 'drape', why: 'The drape slid from where it was laid. Lift over it; do not drag.' });
  if (short('drops')) found.push({ skill: 'hands', why: 'Something fell. Take hold first, then lift, and set things down where they lie flat.' });
  if (short('clearance')) found.push({ skill: 'hands', why: 'You came very near to something unsterile. Give yourself a hand’s breadth.' });
  return found;
}

function time(score: Score): Shortfall[] {
  if (!enoughWork(score) || !isShort(lineOf(score, 'time', 'work'))) return [];
  return [{ skill: 'order', why: 'It took longer than foreseen. Do not hurry; lay things where you need them next.' }];
}

/** Whether so much was done that how it was done can be judged: half of the tasks. */
function enoughWork(score: Score): boolean {
  const tasks = linesOf(score, 'procedure').filter(({ id }) => id.startsWith('task.'));
  return 2 * tasks.filter(({ value }) => value === 1).length >= tasks.length;
}

/** Points were to be had and not all were earned. */
const isShort = (line: ScoreLine | undefined): boolean => line !== undefined && line.points !== null && line.of !== null && line.points < line.of;

const linesOf = (score: Score, part: PartId): readonly ScoreLine[] => score.parts.find(({ id }) => id === part)?.lines ?? [];
const lineOf = (score: Score, part: PartId, line: string): ScoreLine | undefined => linesOf(score, part).find(({ id }) => id === line);

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
