import type { ItemPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import type { Affine } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';
import { paintLooseBand } from './band.ts';
import { paintGelBottle } from './gelBottle.ts';
import { paintGlove, paintGownPacket, paintTieCard } from './gownThings.ts';
import { paintProbe } from './probe.ts';
import { paintSheathRoll } from './sheathRoll.ts';
import { paintGauze, paintGelPacket } from './softItems.ts';
import { paintSyringe } from './syringe.ts';

/** From millimetres of a thing, its working end along +x, to metres of the room. */
const itemFrame = ({ x, y, c, s }: ItemPicture): Affine => [c / 1000, s / 1000, -s / 1000, c / 1000, x, y];
/** The probe is drawn with its face along +y and 66 mm from its middle; the thing is 62 mm long from the middle. */
const PROBE_FRAME: Affine = [0, -0.86, 0.93, 0, 0, 0];

/** Any item or the probe; the pen's frame is in metres. */
export function paintItem(pen: Pen, item: ItemPicture, markOf: MarkOf): void {
  if (item.gone) return;
  const mm = pen.in(itemFrame(item));
  const mark = markOf(item.surfaces[0]);
  switch (item.kind) {
    case 'probe': paintProbe(mm.in(PROBE_FRAME), mark, item.dress); break;
    case 'gelPacket': paintGelPacket(mm, item.used, mark); break;
    case 'gelBottle': paintGelBottle(mm, item.used, mark); break;
    case 'gauze': paintGauze(mm, mark); break;
    case 'band': paintLooseBand(mm, mark); break;
    case 'gownPacket': paintGownPacket(mm, mark); break;
    case 'glove': paintGlove(mm, mark); break;
    case 'tieCard': paintTieCard(mm, mark); break;
    case 'sheathRoll': paintSheathRoll(mm, mark); break;
    case 'syringe':
    case 'needleSyringe':
      paintSyringe(mm, {
        needleMm: item.kind === 'syringe' ? 30 : 60,
        full: item.kind === 'syringe' ? 0.85 * (1 - item.used) : 0.12,
        liquid: item.kind === 'syringe' ? '#DCEBF0' : '#E6EEF0',
        barrelMark: mark,
        needleMark: markOf(item.surfaces[1]),
      });
  }
}
