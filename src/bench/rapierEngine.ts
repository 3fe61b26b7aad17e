import RAPIER from '@dimforge/rapier2d-compat';
import type { ShapeSpec } from '../core/physics/index.ts';
import type { SceneBody, SceneEngine, SceneStrand } from './sceneEngine.ts';

const RIGID_GROUP = 2;
const groups = (member: number, meets: number): number => ((member << 16) | meets) >>> 0;
const groupOfStrand = (strand: number): number => 4 << strand;

interface Chain {
  readonly links: RAPIER.RigidBody[];
  readonly linkM: number;
}

/** Loads the engine; call once before building. */
export const loadRapier = (): Promise<void> => RAPIER.init();

/** The bench scene on a general rigid-body engine: strands are jointed capsules, 8 solver iterations. */
export class RapierEngine implements SceneEngine {
  private readonly world: RAPIER.World;
  private readonly bodies: RAPIER.RigidBody[] = [];
  private readonly chains: Chain[] = [];
  private readonly grips = new Map<number, RAPIER.ImpulseJoint>();

  constructor() {
    this.world = new RAPIER.World({ x: 0, y: -9.81 });
    this.world.timestep = 1 / 120;
    this.world.numSolverIterations = 8;
  }

  addStatic(shape: ShapeSpec, x: number, y: number, friction: number): number {
    const body = this.world.createRigidBody(RAPIER.RigidBodyDesc.fixed().setTranslation(x, y));
    return this.addCollider(body, shape, friction, 1);
  }

  addBody(spec: SceneBody): number {
    const desc = RAPIER.RigidBodyDesc.dynamic().setTranslation(spec.x, spec.y).setCanSleep(false).setGravityScale(spec.floats ? 0 : 1);
    if (spec.lockRotation) desc.lockRotations();
    return this.addCollider(this.world.createRigidBody(desc), spec.shape, spec.friction, RIGID_GROUP, spec.massKg);
  }

  private addCollider(body: RAPIER.RigidBody, shape: ShapeSpec, friction: number, group: number, massKg = 0): number {
    const desc = colliderOf(shape).setFriction(friction).setFrictionCombineRule(RAPIER.CoefficientCombineRule.Min).setRestitution(0);
    if (massKg > 0) desc.setMass(massKg);
    this.world.createCollider(desc.setCollisionGroups(groups(group, 0xffff)), body);
    return this.bodies.push(body) - 1;
  }

  addStrand(spec: SceneStrand): number {
    const strand = this.chains.length;
    const links: RAPIER.RigidBody[] = [];
    for (let i = 0; i + 1 < spec.points.length; i++) {
      const link = this.addLink(spec, i, groupOfStrand(strand));
      if (i > 0) this.pin(links[i - 1]!, link, spec.linkM / 2, -spec.linkM / 2, spec.bendingNm2 / spec.linkM);
      links.push(link);
    }
    if (spec.startPinned) {
      const [x, y] = spec.points[0]!;
      const anchor = this.world.createRigidBody(RAPIER.RigidBodyDesc.fixed().setTranslation(x, y));
      this.pin(anchor, links[0]!, 0, -spec.linkM / 2, 0);
    }
    if (spec.endBody) {
      const data = RAPIER.JointData.revolute({ x: spec.linkM / 2, y: 0 }, { x: spec.endBody.x, y: spec.endBody.y });
      this.world.createImpulseJoint(data, links[links.length - 1]!, this.bodies[spec.endBody.body]!, true).setContactsEnabled(false);
    }
    return this.chains.push({ links, linkM: spec.linkM }) - 1;
  }

  private addLink(spec: SceneStrand, i: number, group: number): RAPIER.RigidBody {
    const [ax, ay] = spec.points[i]!;
    const [bx, by] = spec.points[i + 1]!;
    const desc = RAPIER.RigidBodyDesc.dynamic().setTranslation((ax + bx) / 2, (ay + by) / 2).setRotation(Math.atan2(by - ay, bx - ax))
      .setLinearDamping(spec.airDragPerS).setAngularDamping(spec.airDragPerS).setCanSleep(false);
    const link = this.world.createRigidBody(desc);
    const collider = RAPIER.ColliderDesc.capsule(spec.linkM / 2, spec.radius).setRotation(Math.PI / 2).setMass(spec.massPerM * spec.linkM)
      .setFriction(spec.friction).setFrictionCombineRule(RAPIER.CoefficientCombineRule.Min).setRestitution(0).setCollisionGroups(groups(group, 0xffff));
    this.world.createCollider(collider, link);
    return link;
  }

  private pin(a: RAPIER.RigidBody, b: RAPIER.RigidBody, ax: number, bx: number, stiffness: number): void {
    const joint = this.world.createImpulseJoint(RAPIER.JointData.revolute({ x: ax, y: 0 }, { x: bx, y: 0 }), a, b, true) as RAPIER.RevoluteImpulseJoint;
    joint.setContactsEnabled(false);
    if (stiffness === 0) return;
    joint.configureMotorModel(RAPIER.MotorModel.ForceBased);
    joint.configureMotorPosition(0, stiffness, 0.02 * stiffness);
  }

  finalize(): void {}

  step(): void {
    this.world.step();
  }

  nodeCount(strand: number): number {
    return this.chains[strand]!.links.length + 1;
  }

  nodeX(strand: number, index: number): number {
    return this.node(strand, index).x;
  }

  nodeY(strand: number, index: number): number {
    return this.node(strand, index).y;
  }

  private node(strand: number, index: number): { x: number; y: number } {
    const { links, linkM } = this.chains[strand]!;
    const link = links[Math.max(0, index - 1)]!;
    const along = ((index === 0 ? -1 : 1) * linkM) / 2;
    const at = link.translation();
    const angle = link.rotation();
    return { x: at.x + Math.cos(angle) * along, y: at.y + Math.sin(angle) * along };
  }

  bodyPose(body: number): { x: number; y: number; c: number; s: number; vx: number; vy: number } {
    const rigid = this.bodies[body]!;
    const at = rigid.translation();
    const v = rigid.linvel();
    return { x: at.x, y: at.y, c: Math.cos(rigid.rotation()), s: Math.sin(rigid.rotation()), vx: v.x, vy: v.y };
  }

  setBodyForce(body: number, fx: number, fy: number): void {
    this.bodies[body]!.resetForces(true);
    this.bodies[body]!.addForce({ x: fx, y: fy }, true);
  }

  gripNode(hand: number, strand: number, index: number): boolean {
    const { links, linkM } = this.chains[strand]!;
    const k = Math.min(index, links.length - 1);
    const at = this.node(strand, index);
    const palm = this.bodies[hand]!.translation();
    const data = RAPIER.JointData.revolute({ x: at.x - palm.x, y: at.y - palm.y }, { x: ((k === index ? -1 : 1) * linkM) / 2, y: 0 });
    this.hold(hand, data, links[k]!);
    this.bodies[hand]!.collider(0).setCollisionGroups(groups(RIGID_GROUP, 0xffff & ~groupOfStrand(strand)));
    return true;
  }

  private hold(hand: number, data: RAPIER.JointData, held: RAPIER.RigidBody): void {
    const joint = this.world.createImpulseJoint(data, this.bodies[hand]!, held, true);
    joint.setContactsEnabled(false);
    this.grips.set(hand, joint);
  }

  releaseNode(hand: number): void {
    this.releaseBody(hand);
    this.bodies[hand]!.collider(0).setCollisionGroups(groups(RIGID_GROUP, 0xffff));
  }

  gripBody(hand: number, body: number): void {
    const palm = this.bodies[hand]!.translation();
    const held = this.bodies[body]!;
    const at = held.translation();
    this.hold(hand, RAPIER.JointData.fixed({ x: at.x - palm.x, y: at.y - palm.y }, held.rotation(), { x: 0, y: 0 }, 0), held);
  }

  releaseBody(hand: number): void {
    const joint = this.grips.get(hand);
    if (joint) this.world.removeImpulseJoint(joint, true);
    this.grips.delete(hand);
  }
}

function colliderOf(shape: ShapeSpec): RAPIER.ColliderDesc {
  const { verts, radius } = shape;
  if (verts.length === 1) return RAPIER.ColliderDesc.ball(radius);
  if (verts.length > 2) return RAPIER.ColliderDesc.convexHull(Float32Array.from(verts.flat()))!;
  const [[ax, ay], [bx, by]] = verts as [readonly [number, number], readonly [number, number]];
  return RAPIER.ColliderDesc.capsule(Math.hypot(bx - ax, by - ay) / 2, radius).setTranslation((ax + bx) / 2, (ay + by) / 2).setRotation(Math.atan2(by - ay, bx - ax) - Math.PI / 2);
}
