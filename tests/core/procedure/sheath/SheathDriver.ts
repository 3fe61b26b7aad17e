import type { Side } from '../../../../src/core/base/side.ts';
import type { LoadingObservation, SheathTaskId } from '../../../../src/core/procedure/observation.ts';
import { SheathProcedure } from '../../../../src/core/procedure/sheath/SheathProcedure.ts';
import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../../src/core/scenario/schema.ts';
import { StationDriver } from '../StationDriver.ts';

/** A scenario for these tests: 5 mL of gel, 0.8 m covered, laid down for 4 s, unless changed. */
export const sheathScenario = (parts: Partial<ScenarioSource> = {}): Scenario =>
  scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'loading', title: 'Loading', summary: 'For tests.', seed: 1, station: 'sheath', ...parts });

/** The start: the sheath lies folded, the probe hangs on its machine. */
export const FOLDED: LoadingObservation = {
  step: 0,
  sheath: 'lying',
  gathered: 1,
  gelMl: 0,
  gelComingMl: 0,
  otherGelMl: 0,
  probe: { withAssistant: false, stopped: null, overMouth: false, inside: false, heldThrough: null, lyingOnField: false },
  coveredM: 0,
  coverableM: 1.09,
  endHeld: false,
  faceSpoiled: 1,
  bands: { head: false, cord: false },
  torn: false,
  cordHeld: false,
  dropped: [],
  packed: [],
  used: [],
};

const NOWHERE = { withAssistant: false, stopped: null, overMouth: false, inside: false, heldThrough: null, lyingOnField: false } as const;

/** The loading in verbs. */
export class SheathDriver extends StationDriver<LoadingObservation, SheathTaskId, SheathProcedure> {
  constructor(parts: Partial<ScenarioSource> = {}) {
    super(new SheathProcedure(sheathScenario(parts)), FOLDED);
  }

  take(gathered = 1): this {
    return this.with({ sheath: 'held', gathered });
  }

  open(): this {
    return this.with({ sheath: 'open', gathered: 1 });
  }

  gel(gelMl = 6): this {
    return this.with({ gelMl });
  }

  /** The assistant has the probe, on the way or over the mouth. */
  bring(overMouth = true): this {
    return this.with({ probe: { ...NOWHERE, withAssistant: true, overMouth } });
  }

  /** The assistant has lowered the probe into the mouth. */
  lower(): this {
    return this.with({ sheath: 'on', faceSpoiled: 0.4, probe: { ...NOWHERE, withAssistant: true, inside: true } });
  }

  /** The probe in a hand through the film. */
  holdThrough(heldThrough: Side = 'right', withAssistant = false): this {
    return this.with({ sheath: 'on', probe: { ...NOWHERE, withAssistant, inside: true, heldThrough } });
  }

  cover(coveredM = 0.9): this {
    return this.with({ coveredM });
  }

  face(faceSpoiled: number): this {
    return this.with({ faceSpoiled });
  }

  bands(head: boolean, cord: boolean): this {
    return this.with({ bands: { head, cord } });
  }

  /** Nobody holds the sheathed probe; it lies still on the field, or it does not. */
  lie(lyingOnField = true): this {
    return this.with({ probe: { ...NOWHERE, inside: true, lyingOnField } });
  }
}

/** The whole loading, done well, up to and with the task named. */
export function loadedUpTo(task: SheathTaskId, parts: Partial<ScenarioSource> = {}): SheathDriver {
  const driver = new SheathDriver(parts).for(1).take().for(0.5).open().for(0.5);
  const stages: readonly (readonly [SheathTaskId, () => void])[] = [
    ['gelInside', () => driver.gel().for(0.5)],
    ['probeTaken', () => driver.bring().for(1).lower().for(0.5).holdThrough('right', true).for(0.5).holdThrough().for(0.5)],
    ['covered', () => driver.cover().for(0.5)],
    ['airOut', () => driver.face(0).for(1)],
    ['banded', () => driver.bands(true, true).for(0.1)],
    ['laidDown', () => driver.lie().for(4)],
  ];
  for (const [name, act] of stages) {
    act();
    if (name === task) break;
  }
  return driver;
}
