import type { WorldSnapshot } from './snapshot.ts';

export type { WorldSnapshot };

/** Rounded convex core in the body's frame (m), counter-clockwise: 1 vertex is a circle, 2 a capsule, 3 or more a polygon; `radius` (m) is added all round. */
export interface ShapeSpec {
  readonly verts: readonly (readonly [number, number])[];
  readonly radius: number;
}

/** `static` never moves, `driven` follows poses given from outside with infinite mass, `dynamic` is moved by forces. */
export type BodyKind = 'static' | 'driven' | 'dynamic';

/** A rigid body. The origin of its frame is its centre of mass; the pose is (x, y) in m and the unit pair (c, s) = (cos, sin). */
export interface BodySpec {
  readonly kind: BodyKind;
  readonly x: number;
  readonly y: number;
  readonly c?: number;
  readonly s?: number;
  /** Mass in kg; needed for dynamic bodies only. It is spread evenly over the area of the shapes. */
  readonly massKg?: number;
  readonly shapes: readonly ShapeSpec[];
  /** Coulomb coefficient; a pair uses the smaller of its two. */
  readonly friction: number;
  readonly gravityScale?: number;
  readonly lockRotation?: boolean;
  /** Bits of the groups this body belongs to (default 1). */
  readonly collides?: number;
  /** Bits of the groups it touches (default all). Two things touch only if each admits the other. */
  readonly collidesWith?: number;
}

/** A cord, or the section of a sheet: a chain of nodes with links that hardly stretch. */
export interface StrandSpec {
  /** Node positions in m, at the spacing of the links. */
  readonly points: readonly (readonly [number, number])[];
  /** Mass per length in kg/m. */
  readonly massPerM: number;
  /** Half thickness in m against moving bodies and other strands. */
  readonly radius: number;
  /** Half thickness in m against static and driven bodies (leaves room for a sheet under a cord); default `radius`. */
  readonly radiusOnStatic?: number;
  /** Tensile stiffness EA in N. */
  readonly stiffnessN: number;
  /** Bending stiffness EI in N m². */
  readonly bendingNm2: number;
  readonly friction: number;
  /** Coulomb coefficients that replace the pair's smaller value, by body id. */
  readonly frictionByBody?: Readonly<Record<number, number>>;
  /** Rate in 1/s at which air slows a free node. */
  readonly airDragPerS: number;
  /** Rest length of a link in m; default is the distance of the first two points. */
  readonly linkM?: number;
  readonly selfCollide?: boolean;
  readonly collides?: number;
  readonly collidesWith?: number;
}

export interface WeldOptions {
  /** The hold lets go when it has to carry more than this (N); default never. */
  readonly maxForceN?: number;
  /** Pose of b in a's frame to hold; default the present one. */
  readonly relative?: { readonly x: number; readonly y: number; readonly c: number; readonly s: number };
}

export interface GlueOptions {
  /** Pull along the skin (N) above which the glued end shears off; default never. */
  readonly shearN?: number;
}

/** A hold that let go because it carried more than its limit. */
export type SlipEvent =
  | { readonly kind: 'node'; readonly node: number; readonly body: number; readonly forceN: number }
  | { readonly kind: 'weld'; readonly joint: number; readonly a: number; readonly b: number; readonly forceN: number };

/** A glued node that came off. */
export interface PeelEvent {
  readonly node: number;
  readonly body: number;
}

/** One contact of the last sub-step. −1 stands for "not part of it"; the normal points from `otherBody`/`otherNode` towards `node`/`body`. */
export interface ContactView {
  readonly kind: 'node-body' | 'link-body' | 'body-body' | 'strand-strand';
  readonly node: number;
  readonly body: number;
  readonly shape: number;
  /** First node of the touched link, in contacts between strands. */
  readonly otherNode: number;
  readonly otherBody: number;
  readonly otherShape: number;
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
  readonly normalForceN: number;
}
