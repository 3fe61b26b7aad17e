import { SIDES, type Side } from '../../base/side.ts';
import { keptFields } from '../keeping.ts';
import type { ArmDressPicture, GownFromSide, GownPicture } from '../picture.ts';
import type { Scene } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import type { ArmDress } from './dress.ts';
import type { Gown } from './Gown.ts';
import type { GownInDepth } from './GownInDepth.ts';
import { overlapM } from './gownSurfaces.ts';

/** How far gown and gloves are on, for whoever draws it; parts that are as before are the very same. */
export function gownPicture({ dress, scenario }: Scene, { slots, upper }: Surfaces, gown: Gown | null, before: GownPicture | null): GownPicture | null {
  if (!gown || !dress || !slots.gown) return null;
  const armOf = ({ inM, glove, drawnM, advanceM }: ArmDress): ArmDressPicture => ({
    inM, toCuffM: scenario.gown.sleeveM - inM, glove, overlapM: glove === 'over' || glove === 'on' ? overlapM({ drawnM, advanceM }, scenario.gown.gloveLengthM) : 0, advanceM,
  });
  const [right, left] = SIDES.map((side: Side) => keptFields(armOf(dress.arms[side]), before?.arms[side])) as [ArmDressPicture, ArmDressPicture];
  const { table, tableSide, hem, person } = slots.gown;
  const surfaces = keptFields({ clothes: gown.clothes, table: upper[table]!, tableSide: upper[tableSide]!, hem: upper[hem]!, person: upper[person]! }, before?.surfaces);
  return keptFields({ arms: keptFields({ right, left }, before?.arms), tied: dress.tied, personX: dress.personX, fromSide: fromSide(gown.inDepth), surfaces }, before ?? undefined);
}

function fromSide(inDepth: GownInDepth): GownFromSide | null {
  const cloth = SIDES.flatMap((side) => {
    const [edge, sleeve] = [inDepth.lineOf(side, 'edge'), inDepth.lineOf(side, 'sleeve')];
    return edge && sleeve ? [{ side, edge, sleeve }] : [];
  });
  return cloth.length > 0 ? { cloth, nearest: inDepth.nearest } : null;
}
