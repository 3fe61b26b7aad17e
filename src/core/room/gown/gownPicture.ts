import { SIDES, type Side } from '../../base/side.ts';
import { keptFields } from '../keeping.ts';
import type { ArmDressPicture, GownPicture } from '../picture.ts';
import type { Scene } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import type { ArmDress } from './dress.ts';
import { overlapM } from './gownSurfaces.ts';

/** How far gown and gloves are on, for whoever draws it; parts that are as before are the very same. */
export function gownPicture({ dress, scenario }: Scene, { slots, upper }: Surfaces, before: GownPicture | null): GownPicture | null {
  if (!dress || !slots.gown) return null;
  const armOf = ({ inM, glove, drawnM, advanceM }: ArmDress): ArmDressPicture => ({
    inM, toCuffM: scenario.gown.sleeveM - inM, glove, overlapM: glove === 'over' || glove === 'on' ? overlapM({ drawnM, advanceM }, scenario.gown.gloveLengthM) : 0, advanceM,
  });
  const [right, left] = SIDES.map((side: Side) => keptFields(armOf(dress.arms[side]), before?.arms[side])) as [ArmDressPicture, ArmDressPicture];
  const { table, tableSide, hem, person } = slots.gown;
  const surfaces = keptFields({ table: upper[table]!, tableSide: upper[tableSide]!, hem: upper[hem]!, person: upper[person]! }, before?.surfaces);
  return keptFields({ arms: keptFields({ right, left }, before?.arms), tied: dress.tied, personX: dress.personX, surfaces }, before ?? undefined);
}
