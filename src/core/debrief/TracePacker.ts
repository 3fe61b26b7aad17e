import { SIDES } from '../base/side.ts';
import type { Fact } from '../ledger/fact.ts';
import type { Clearances } from '../room/clearance.ts';
import type { RoomPicture } from '../room/picture.ts';
import type { RunResult } from '../run/result.ts';
import { packColumns } from './columns.ts';
import { formOf, hasForm, inUnits, numbersOf, type PictureForm } from './pictureForm.ts';
import type { ClearanceName, TraceChunk } from './traceChunk.ts';

/** Gathers pictures and facts of a run into chunks. */
export class TracePacker {
  private rows: number[][] = [];
  private sampleSteps: number[] = [];
  private forms: { from: number; form: PictureForm | null; count: number }[] = [];
  private facts: Fact[] = [];
  private form: PictureForm | null = null;
  private names: readonly ClearanceName[] = [];

  /** Keeps the facts of a step. */
  note(facts: readonly Fact[]): void {
    for (const fact of facts) this.facts.push(fact);
  }

  /** Keeps the picture as it is once `step` is done. */
  sample(step: number, picture: RoomPicture, clearances: Clearances): void {
    if (this.names.length === 0) this.names = namesOf(clearances);
    const numbers = numbersOf(picture);
    const goesOn = this.form !== null && hasForm(picture, this.form);
    if (!goesOn) this.form = formOf(picture);
    if (!goesOn || this.rows.length === 0) this.forms.push({ from: this.rows.length, form: goesOn ? null : this.form, count: numbers.length });
    this.rows.push([...this.names.map(({ side, thing }) => inUnits(clearances[side][thing])), ...numbers]);
    this.sampleSteps.push(step);
  }

  /** Gives what was gathered and begins anew. `steps` are done, and the run has come to `result`. */
  close(steps: number, result: RunResult): TraceChunk {
    const width = this.rows.reduce((most, row) => Math.max(most, row.length), 0);
    const values = new Int16Array(this.rows.length * width);
    this.rows.forEach((row, k) => values.set(row, k * width));
    const { sampleSteps, forms, facts, names } = this;
    const chunk = { sampleSteps, numbers: packColumns(values, this.rows.length, width), forms, clearances: names, facts, steps, result };
    [this.rows, this.sampleSteps, this.forms, this.facts] = [[], [], [], []];
    return chunk;
  }
}

const namesOf = (clearances: Clearances): ClearanceName[] => SIDES.flatMap((side) => Object.keys(clearances[side]).map((thing) => ({ side, thing: thing as ClearanceName['thing'] })));
