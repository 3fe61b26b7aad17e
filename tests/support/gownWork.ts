import { otherSide, SIDES, signOf, type Side } from '../../src/core/base/side.ts';
import { HAND } from '../../src/core/room/handShape.ts';
import { fingertips } from '../../src/core/room/fingertips.ts';
import type { Gown } from '../../src/core/room/gown/Gown.ts';
import type { Operator } from './operator.ts';

/** How far each palm is from the middle of the body while both work in front (m). */
const APART_M = 0.15;
/** Degrees of the fingers: down to a table, level, up along a raised arm. */
const DOWN = -35;
const UP = 60;
/** At the bed hands wait that high, clear of the field, and gloves are put on there beside it (m). */
const OVER_FIELD_M = 1.45;
const BESIDE_BED_M = -1.3;

/** An operator who puts on gown and gloves, hold by hold, as it is taught. */
export class GownWork {
  /** `x` is the middle of the place where it is done (m). */
  constructor(
    readonly op: Operator,
    readonly x = op.run.scenario.gown.standXM,
  ) {}

  get gown(): Gown {
    return this.op.run.room.gown!;
  }

  get shoulderM(): number {
    return this.op.run.scenario.operator.shoulderM;
  }

  /** Takes the folded gown by its neck and lifts it straight up. `aside` is how far from the neck it is taken (m). */
  lift(aside = 0): this {
    const { op } = this;
    const { x, y } = op.thing('gownPacket');
    op.turn('right', DOWN).fingersTo('right', x + aside, y + 0.2).fingersTo('right', x + aside, y + 0.045, 0.15).grip('right');
    op.fingersTo('right', x, this.carryM + 0.05).turn('right', -20);
    return this;
  }

  /** Steps clear and lets it fall open at that height. */
  fallOpen(height = this.carryM): this {
    const { op, x } = this;
    op.palmTo('right', x - 0.12, height).palmTo('left', x + 0.2, height - 0.05).wait(0.4);
    op.use('right', 0.1).wait(1);
    return this;
  }

  /** The free hand takes the other shoulder. */
  takeShoulder(): this {
    const [x, y] = this.gown.held.cloth.shoulder('left');
    this.op.fingersTo('left', x + 0.01, y).grip('left');
    return this;
  }

  /** Raises both shoulders of the open gown so high over the own ones (m), at that mean speed. */
  holdUp(metres: number, speed = 0.3): this {
    const { op, x } = this;
    op.turn('right', UP).turn('left', UP);
    op.palmsTo([['right', x - 0.17, this.shoulderM], ['left', x + 0.17, this.shoulderM]]);
    op.palmsTo([['right', x - 0.17, this.shoulderM + metres], ['left', x + 0.17, this.shoulderM + metres]], speed);
    return this;
  }

  /** Fingers up, then both hands into the sleeves. */
  slipIn(): this {
    const { op, x } = this;
    op.turn('right', UP).turn('left', UP);
    op.palmsTo([['right', x - 0.18, this.shoulderM], ['left', x + 0.18, this.shoulderM]]).wait(0.5);
    op.use('right', 0.1).use('left', 0.1);
    return this;
  }

  /** Stretches both arms up until the fingertips are so far from the end of the cuffs (m), and grips them. */
  stretch(stopM = 0.05, grip = true): this {
    const { op, x } = this;
    const top = this.shoulderM + 0.36;
    for (let tries = 0; tries < 5 && this.toCuff() > stopM; tries++) {
      for (let y = this.shoulderM; y < top && this.toCuff() > stopM; y += 0.02) {
        op.palmsTo([['right', x - 0.17, y], ['left', x + 0.17, y]], 0.4);
      }
      if (this.toCuff() > stopM) op.palmsTo([['right', x - 0.18, this.shoulderM - 0.02], ['left', x + 0.18, this.shoulderM - 0.02]]);
    }
    if (grip) for (const side of SIDES) op.grip(side);
    op.palmsTo([['right', x - 0.2, this.shoulderM - 0.06], ['left', x + 0.2, this.shoulderM - 0.06]]);
    return this;
  }

  /** Has the back tied. */
  tie(): this {
    const { op } = this;
    op.send({ type: 'ask', request: 'tieBack' });
    for (let s = 0; s < 20 && this.gown.state !== 'tied'; s++) op.wait(1);
    for (const side of SIDES) op.release(side);
    return this;
  }

  /** All until gown and gloves are on and the outer tie is tied. */
  dressed(): this {
    return this.gowned().glove('right').glove('left').card();
  }

  /** Fingers past the end of the left sleeve while the gown is drawn up; the right hand holds its cuff. */
  leftFingersOut(): this {
    this.lift().fallOpen().takeShoulder().slipIn().stretch(0.09, false).op.grip('right');
    return this.tie();
  }

  /** All until the back is tied. */
  gowned(): this {
    return this.lift().fallOpen().takeShoulder().slipIn().stretch().tie();
  }

  /** Fetches the glove of that side with the other hand. */
  fetchGlove(side: Side): this {
    const { op, x } = this;
    const by = otherSide(side);
    const id = side === 'left' ? 'gloveLeft' : 'gloveRight';
    const { x: gx, y: gy } = op.thing(id);
    const cuff = gx - (side === 'right' ? -1 : 1) * 0.1;
    op.turn(by, DOWN).turn(side, DOWN).palmTo(side, x + signOf(side) * 0.25, this.workM);
    op.fingersTo(by, cuff, gy + 0.2).fingersTo(by, cuff, gy + 0.018, 0.15).grip(by);
    op.fingersTo(by, cuff, gy + 0.32).turn(by, 0).turn(side, 0);
    op.palmTo(side, x + signOf(side) * APART_M, this.workM).palmTo(by, x + signOf(by) * APART_M, this.workM);
    return this;
  }

  /** Lays it on its hand: that hand grips it, the other lets go. */
  lay(side: Side): this {
    const { op } = this;
    const [tx, ty] = this.tips(side);
    op.fingersTo(otherSide(side), tx, ty + 0.02, 0.15).grip(side).wait(0.3);
    return this;
  }

  /** Draws the cuff so far over the sleeve (m), at that mean speed. */
  draw(side: Side, metres = 0.13, speed = 0.15): this {
    const { op } = this;
    const by = otherSide(side);
    const [tx, ty] = this.tips(side);
    op.fingersTo(by, tx, ty + 0.02, 0.15).grip(by);
    op.fingersTo(by, tx + signOf(side) * metres, ty + 0.02, speed).release(by);
    return this;
  }

  /** Pushes the hand into the glove. */
  push(side: Side): this {
    const { op, x } = this;
    for (let tries = 0; tries < 4 && this.gown.dress.arms[side].glove !== 'on'; tries++) {
      op.palmTo(side, x + signOf(side) * 0.2, this.workM + 0.02).palmTo(side, x + signOf(side) * 0.04, this.workM + 0.02);
      op.palmTo(side, x + signOf(side) * APART_M, this.workM);
    }
    return this;
  }

  glove(side: Side): this {
    return this.fetchGlove(side).lay(side).draw(side).push(side);
  }

  /** Asks for another glove for that hand, holds it out, and waits until the old one is off and a new one lies open. */
  changeGlove(side: Side): this {
    const { op, x } = this;
    op.turn(side, 0).palmTo(otherSide(side), x + signOf(otherSide(side)) * 0.2, this.workM).palmTo(side, x + signOf(side) * 0.2, this.workM).wait(0.5);
    op.send({ type: 'remedy.start', remedy: 'changeGlove', thing: side });
    for (let s = 0; s < 30 && !this.isNewOpened(side); s++) op.wait(1);
    return this;
  }

  /** At the bed: asks for another glove, steps beside it when it is opened, and later comes back. */
  static changedAtBed(op: Operator, side: Side, play: (work: GownWork) => unknown): void {
    op.palmsTo([['right', -0.25, OVER_FIELD_M], ['left', 0.25, OVER_FIELD_M]]).send({ type: 'remedy.start', remedy: 'changeGlove', thing: side });
    const work = new GownWork(op, BESIDE_BED_M);
    for (let s = 0; s < 30 && !work.isNewOpened(side); s++) op.wait(1);
    op.palmsTo([['right', BESIDE_BED_M + 0.1, OVER_FIELD_M], ['left', BESIDE_BED_M + 0.4, OVER_FIELD_M]]);
    play(work);
    op.palmTo('right', -0.25, OVER_FIELD_M).palmTo('left', 0.25, OVER_FIELD_M).wait(1);
  }

  /** Fetches a glove with the other hand, by its cuff or `aside` from there toward its edge (m), and lets it hang before the body. */
  hangGlove(side: Side, aside = 0): this {
    const { op, x } = this;
    const by = otherSide(side);
    const { x: gx, y: gy } = op.thing(side === 'left' ? 'gloveLeft' : 'gloveRight');
    const cuff = gx + (side === 'right' ? 1 : -1) * (0.11 + aside);
    op.turn(by, DOWN).palmTo(side, x + signOf(side) * 0.3, this.workM);
    op.fingersTo(by, cuff, gy + 0.2).fingersTo(by, cuff, gy + 0.018, 0.15).grip(by);
    op.fingersTo(by, cuff, gy + 0.4).turn(by, 0).palmTo(by, x + signOf(by) * APART_M, this.workM).wait(0.5);
    return this;
  }

  /** The bare hand goes in from above, `aside` from the middle of the mouth (m); a gloved other hand keeps the cuff. */
  slipIntoGlove(side: Side, aside = 0): this {
    const { op } = this;
    const [mx, my] = this.tips(otherSide(side));
    op.turn(side, -90).fingersTo(side, mx + aside, my + 0.1).fingersTo(side, mx + aside, my - 0.14, 0.2).wait(0.3);
    return this;
  }

  /** The other gloved hand draws the cuff that it holds over the knit cuff. */
  drawOver(side: Side): this {
    const { op } = this;
    const [mx, my] = this.tips(otherSide(side));
    op.fingersTo(otherSide(side), mx, my + 0.14, 0.15).release(otherSide(side)).turn(side, 0);
    return this;
  }

  /** Grips the edge of a glove that is on, wherever it lies along the hand, and draws it over the knit cuff. */
  coverCuff(side: Side): this {
    const { op } = this;
    const by = otherSide(side);
    op.turn(side, 0).turn(by, 0);
    const [ex, ey] = this.gown.gloving.edge(by)!;
    op.fingersTo(by, ex, ey + 0.02, 0.15).grip(by);
    op.fingersTo(by, ex + signOf(side) * 0.13, ey + 0.02, 0.15).release(by);
    return this;
  }

  openGlove(side: Side): this {
    return this.hangGlove(side).slipIntoGlove(side).drawOver(side);
  }

  /** Takes the card by its own part, or `aside` from its middle (m), holds it out and has it taken. */
  card(aside = -0.03): this {
    const { op, x } = this;
    const { x: cx, y } = op.thing('tieCard');
    op.turn('right', DOWN).palmTo('left', x + 0.2, this.workM).fingersTo('right', cx + aside, y + 0.12).fingersTo('right', cx + aside, y + 0.01, 0.15).grip('right');
    op.palmTo('right', x - 0.05, this.workM);
    return this.passCard();
  }

  passCard(): this {
    const { op } = this;
    op.send({ type: 'ask', request: 'takeCard' });
    for (let s = 0; s < 20 && this.gown.card.state !== 'tied'; s++) op.wait(1);
    op.release('right').wait(0.7);
    return this;
  }

  /** Waits with both hands together in front. */
  waitTogether(seconds: number): this {
    const { op, x } = this;
    op.palmsTo([['right', x - 0.1, this.workM], ['left', x + 0.1, this.workM]]).wait(seconds);
    return this;
  }

  /** The closed right hand goes by where fingers would be in the armpit, in one movement. */
  passUnderArm(): this {
    const { op, x } = this;
    const y = this.shoulderM - 0.13;
    op.palmTo('left', x + 0.1, y - 0.12).palmTo('right', x - 0.1, y).turn('right', 0).grip('right');
    const nearest = op.watchLeast(() => {
      const [fx, fy] = fingertips(op.run.room.scene, 'right');
      return Math.hypot(fx - x - op.run.scenario.operator.shoulderHalfWidthM, fy - this.shoulderM + 0.12);
    });
    op.palmTo('right', x + 0.35, y);
    if (nearest.least > 0.05) throw new Error(`the hand came no nearer than ${nearest.least} m`);
    op.release('right');
    return this;
  }

  /** Everything, as it is taught. */
  all(): this {
    return this.dressed().waitTogether(this.op.run.scenario.tasks.waitS + 1);
  }

  /** Height at which the folded gown is carried: under the face (m). */
  get carryM(): number {
    return this.op.run.scenario.operator.faceM - 0.2;
  }

  /** Height at which hands work in front (m). */
  get workM(): number {
    return this.op.run.scenario.operator.waistM + 0.24;
  }

  tips(side: Side): readonly [number, number] {
    const { world, hands } = this.op.run.room.scene;
    const b = hands[side];
    return [world.bodyX[b]! + world.bodyC[b]! * HAND.gripU, world.bodyY[b]! + world.bodyS[b]! * HAND.gripU];
  }

  private isNewOpened(side: Side): boolean {
    const thing = this.op.run.room.scene.gown!.gloves[side];
    return this.gown.dress.arms[side].glove === 'lying' && !this.op.run.room.gone[thing];
  }

  private toCuff(): number {
    return Math.min(...SIDES.map((side) => this.gown.observe(0, false).toCuffM[side] ?? Infinity));
  }
}
