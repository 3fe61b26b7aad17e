import { isGowned, yokeMark } from './art/operatorBody.ts';
import { LAYER_PAINTERS } from './layerPainters.ts';
import { FIELD_LAYERS, STILL_GROUPS, type StillGroup } from './drawingOrder.ts';
import type { Frame } from './frame.ts';
import { makeCanvas } from './makeCanvas.ts';
import { compose, shift } from './pen/affine.ts';
import { Pen } from './pen/pen.ts';
import type { Backend } from './render/backend.ts';
import { strandKey } from './strands/keptStrands.ts';
import { runsOf } from './strands/runs.ts';

interface Kept {
  readonly ctx: CanvasRenderingContext2D;
  /** What it was drawn from; it is drawn anew when this changes. */
  key: string;
  x: number;
  y: number;
}

/** Space that the operator takes up around the midline and over the middle of the face, in metres. */
const OPERATOR_HALF_M = 0.36;
const OVER_FACE_M = 0.21;
const MARGIN_PX = 4;

const keep = (opaque = false): Kept => ({ ctx: makeCanvas().getContext('2d', { alpha: !opaque })!, key: '', x: 0, y: 0 });

/** The picture is put together once its parts have been the same for so many frames; sheets take longer to come to rest. */
const BASE_AFTER_FRAMES = 3;
const FIELD_AFTER_FRAMES = 6;
const GROUPS = Object.keys(STILL_GROUPS) as StillGroup[];

/** How much the still picture shows: nothing, wall to patient, or sheets, rails and skin as well. */
export type Together = 'nothing' | 'base' | 'field';

/** For how many frames a key has been the same. */
class Age {
  private key = '';
  private frames = 0;

  next(key: string): number {
    this.frames = key === this.key ? this.frames + 1 : 0;
    this.key = key;
    return this.frames;
  }
}

/**
 * What lies under the moving things. Wall and furniture, the operator's body, bed and patient are each drawn once and kept until the
 * camera or they themselves change. What holds still is put together to one picture.
 */
export class StillPictures {
  private readonly kept: Readonly<Record<StillGroup, Kept>> = { room: keep(true), operator: keep(), bed: keep() };
  private readonly baseAge = new Age();
  private readonly fieldAge = new Age();
  private shown = '';
  private torsoPx = 0;

  constructor(private readonly backend: Backend) {}

  /** Brings the pictures up to date; what the still picture does not show is to be drawn by `paintRest`. */
  update(frame: Frame): Together {
    const { picture, camera, markOf } = frame;
    const scene = `${camera.toScreen.join(' ')} ${camera.widthPx} ${camera.heightPx} ${frame.pen.density} ${frame.shown}`;
    this.torsoPx = Math.round(picture.torsoX * camera.pxPerM * frame.pen.density);
    const keys: Readonly<Record<StillGroup, string>> = {
      room: `${scene} ${fixedMarks(frame)} ${picture.assistant.waits}`,
      operator: `${scene} ${markOf(picture.fixed['face'])} ${markOf(picture.fixed['gownFront'])} ${yokeMark(picture, markOf)} ${isGowned(picture)}`,
      bed: `${scene} ${markOf(picture.fixed['bed'])} ${halfMm(picture.bedUpM)} ${rowKey(picture.skinX)} ${rowKey(picture.skinY)}`,
    };
    for (const group of GROUPS) this.refresh(group, keys[group], frame);
    const base = `${Object.values(keys).join()} ${this.torsoPx}`;
    const field = fieldKey(frame);
    const [baseAge, fieldAge] = [this.baseAge.next(base), this.fieldAge.next(field)];
    if (baseAge < BASE_AFTER_FRAMES) return 'nothing';
    const together = fieldAge < FIELD_AFTER_FRAMES ? 'base' : 'field';
    const wanted = together === 'base' ? base : `${base} ${field}`;
    if (wanted !== this.shown) this.putTogether(frame, together);
    this.shown = wanted;
    return together;
  }

  /** Draws with the pen of the frame what the still picture does not show. */
  paintRest(frame: Frame, together: Together): void {
    if (together === 'nothing') this.paintBase(frame);
    if (together !== 'field') paintField(frame);
  }

  private paintBase({ pen }: Frame): void {
    for (const group of GROUPS) {
      const { ctx, x, y } = this.kept[group];
      pen.ctx.drawImage(ctx.canvas, x + (group === 'operator' ? this.torsoPx : 0), y);
    }
  }

  private putTogether(frame: Frame, together: 'base' | 'field'): void {
    const { still } = this.backend;
    const { canvas } = this.kept.room.ctx;
    still.reshape(canvas.width, canvas.height);
    still.ctx.lineJoin = 'round';
    const own = { ...frame, pen: frame.pen.onto(still.ctx, frame.pen.map) };
    this.paintBase(own);
    if (together === 'field') paintField(own);
    still.changed();
  }

  private refresh(group: StillGroup, key: string, frame: Frame): void {
    const kept = this.kept[group];
    if (kept.key === key) return;
    kept.key = key;
    const [x, y, width, height] = areaOf(group, frame);
    Object.assign(kept, { x, y });
    Object.assign(kept.ctx.canvas, { width, height });
    const { density } = frame.pen;
    const pen = Pen.over(kept.ctx, compose(shift(-x / density, -y / density), frame.camera.toScreen), density);
    for (const layer of STILL_GROUPS[group]) LAYER_PAINTERS[layer]({ ...frame, pen });
  }
}

function paintField(frame: Frame): void {
  for (const layer of FIELD_LAYERS) LAYER_PAINTERS[layer](frame);
}

/** Left, top, width, height in device pixels, cut to the screen. */
function areaOf(group: StillGroup, { camera, pen: { density }, picture }: Frame): [number, number, number, number] {
  const wide = Math.round(camera.widthPx * density);
  const high = Math.round(camera.heightPx * density);
  if (group === 'room') return [0, 0, wide, high];
  const { bed } = picture.scenario.room;
  const half = group === 'operator' ? OPERATOR_HALF_M : bed.mattressWidthM / 2 + 0.08;
  const top = group === 'operator' ? picture.scenario.operator.faceM + OVER_FACE_M : bed.mattressTopM + picture.bedUpM + picture.scenario.room.patient.heightM + 0.06;
  const a = camera.roomToScreen(-half, top);
  const b = camera.roomToScreen(half, 0);
  const y0 = Math.max(0, Math.floor(a.y * density) - MARGIN_PX);
  const y1 = Math.min(high, Math.ceil(b.y * density) + MARGIN_PX);
  // The operator steps aside, so what lies beside the screen is needed too, up to a sensible size.
  const x0 = Math.max(-wide, Math.floor(a.x * density) - MARGIN_PX);
  const x1 = Math.min(2 * wide, Math.ceil(b.x * density) + MARGIN_PX);
  return [x0, y0, Math.max(1, x1 - x0), Math.max(1, y1 - y0)];
}

/** Three points of a row to half a millimetre: smaller movements are not seen. */
const rowKey = (row: Float64Array): string => [row[0], row[row.length >> 1], row.at(-1)].map((value) => halfMm(value ?? 0)).join();

const halfMm = (metres: number): number => Math.round(metres * 2000);

const fixedMarks = ({ picture, markOf }: Frame): string =>
  ['pole', 'machine', 'kitTable', 'tableEdge', 'bin', 'floor'].map((name) => markOf(picture.fixed[name])).join(' ');

/** All that sheets, rails, skin and level line depend on. */
function fieldKey(frame: Frame): string {
  const { picture, markOf } = frame;
  const sheets = picture.strands.filter(({ id }) => id === 'drape.left' || id === 'drape.right').map((strand) => strandKey(strand, frame));
  const skin = runsOf(picture.skinSurfaces, markOf).map(({ mark, to }) => `${mark}${to}`);
  const level = Array.from(picture.levelY, (y) => Math.round(y * 1000));
  return [sheets, skin, picture.gelOnSite.toFixed(2), level, picture.levelX[0], halfMm(picture.bedUpM), markOf(picture.fixed['rail.left']), markOf(picture.fixed['rail.right'])].join(' ');
}
