import { assert } from '../base/assert.ts';
import type { Side } from '../base/side.ts';
import type { Fact } from '../ledger/fact.ts';
import { rulesInForce } from '../ledger/rules/ruleBook.ts';
import type { RoomPicture, SurfaceMark } from '../room/picture.ts';
import type { Scenario } from '../scenario/schema.ts';
import { bytesOf, unpackColumns } from './columns.ts';
import { lastAtMost } from './lastAtMost.ts';
import { MarkHistory } from './MarkHistory.ts';
import { fromUnits, Numbers, pictureOf, placeOfNumber, type PictureForm } from './pictureForm.ts';
import { Names, sharedWith } from './sharing.ts';
import { heatMapOf } from './heatMap.ts';
import type { TraceChunk } from './traceChunk.ts';
import type { ClearanceSeries, HandPath, HeatMap, TraceView } from './traceTypes.ts';

/** What is kept of a chunk. */
interface Stretch extends Pick<TraceChunk, 'sampleSteps' | 'numbers' | 'clearances'> {
  readonly forms: readonly { readonly from: number; readonly form: PictureForm; readonly count: number }[];
}

/** Chunks kept unpacked: while playing, the present one and its neighbours. */
const UNPACKED_MAX = 3;

/** A run as it was played, put together from chunks as they come. */
export class Trace implements TraceView {
  /** Every fact so far, in order. */
  readonly facts: Fact[] = [];
  private readonly chunks: Stretch[] = [];
  private readonly firstSteps: number[] = [];
  private readonly history: MarkHistory;
  private readonly unpacked = new Map<number, Int16Array>();
  private readonly names = new Names();
  private lastForm: PictureForm = {};
  private shown: RoomPicture | null = null;

  constructor(readonly scenario: Scenario) {
    this.history = new MarkHistory(rulesInForce(scenario), 'lastStep');
  }

  /** Adds the next chunk. */
  take(chunk: TraceChunk): void {
    const facts = chunk.facts.map((fact) => this.names.shared(fact));
    for (const fact of facts) this.facts.push(fact);
    this.history.take(facts);
    const { sampleSteps, numbers, clearances } = chunk;
    if (sampleSteps.length === 0) return;
    const forms = chunk.forms.map(({ from, form, count }) => {
      if (form !== null) this.lastForm = sharedWith(form, this.lastForm);
      return { from, form: this.lastForm, count };
    });
    this.chunks.push({ sampleSteps, numbers, clearances, forms });
    this.firstSteps.push(sampleSteps[0]!);
  }

  get lastStep(): number {
    const last = this.chunks[this.chunks.length - 1];
    return last ? last.sampleSteps[last.sampleSteps.length - 1]! : -1;
  }

  /** Memory of the samples, in bytes. */
  get bytes(): number {
    return this.chunks.reduce((sum, { numbers }) => sum + bytesOf(numbers), 0);
  }

  pictureAt(step: number): RoomPicture {
    assert(this.chunks.length > 0, 'the trace has something to show');
    const wanted = Math.max(0, Math.min(this.lastStep, step));
    const c = Math.max(0, lastAtMost(this.firstSteps, wanted));
    const chunk = this.chunks[c]!;
    const k = lastAtMost(chunk.sampleSteps, wanted);
    const next = this.sampleAfter(c, k);
    const { form, count } = formAt(chunk, k);
    const [from, to] = [chunk.sampleSteps[k]!, next ? this.chunks[next.chunk]!.sampleSteps[next.place]! : 0];
    const blends = next !== null && formAt(this.chunks[next.chunk]!, next.place).count === count;
    const row = this.rowOf(c, k);
    const numbers = new Numbers(row, blends ? this.rowOf(next.chunk, next.place) : row, blends ? (wanted - from) / (to - from) : 0, chunk.clearances.length);
    this.shown = pictureOf(form, numbers, { scenario: this.scenario, step: wanted + 1, marks: this.marksAt(wanted) }, this.shown);
    return this.shown;
  }

  marksAt(step: number): ReadonlyMap<string, SurfaceMark> {
    return this.history.marksAt(step);
  }

  handPath(side: Side, fromStep = 0, toStep = this.lastStep): HandPath {
    const [steps, x, y]: [number[], number[], number[]] = [[], [], []];
    this.eachSample(fromStep, toStep, (step, chunk, place, row) => {
      const { form } = formAt(chunk, place);
      steps.push(step);
      x.push(fromUnits(row[chunk.clearances.length + placeOfNumber(form, ['hands', side, 'x'])]!));
      y.push(fromUnits(row[chunk.clearances.length + placeOfNumber(form, ['hands', side, 'y'])]!));
    });
    return { steps: Float64Array.from(steps), x: Float64Array.from(x), y: Float64Array.from(y) };
  }

  heatMap(side: Side, fromStep = 0, toStep = this.lastStep): HeatMap {
    return heatMapOf(this.handPath(side, fromStep, toStep));
  }

  clearances(): readonly ClearanceSeries[] {
    const names = this.chunks[0]?.clearances ?? [];
    const steps: number[] = [];
    const metres = names.map((): number[] => []);
    this.eachSample(0, this.lastStep, (step, _chunk, _place, row) => {
      steps.push(step);
      metres.forEach((series, k) => series.push(fromUnits(row[k]!)));
    });
    const at = Float64Array.from(steps);
    return names.map(({ side, thing }, k) => ({ side, thing, steps: at, metres: Float64Array.from(metres[k]!) }));
  }

  private eachSample(fromStep: number, toStep: number, visit: (step: number, chunk: Stretch, place: number, row: Int16Array) => void): void {
    this.chunks.forEach((chunk, c) => {
      const { sampleSteps } = chunk;
      if (sampleSteps[0]! > toStep || sampleSteps[sampleSteps.length - 1]! < fromStep) return;
      sampleSteps.forEach((step, place) => {
        if (step >= fromStep && step <= toStep) visit(step, chunk, place, this.rowOf(c, place));
      });
    });
  }

  private sampleAfter(chunk: number, place: number): { readonly chunk: number; readonly place: number } | null {
    if (place + 1 < this.chunks[chunk]!.sampleSteps.length) return { chunk, place: place + 1 };
    return chunk + 1 < this.chunks.length ? { chunk: chunk + 1, place: 0 } : null;
  }

  /** All numbers of a sample, those of its clearances first. */
  private rowOf(chunk: number, place: number): Int16Array {
    let values = this.unpacked.get(chunk);
    if (!values) {
      values = unpackColumns(this.chunks[chunk]!.numbers);
      const [oldest] = this.unpacked.keys();
      if (this.unpacked.size >= UNPACKED_MAX && oldest !== undefined) this.unpacked.delete(oldest);
      this.unpacked.set(chunk, values);
    }
    const width = this.chunks[chunk]!.numbers.first.length;
    return values.subarray(place * width, (place + 1) * width);
  }
}

function formAt({ forms }: Stretch, place: number): Stretch['forms'][number] {
  let found = forms[0]!;
  for (const form of forms) if (form.from <= place) found = form;
  return found;
}
