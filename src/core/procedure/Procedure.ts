import { assert } from '../base/assert.ts';
import type { StateHash } from '../base/hash.ts';
import type { Scenario, StationName } from '../scenario/schema.ts';
import { stationsOf } from '../scenario/station.ts';
import { FieldProcedure } from './field/FieldProcedure.ts';
import { GownProcedure } from './gown/GownProcedure.ts';
import { glovingHint } from './gown/hints.ts';
import { glovingHolds } from './gown/nextActs.ts';
import { isGlovingAgain } from './gown/seen.ts';
import type { NextAct } from './nextAct.ts';
import type { GownObservation, Observation, Progress } from './observation.ts';
import { SheathProcedure } from './sheath/SheathProcedure.ts';

/** The work of one station of a run. */
interface StationWork {
  observe(seen: Observation): void;
  readonly progress: Progress;
  readonly nextActs: readonly NextAct[];
  snapshot(): unknown;
  restore(snapshot: unknown): void;
  hashInto(hash: StateHash): void;
}

const WORK: Readonly<Record<StationName, (scenario: Scenario) => StationWork>> = {
  gown: (scenario) => {
    const procedure = new GownProcedure(scenario);
    return withSight(procedure, ({ gown }) => {
      assert(gown !== null, 'gowning is seen in every step');
      procedure.observe(gown);
    });
  },
  sheath: (scenario) => {
    const procedure = new SheathProcedure(scenario);
    return withSight(procedure, ({ sheath }) => {
      assert(sheath !== null, 'the loading of the sheath is seen in every step');
      procedure.observe(sheath);
    });
  },
  field: (scenario) => {
    const procedure = new FieldProcedure(scenario);
    return withSight(procedure, ({ field }) => procedure.observe(field));
  },
};

const withSight = (procedure: Omit<StationWork, 'observe'>, observe: StationWork['observe']): StationWork => ({
  observe,
  get progress() {
    return procedure.progress;
  },
  get nextActs() {
    return procedure.nextActs;
  },
  snapshot: () => procedure.snapshot(),
  restore: (snapshot) => procedure.restore(snapshot),
  hashInto: (hash) => procedure.hashInto(hash),
});

/** The work of all stations of a run, each of which sees every step: what belongs to a later one may be done early. */
export class Procedure {
  private readonly stations: readonly StationWork[];
  /** Gown and gloves while a glove is off, or its cuff turned back, in the middle of the work; seen anew in every step. */
  private glovingAgain: GownObservation | null = null;

  constructor(private readonly scenario: Scenario) {
    this.stations = stationsOf(scenario).map((station) => WORK[station](scenario));
  }

  /** Takes what was seen in the next step. Throws when steps do not rise. */
  observe(seen: Observation): void {
    for (const station of this.stations) station.observe(seen);
    this.glovingAgain = seen.gown && isGlovingAgain(seen.gown, this.scenario.gown.knitM) ? seen.gown : null;
  }

  /** Where the work stands after the last observation; the hint is that of the first station that is not done, unless a glove is off. */
  get progress(): Progress {
    const all = this.stations.map(({ progress }) => progress);
    const { current, hint } = all.find((one) => one.current !== 'finished') ?? all[all.length - 1]!;
    return {
      tasks: all.flatMap(({ tasks }) => tasks),
      current,
      hint: this.glovingAgain ? glovingHint(this.glovingAgain, this.scenario.gown.knitM) : hint,
      steadyShare: all.find(({ steadyShare }) => steadyShare !== null)?.steadyShare ?? null,
      sharpsBinned: all.flatMap(({ sharpsBinned }) => sharpsBinned),
    };
  }

  /** What comes next in the first station that is not done; the holds of a glove that is off before that. */
  get nextActs(): readonly NextAct[] {
    if (this.glovingAgain) return glovingHolds(this.glovingAgain, this.scenario.gown.knitM);
    return this.stations.find(({ progress }) => progress.current !== 'finished')?.nextActs ?? [];
  }

  /** Plain JSON from which `restore` goes on as if nothing had been between. One station's stands alone, as in runs broken off before there were several. */
  snapshot(): unknown {
    const saved = this.stations.map((station) => station.snapshot());
    return saved.length === 1 ? saved[0] : saved;
  }

  /** Takes a value of `snapshot` of a procedure of the same scenario. */
  restore(snapshot: unknown): void {
    const saved = this.stations.length === 1 ? [snapshot] : (snapshot as readonly unknown[]);
    this.stations.forEach((station, k) => station.restore(saved[k]));
  }

  /** Mixes everything on which later steps depend. */
  hashInto(hash: StateHash): void {
    for (const station of this.stations) station.hashInto(hash);
  }
}
