import type { Side } from '../../src/core/base/side.ts';
import type { Command } from '../../src/core/commands/command.ts';
import type { HoldAct } from '../../src/core/procedure/nextHold.ts';
import { fingertips } from '../../src/core/room/fingertips.ts';
import { placeHolds, type PlacedHold } from '../../src/core/room/placedHold.ts';
import { workingEnd } from '../../src/core/room/work.ts';
import { Operator } from './operator.ts';

/** One grip, squeeze or release against what was told. */
export interface Met {
  readonly what: string;
  readonly hand: Side;
  /** From the place of the hold to the fingertips (m); Infinity when none was told for that hand. */
  readonly off: number;
}

/** An operator whose every grip, squeeze and release is compared with the holds that were told just before. */
export class ComparedOperator extends Operator {
  readonly met: Met[] = [];
  /** Where the way ends along which a glove's cuff is being drawn. */
  private drawTo: readonly [number, number] | null = null;

  override send(command: Command): this {
    if (command.type === 'hand.grip') this.compare(command.hand, ['grip', 'draw']);
    if (command.type === 'hand.use' && command.on) this.compare(command.hand, ['squeeze']);
    if (command.type === 'hand.release' && this.holds(command.hand) === 'gloveCuff') {
      const [x, y] = fingertips(this.run.room.scene, command.hand);
      this.met.push({ what: 'drawn', hand: command.hand, off: Math.hypot(this.drawTo![0] - x, this.drawTo![1] - y) });
    }
    return super.send(command);
  }

  get told(): readonly PlacedHold[] {
    return placeHolds(this.run.picture(), this.run.nextHolds);
  }

  tips(side: Side): readonly [number, number] {
    return fingertips(this.run.room.scene, side);
  }

  /** Least distance from the told places of these acts to the fingertips, or to the working end of a thing that is squeezed. */
  private compare(hand: Side, acts: readonly HoldAct[]): void {
    const told = this.told.filter(({ hold }) => acts.includes(hold.act) && (hold.hand === null || hold.hand === hand));
    const { scene, hands } = this.run.room;
    const { hold } = hands[hand];
    const folded = hold?.kind === 'thing' && hold.thing === scene.gown?.packet;
    const [x, y] = acts.includes('squeeze') && hold?.kind === 'thing' && !folded ? workingEnd(scene, hold.thing) : fingertips(scene, hand);
    this.drawTo = told.find(({ hold }) => hold.act === 'draw')?.to ?? this.drawTo;
    const off = told.map(({ at }) => Math.hypot(at[0] - x, at[1] - y));
    this.met.push({ what: told.map(({ hold }) => hold.place).join() || `${acts.join()} untold`, hand, off: Math.min(Infinity, ...off) });
  }
}
