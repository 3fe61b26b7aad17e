import { GownWork } from './gownWork.ts';
import { Loading } from './loading.ts';
import type { Operator } from './operator.ts';
import { WholeProcedure } from './wholeProcedure.ts';

/** Where the left hand holds over the bin, beside the machine and above the cord (m). */
const OVER_BIN: readonly [number, number] = [0.68, 1.5];
/** Where the probe is laid beside the patient: pressed down into the valley before the rail it draws the edge of the drape in (m, degrees). */
const ON_THE_SLOPE: readonly [number, number, number] = [0.29, 1.07, -65];

/** Gown and gloves, the probe loaded, the field worked, in one run: a careful operator goes on with what the hands then are. */
export class GownToNeedle {
  readonly gown: GownWork;
  readonly loading: Loading;

  constructor(readonly op: Operator) {
    this.gown = new GownWork(op);
    this.loading = new Loading(op);
  }

  /** To the bed with both hands together in front, over table and rail, and there apart. */
  toBed(): this {
    this.op.palmsTo([['right', -0.1, 1.38], ['left', 0.1, 1.38]]).wait(0.5).palmTo('left', 0.28, 1.38).palmTo('right', -0.3, 1.38);
    return this;
  }

  /** The probe into its sheath, until its cord is covered; the empty packet goes into the bin before the assistant comes. */
  sheathe(): this {
    const { loading } = this;
    loading.fetch().open().aside().squeeze();
    this.intoBin();
    loading.bring().under().lower().takeProbe().letGo().drawUp().tail();
    return this;
  }

  layDown(): this {
    this.loading.layDown(...ON_THE_SLOPE);
    return this;
  }

  /** Gel, view, probe parked, anaesthetic, needle. */
  field(): this {
    new WholeProcedure(this.op).gelFromTable('gelTwo').view().park().anaesthetic().ready();
    return this;
  }

  all(): this {
    this.gown.all();
    this.toBed().sheathe();
    this.loading.bands();
    return this.layDown().field();
  }

  /** Drops what the left hand holds into the bin on that side. */
  private intoBin(): void {
    const { op } = this;
    op.palmTo('left', 0.33, 1.42).turn('left', -75).palmTo('left', ...OVER_BIN).release('left').wait(0.5);
    op.palmTo('left', 0.33, 1.42).turn('left', -10).palmTo('left', 0.28, 1.14);
  }
}
