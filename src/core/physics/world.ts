import { assert } from '../base/assert.ts';
import type { StateHash } from '../base/hash.ts';
import { forceBetween, visitContacts } from './contactViews.ts';
import { glueNode, holdNode, holdNodeHere, letGo } from './holds.ts';
import { Settings, type WorldOptions } from './settings.ts';
import { wakeAround, wakeBody, wakeStrand } from './sleep.ts';
import { restoreSnapshot, takeSnapshot, type WorldSnapshot } from './snapshot.ts';
import { SolverState } from './solverState.ts';
import { stepWorld } from './substep.ts';
import type { BodySpec, ContactView, GlueOptions, PeelEvent, SlipEvent, StrandSpec, WeldOptions } from './types.ts';

/**
 * Strands and rigid bodies in one sub-step loop, coupled both ways, with Coulomb friction. SI units; one step is 1/120 s.
 * Parts are added first, then `finalize` fixes their number; ids are indices in order of adding.
 */
export class World {
  private readonly settings: Settings;
  private readonly bodySpecs: BodySpec[] = [];
  private readonly strandSpecs: StrandSpec[] = [];
  private built: SolverState | null = null;

  constructor(options: WorldOptions = {}) {
    this.settings = new Settings(options);
  }

  addBody(spec: BodySpec): number {
    assert(this.built === null, 'bodies are added before finalize');
    return this.bodySpecs.push(spec) - 1;
  }

  addStrand(spec: StrandSpec): number {
    assert(this.built === null, 'strands are added before finalize');
    return this.strandSpecs.push(spec) - 1;
  }

  /** Ends the building; everything below needs it. */
  finalize(): void {
    assert(this.built === null, 'finalize is called once');
    this.built = new SolverState(this.settings, this.bodySpecs, this.strandSpecs);
  }

  /** The solver's own state, for tools that measure it. */
  get state(): SolverState {
    assert(this.built !== null, 'call finalize first');
    return this.built;
  }

  /** Advances by 1/120 s. */
  step(): void {
    stepWorld(this.state);
  }

  get stepCount(): number {
    return this.state.stepCount;
  }

  /** Sub-steps of the last step. */
  get substeps(): number {
    return this.state.substeps;
  }

  /** Global index of a strand's first node. */
  strandStart(strand: number): number {
    return this.state.strands[strand]!.start;
  }

  strandSize(strand: number): number {
    return this.state.strands[strand]!.size;
  }

  /** Tension (N) of the first and last link of a strand in the last sub-step. */
  endTensions(strand: number): { readonly first: number; readonly last: number } {
    const { tensionAtStart, tensionAtEnd } = this.state.strands[strand]!;
    return { first: tensionAtStart, last: tensionAtEnd };
  }

  /** Node positions (m), by global node index. */
  get x(): Float64Array {
    return this.state.nodes.x;
  }

  get y(): Float64Array {
    return this.state.nodes.y;
  }

  /** Body poses (m, unit pair) and velocities (m/s, rad/s), by body id. */
  get bodyX(): Float64Array {
    return this.state.bodies.x;
  }

  get bodyY(): Float64Array {
    return this.state.bodies.y;
  }

  get bodyC(): Float64Array {
    return this.state.bodies.c;
  }

  get bodyS(): Float64Array {
    return this.state.bodies.s;
  }

  get bodyVx(): Float64Array {
    return this.state.bodies.vx;
  }

  get bodyVy(): Float64Array {
    return this.state.bodies.vy;
  }

  get bodyOmega(): Float64Array {
    return this.state.bodies.omega;
  }

  /** Force (N) and torque (N m) on a dynamic body, held until changed. */
  setBodyForce(body: number, fx: number, fy: number, torque = 0): void {
    const { forceX, forceY, torque: torques } = this.state.bodies;
    forceX[body] = fx;
    forceY[body] = fy;
    torques[body] = torque;
  }

  /** Velocity of a dynamic body (m/s, rad/s). */
  setBodyVelocity(body: number, vx: number, vy: number, omega = 0): void {
    const { bodies } = this.state;
    bodies.vx[body] = vx;
    bodies.vy[body] = vy;
    bodies.omega[body] = omega;
    wakeBody(this.state, body);
  }

  /** Pose that a driven body reaches at the end of the next step; its surface moves there evenly and carries what lies on it. */
  driveBody(body: number, x: number, y: number, c: number, s: number): void {
    const { bodies } = this.state;
    assert(bodies.isDriven(body), `body ${body} is not driven`);
    bodies.targetX[body] = x;
    bodies.targetY[body] = y;
    bodies.targetC[body] = c;
    bodies.targetS[body] = s;
  }

  /** Puts a body somewhere at once, at rest; nothing is swept on the way. */
  teleportBody(body: number, x: number, y: number, c: number, s: number): void {
    const { bodies, shapes } = this.state;
    wakeAround(this.state, body);
    bodies.setPose(body, x, y, c, s);
    bodies.targetX[body] = x;
    bodies.targetY[body] = y;
    bodies.targetC[body] = bodies.c[body];
    bodies.targetS[body] = bodies.s[body];
    bodies.stop(body);
    shapes.poseBody(bodies, body);
    wakeAround(this.state, body);
    wakeBody(this.state, body);
    this.state.stale = true;
  }

  /** A disabled body takes no part: it does not move, touch or hold. */
  setBodyEnabled(body: number, on: boolean): void {
    const { bodies, nodes } = this.state;
    if ((bodies.enabled[body] === 1) === on) return;
    wakeAround(this.state, body);
    bodies.enabled[body] = on ? 1 : 0;
    bodies.stop(body);
    if (bodies.isDynamic(body)) bodies.awake[body] = on ? 1 : 0;
    if (!on) {
      for (const node of this.state.held) if (nodes.holder[node] === body) letGo(this.state, node);
      this.state.welds = this.state.welds.filter((weld) => weld.a !== body && weld.b !== body);
      if (bodies.isDynamic(body)) bodies.awake[body] = 0;
    }
    this.state.stale = true;
  }

  /** Fixes a node in the world where it is. */
  pinNode(node: number): void {
    const { nodes } = this.state;
    nodes.inverseMass[node] = 0;
    nodes.stop(node);
    wakeStrand(this.state, nodes.strand[node]);
  }

  unpinNode(node: number): void {
    const { nodes } = this.state;
    nodes.inverseMass[node] = nodes.freeInverseMass[node];
    nodes.pinMoves[node] = 0;
    wakeStrand(this.state, nodes.strand[node]);
  }

  /** Moves a pinned node evenly to (x, y) over the next step. */
  drivePin(node: number, x: number, y: number): void {
    const { nodes } = this.state;
    assert(nodes.inverseMass[node] === 0, `node ${node} is not pinned`);
    if (nodes.x[node] === x && nodes.y[node] === y) return;
    nodes.pinX[node] = x;
    nodes.pinY[node] = y;
    nodes.pinMoves[node] = 1;
    wakeStrand(this.state, nodes.strand[node]);
  }

  /** Puts every node somewhere at once, at rest (arrays of all nodes, m); pair memories of where they were are forgotten. */
  placeNodes(x: Float64Array, y: Float64Array): void {
    const { nodes, strands } = this.state;
    nodes.x.set(x);
    nodes.y.set(y);
    for (let i = 0; i < nodes.x.length; i++) nodes.stop(i);
    this.state.pairs.count = 0;
    for (let q = 0; q < strands.length; q++) wakeStrand(this.state, q);
    this.state.stale = true;
  }

  /** Puts the nodes of one strand somewhere at once, at rest; the memory of pairs is forgotten. */
  placeStrand(strand: number, points: readonly (readonly [number, number])[]): void {
    const { nodes, strands } = this.state;
    const { start, size } = strands[strand]!;
    assert(points.length === size, `strand ${strand} has ${size} nodes`);
    points.forEach(([x, y], k) => {
      nodes.x[start + k] = x;
      nodes.y[start + k] = y;
      nodes.stop(start + k);
    });
    this.state.pairs.count = 0;
    wakeStrand(this.state, strand);
    this.state.stale = true;
  }

  /** Changes the rest length of every link of a strand (m): it pays out or is gathered, so change it gradually. */
  setLinkLength(strand: number, linkM: number): void {
    const { nodes, strands } = this.state;
    const { start, end } = strands[strand]!;
    if (nodes.rest[start] === linkM) return;
    nodes.rest.fill(linkM, start, end);
    wakeStrand(this.state, strand);
  }

  /** Force (N) on a node, held until changed. */
  setNodeForce(node: number, fx: number, fy: number): void {
    const { nodes, strands } = this.state;
    if (nodes.forceX[node] === fx && nodes.forceY[node] === fy) return;
    nodes.forceX[node] = fx;
    nodes.forceY[node] = fy;
    strands[nodes.strand[node]]!.hasForces = true;
    wakeStrand(this.state, nodes.strand[node]);
  }

  /** Fixes a node to the point (lx, ly) of a body's frame for good. */
  attachNode(node: number, body: number, lx: number, ly: number): void {
    holdNode(this.state, node, body, lx, ly, Infinity);
  }

  detachNode(node: number): void {
    letGo(this.state, node);
  }

  /** A hand takes hold of a node where it is; the grip lets go above `maxForceN`. */
  gripNode(body: number, node: number, maxForceN: number): void {
    holdNodeHere(this.state, node, body, maxForceN);
  }

  /** Changes where in its holder's frame a held node is; it goes there in the next sub-step, so change it gradually. */
  moveHold(node: number, lx: number, ly: number): void {
    const { nodes } = this.state;
    assert(nodes.holder[node]! >= 0, `node ${node} is held`);
    if (nodes.localX[node] === lx && nodes.localY[node] === ly) return;
    nodes.localX[node] = lx;
    nodes.localY[node] = ly;
    wakeStrand(this.state, nodes.strand[node]);
  }

  releaseNode(node: number): void {
    letGo(this.state, node);
  }

  /** Body that holds a node (grip, attachment or glue), or −1. */
  holderOf(node: number): number {
    return this.state.nodes.holder[node];
  }

  /** Smoothed force (N) that the hold on a node carries. */
  holdForce(node: number): number {
    return this.state.nodes.holdForce[node];
  }

  /** Body a holds body b rigidly. Returns the joint's id. */
  weld(a: number, b: number, options: WeldOptions = {}): number {
    const { bodies } = this.state;
    const dx = bodies.x[b] - bodies.x[a];
    const dy = bodies.y[b] - bodies.y[a];
    const c = bodies.c[a];
    const s = bodies.s[a];
    const pose = options.relative ?? { x: c * dx + s * dy, y: c * dy - s * dx, c: c * bodies.c[b] + s * bodies.s[b], s: c * bodies.s[b] - s * bodies.c[b] };
    const id = this.state.nextJoint++;
    this.state.welds.push({ id, a, b, ...pose, maxForceN: options.maxForceN ?? Infinity, force: 0 });
    this.wakePair(a, b);
    return id;
  }

  /** Changes the pose of b in a's frame; the hold then pulls b there, so change it gradually. */
  setWeldPose(joint: number, x: number, y: number, c: number, s: number): void {
    const weld = this.state.welds.find((one) => one.id === joint);
    assert(weld !== undefined, `no joint ${joint}`);
    weld.x = x;
    weld.y = y;
    weld.c = c;
    weld.s = s;
    this.wakePair(weld.a, weld.b);
  }

  /** Lets go; a joint that has slipped already is no error. */
  unweld(joint: number): void {
    const weld = this.state.welds.find((one) => one.id === joint);
    if (weld === undefined) return;
    this.state.welds = this.state.welds.filter((one) => one !== weld);
    this.wakePair(weld.a, weld.b);
  }

  /** Lets go of every joint between two bodies. */
  unweldBodies(a: number, b: number): void {
    for (const { id } of this.state.welds.filter((one) => one.a === a && one.b === b)) this.unweld(id);
  }

  /** Smoothed force (N) that a joint carries; 0 once it has let go. */
  weldForce(joint: number): number {
    return this.state.welds.find((one) => one.id === joint)?.force ?? 0;
  }

  private wakePair(a: number, b: number): void {
    this.state.stale = true;
    wakeBody(this.state, a);
    wakeBody(this.state, b);
  }

  /** Sticks a node where it is to a body's skin. It peels off when the pull exceeds F = peelN / (1 − cos θ), θ between strand and skin. */
  glueNode(node: number, body: number, peelN: number, options: GlueOptions = {}): void {
    glueNode(this.state, node, body, { peelN, shearN: options.shearN ?? Infinity });
  }

  isGlued(node: number): boolean {
    return this.state.glue.has(node);
  }

  /** Holds that let go in the last step because they carried too much. */
  get slipped(): readonly SlipEvent[] {
    return this.state.slipped;
  }

  /** Glued nodes that came off in the last step. */
  get peeled(): readonly PeelEvent[] {
    return this.state.peeled;
  }

  /** Sum of the normal forces (N) between two bodies in the last sub-step. */
  contactForce(bodyA: number, bodyB: number): number {
    return forceBetween(this.state, bodyA, bodyB);
  }

  /** Visits the loaded contacts of the last sub-step. */
  forEachContact(visit: (contact: ContactView) => void): void {
    visitContacts(this.state, visit);
  }

  /** Whether every strand and body is at rest for good, until something wakes it. */
  isAsleep(): boolean {
    const { bodies, strands } = this.state;
    return !bodies.awake.includes(1) && strands.every((strand) => !strand.awake);
  }

  wakeBody(body: number): void {
    wakeBody(this.state, body);
  }

  wakeStrand(strand: number): void {
    wakeStrand(this.state, strand);
  }

  /** Everything needed to continue bit for bit, also in a freshly built world of the same parts. */
  snapshot(): WorldSnapshot {
    return takeSnapshot(this.state);
  }

  restore(snapshot: WorldSnapshot): void {
    restoreSnapshot(this.state, snapshot);
  }

  /** Mixes positions and velocities of everything into a hash. */
  hashInto(hash: StateHash): void {
    const { nodes, bodies } = this.state;
    for (const column of [nodes.x, nodes.y, nodes.prevX, nodes.prevY]) hash.addNumbers(column);
    for (const column of [bodies.x, bodies.y, bodies.c, bodies.s, bodies.vx, bodies.vy, bodies.omega]) hash.addNumbers(column);
    hash.addInt(this.stepCount);
  }
}
