import type { RoomPicture, SurfaceMark } from '../room/picture.ts';
import type { Scenario } from '../scenario/schema.ts';

/** Numbers of a picture are kept in whole tenths of a millimetre (or ten-thousandths, where they are no lengths): within 0.05 mm. */
const UNIT = 1e-4;
const LARGEST = 32767;

/** Fields that are kept in larger units, since they are no lengths: gel in hundredths of a millilitre. */
const LARGER: Readonly<Partial<Record<keyof RoomPicture, number>>> = { gelInSheathMl: 100 };
const largerOf = (field: string): number => LARGER[field as keyof RoomPicture] ?? 1;

/** Where a number, or a row of so many numbers, stands in a form. */
type NumberPlace = { readonly number: true };
type RowPlace = { readonly row: number };
const A_NUMBER: NumberPlace = { number: true };

/**
 * All of a picture that is no number (names, surfaces, holds, what sticks), with places for the numbers. It changes seldom, the numbers
 * all the time.
 */
export type PictureForm = { readonly [field: string]: unknown };

/** Kept apart: the scenario is the same all along, marks follow from the touch log, and the step is known. */
const APART = ['scenario', 'marks', 'step'];

export const formOf = (picture: RoomPicture): PictureForm =>
  Object.fromEntries(Object.entries(picture).filter(([field]) => !APART.includes(field)).map(([field, value]) => [field, placesOf(value)]));

function placesOf(value: unknown): unknown {
  if (typeof value === 'number') return A_NUMBER;
  if (value instanceof Float64Array) return { row: value.length } satisfies RowPlace;
  if (Array.isArray(value)) return value.map(placesOf);
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([field, part]) => [field, placesOf(part)]));
  return value;
}

/** Whether the picture has that form: but for its numbers it is the same. */
export function hasForm(picture: RoomPicture, form: PictureForm): boolean {
  for (const field in picture) if (!APART.includes(field) && !fits(picture[field as keyof RoomPicture], form[field])) return false;
  return true;
}

function fits(value: unknown, place: unknown): boolean {
  if (typeof value !== 'object' || value === null) return typeof value === 'number' ? isNumberPlace(place) : value === place;
  if (value instanceof Float64Array) return (place as RowPlace | null)?.row === value.length;
  if (typeof place !== 'object' || place === null) return false;
  if (Array.isArray(value)) return Array.isArray(place) && value.length === place.length && value.every((part, k) => fits(part, place[k]));
  for (const field in value) if (!fits((value as PictureForm)[field], (place as PictureForm)[field])) return false;
  return true;
}

const isNumberPlace = (place: unknown): boolean => typeof place === 'object' && place !== null && (place as Partial<NumberPlace>).number === true;

/** The numbers of a picture in the order of its form, in whole units. */
export function numbersOf(picture: RoomPicture): number[] {
  const numbers: number[] = [];
  for (const field in picture) {
    const value = picture[field as keyof RoomPicture];
    if (!APART.includes(field)) collect(typeof value === 'number' ? value / largerOf(field) : value, numbers);
  }
  return numbers;
}

function collect(value: unknown, numbers: number[]): void {
  if (typeof value === 'number') numbers.push(inUnits(value));
  else if (value instanceof Float64Array || Array.isArray(value)) for (let k = 0; k < value.length; k++) collect(value[k], numbers);
  else if (typeof value === 'object' && value !== null) for (const field in value) collect((value as PictureForm)[field], numbers);
}

export const inUnits = (value: number): number => Math.max(-LARGEST, Math.min(LARGEST, Math.round(value / UNIT)));
/** The largest number stands for everything beyond it. */
export const fromUnits = (units: number): number => (units >= LARGEST ? Infinity : units * UNIT);

/** Gives the numbers of one instant in order: those of one row of whole units, or what lies between two rows. */
export class Numbers {
  /** Two rows, how far the instant lies between them (0 to 1), and the place of the first number. */
  constructor(private readonly a: Int16Array, private readonly b: Int16Array, private readonly t: number, private at: number) {}

  next(): number {
    const k = this.at++;
    const from = this.a[k]!;
    return (from + (this.b[k]! - from) * this.t) * UNIT;
  }

  /** So many numbers; the row before, if they are the same. */
  row(length: number, before: unknown): Float64Array {
    const row = new Float64Array(length);
    let same = before instanceof Float64Array && before.length === length;
    for (let k = 0; k < length; k++) {
      row[k] = this.next();
      same &&= row[k] === (before as Float64Array)[k];
    }
    return same ? (before as Float64Array) : row;
  }
}

/** What a picture has beside its numbers and its form. */
export interface Apart {
  readonly scenario: Scenario;
  readonly step: number;
  readonly marks: ReadonlyMap<string, SurfaceMark>;
}

/** The picture of that form with those numbers. Parts that are as in the picture before are the very same. */
export const pictureOf = (form: PictureForm, numbers: Numbers, apart: Apart, before: RoomPicture | null): RoomPicture => {
  const parts: Fields = {};
  for (const field in form) {
    const place = form[field];
    parts[field] = isNumberPlace(place) ? numbers.next() * largerOf(field) : filled(place, numbers, before?.[field as keyof RoomPicture]);
  }
  return { ...apart, ...(parts as object) } as RoomPicture;
};

type Fields = { [field: string]: unknown };

function filled(place: unknown, numbers: Numbers, before: unknown): unknown {
  if (typeof place !== 'object' || place === null) return place;
  if (isNumberPlace(place)) return numbers.next();
  if (Array.isArray(place)) return hasNumbers(place) ? filledList(place, numbers, Array.isArray(before) ? before : []) : place;
  const { row } = place as Partial<RowPlace>;
  if (typeof row === 'number') return numbers.row(row, before);
  const was = (typeof before === 'object' && before !== null ? before : {}) as Fields;
  const value: Fields = {};
  for (const field in place) value[field] = filled((place as PictureForm)[field], numbers, was[field]);
  if ('c' in value && 's' in value) makeDirection(value as { c: number; s: number });
  for (const field in value) if (value[field] !== was[field]) return value;
  return before;
}

function filledList(place: readonly unknown[], numbers: Numbers, before: readonly unknown[]): readonly unknown[] {
  const list = place.map((part, k) => filled(part, numbers, before[k]));
  return list.length === before.length && list.every((part, k) => part === before[k]) ? before : list;
}

/** Place of one number of a form in its row, by the fields that lead to it. */
export function placeOfNumber(form: PictureForm, path: readonly string[]): number {
  let places = knownPlaces.get(form);
  if (!places) knownPlaces.set(form, (places = new Map()));
  const name = path.join('.');
  const known = places.get(name) ?? countBefore(form, path);
  places.set(name, known);
  return known;
}

const knownPlaces = new WeakMap<PictureForm, Map<string, number>>();

function countBefore(place: PictureForm, [field, ...further]: readonly string[]): number {
  let count = 0;
  for (const name in place) {
    if (name === field) return further.length === 0 ? count : count + countBefore(place[name] as PictureForm, further);
    count += countIn(place[name]);
  }
  return count;
}

function countIn(place: unknown): number {
  if (typeof place !== 'object' || place === null) return 0;
  if (isNumberPlace(place)) return 1;
  const { row } = place as Partial<RowPlace>;
  if (typeof row === 'number') return row;
  return Object.values(place).reduce((sum: number, part) => sum + countIn(part), 0);
}

/** Lists of names and of yes and no stay the very same, so that a view sees at once that they did not change. */
const hasNumbers = (list: readonly unknown[]): boolean => typeof list[0] === 'object';

/** Directions stay unit vectors. */
function makeDirection(value: { c: number; s: number }): void {
  const length = Math.sqrt(value.c * value.c + value.s * value.s);
  if (length <= 1e-6) return;
  value.c /= length;
  value.s /= length;
}
