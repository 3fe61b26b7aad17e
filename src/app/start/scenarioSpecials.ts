import { scenarioSchema, type Scenario } from '../../core/scenario/schema.ts';
import { counted } from '../parts/sentence.ts';
import { stationWords } from '../parts/stationWords.ts';

const USUAL = scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'usual', title: 'Usual', summary: 'Usual', seed: 0, station: 'field' });

/** What differs from the usual room, in a few words each. Events are counted, not told: they should come as a surprise. */
export function scenarioSpecials(scenario: Scenario): readonly string[] {
  const { bed, rails } = scenario.room;
  const specials: string[] = scenario.station === 'field' ? [] : [stationWords(scenario)];
  if (bed.headDownDeg > 0) specials.push(`head down ${bed.headDownDeg}°`);
  if (!rails.left.up || !rails.right.up) specials.push(!rails.left.up && !rails.right.up ? 'rails down' : 'one rail down');
  if (railTop(scenario) > railTop(USUAL)) specials.push('high rails');
  if (scenario.drape.left.reach === 'inside' || scenario.drape.right.reach === 'inside') specials.push('bare rails');
  specials.push(...sheathSpecials(scenario));
  if (Math.min(scenario.drape.left.peelNPerM, scenario.drape.right.peelNPerM) < USUAL.drape.left.peelNPerM) specials.push('weak adhesive');
  if (scenario.cues.length > 0) specials.push(`${counted(scenario.cues.length, 'event')} on the way`);
  return specials;
}

/** The sheath that is to be put on, or the part of the cord that lies in one. */
function sheathSpecials({ station, sheath, cord }: Scenario): readonly string[] {
  const [length, usual] = station === 'sheath' ? [sheath.lengthM, USUAL.sheath.lengthM] : [cord.coveredM, USUAL.cord.coveredM];
  const short = length < usual ? [`sheath of ${Math.round(length * 100)} cm`] : [];
  return station === 'sheath' && sheath.form === 'loose' ? [...short, 'loose sheath'] : short;
}

const railTop = ({ room }: Scenario): number => Math.max(room.rails.left.up ? room.rails.left.topAboveMattressM : 0, room.rails.right.up ? room.rails.right.topAboveMattressM : 0);
