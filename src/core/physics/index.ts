export { World } from './world.ts';
export type { WorldOptions } from './settings.ts';
export type {
  BodyKind, BodySpec, ContactView, GlueOptions, PeelEvent, ShapeSpec, SlipEvent, StrandSpec, WeldOptions, WorldSnapshot,
} from './types.ts';
