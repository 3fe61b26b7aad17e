import type { Side } from '../../../../src/core/base/side.ts';
import { FieldProcedure } from '../../../../src/core/procedure/field/FieldProcedure.ts';
import type { FieldObservation, TaskId } from '../../../../src/core/procedure/observation.ts';
import { parseScenario } from '../../../../src/core/scenario/parseScenario.ts';
import type { Scenario } from '../../../../src/core/scenario/schema.ts';
import { fileWith } from '../../scenario/source.ts';
import { StationDriver } from '../StationDriver.ts';

type Changes = Parameters<typeof fileWith>[0];

/** A scenario for these tests: steady view 3 s, parked 4 s, ready 2 s, unless changed. */
export function scenarioWith(changes: Changes = {}): Scenario {
  const result = parseScenario(fileWith(changes));
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** The field as it is at the start: the probe lies ready, nothing is held, nothing is done. */
export const QUIET: FieldObservation = {
  step: 0,
  gelOnSite: 0,
  probe: { heldBy: null, atSite: false, speed: 0, coupled: true, lyingOnField: true },
  needle: { heldBy: null, tipToSite: 0.2, speed: 0 },
  anaesthetic: 0,
  rubbishLeft: ['gel', 'gauze'],
  binned: [],
  sharpsBinned: [],
  dropped: [],
};

/** The work of the station in verbs. */
export class FieldDriver extends StationDriver<FieldObservation, TaskId, FieldProcedure> {
  constructor(changes: Changes = {}) {
    super(new FieldProcedure(scenarioWith(changes)), QUIET);
  }

  gel(gelOnSite = 1): this {
    return this.with({ gelOnSite });
  }

  /** The probe in a hand, away from the site. */
  holdProbe(heldBy: Side = 'right'): this {
    return this.with({ probe: { heldBy, atSite: false, speed: 0.2, coupled: true, lyingOnField: false } });
  }

  /** The probe in a hand on the site, moving at `speed` metres per second. */
  probeAtSite(speed = 0, heldBy: Side = 'right'): this {
    return this.with({ probe: { heldBy, atSite: true, speed, coupled: true, lyingOnField: false } });
  }

  /** Nobody holds the probe; it lies still on the field. */
  letProbeLie(): this {
    return this.with({ probe: { heldBy: null, atSite: false, speed: 0, coupled: true, lyingOnField: true } });
  }

  /** Nobody holds the probe, and it moves at `speed` metres per second. */
  letProbeSlide(speed = 0.1): this {
    return this.with({ probe: { heldBy: null, atSite: false, speed, coupled: true, lyingOnField: false } });
  }

  needle(tipToSite: number, heldBy: Side | null = 'left'): this {
    return this.with({ needle: { heldBy, tipToSite, speed: 0 } });
  }

  anaesthetic(anaesthetic = 1): this {
    return this.with({ anaesthetic });
  }

  rubbish(...rubbishLeft: string[]): this {
    return this.with({ rubbishLeft });
  }

  sharps(...sharpsBinned: string[]): this {
    return this.with({ sharpsBinned });
  }
}

/** The whole work, done well, up to and with the task named. */
export function doneUpTo(task: TaskId, changes: Changes = {}): FieldDriver {
  const driver = new FieldDriver(changes).for(1);
  const stages: readonly (readonly [TaskId, () => void])[] = [
    ['gel', () => driver.gel().for(0.5)],
    ['view', () => driver.probeAtSite().for(3)],
    ['park', () => driver.letProbeLie().for(4)],
    ['anaesthetic', () => driver.anaesthetic().for(0.5)],
    ['ready', () => driver.probeAtSite().needle(0.01).for(2)],
    ['rubbish', () => driver.rubbish().for(0.1)],
  ];
  for (const [name, act] of stages) {
    act();
    if (name === task) break;
  }
  return driver;
}
