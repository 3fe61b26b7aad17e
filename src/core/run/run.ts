import { assert } from '../base/assert.ts';
import { StateHash } from '../base/hash.ts';
import type { Side } from '../base/side.ts';
import type { Command, RequestId } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import type { Fact } from '../ledger/fact.ts';
import { Ledger } from '../ledger/Ledger.ts';
import type { LedgerSnapshot } from '../ledger/ledgerSnapshot.ts';
import { rulesInForce } from '../ledger/rules/ruleBook.ts';
import { holdsAmong, requestAmong } from '../procedure/nextAct.ts';
import type { NextHold } from '../procedure/nextHold.ts';
import type { Progress } from '../procedure/observation.ts';
import { Procedure } from '../procedure/Procedure.ts';
import type { RoomPicture, SurfaceMark } from '../room/picture.ts';
import { Room } from '../room/room.ts';
import type { SettledState } from '../room/settle.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { RemedyStatus, RunContract, RunSnapshot, StepOutcome, TouchLine } from './contract.ts';
import type { ChallengeReport, CueReport, RemedyReport, RunResult } from './result.ts';
import { handlingOf } from './handlingOf.ts';
import { SpeakingUp } from './SpeakingUp.ts';
import { touchLines, heldWords } from './words.ts';

/** One attempt at a scenario. The only owner of the clock: nothing in the simulation moves but by `step`. */
export class Run implements RunContract {
  readonly room: Room;
  readonly ledger: Ledger;
  /** The part of the touch log from before the first step: every surface that is in the room. */
  readonly openingFacts: readonly Fact[];
  private readonly procedure: Procedure;
  private readonly speaking: SpeakingUp;
  private cueReports: CueReport[] = [];
  private remedyReports: RemedyReport[] = [];
  private remedyStart = 0;
  private count = 0;
  /** How surfaces are shown, until a fact changes it. */
  private marks: ReadonlyMap<string, SurfaceMark> | null = null;
  private ended = false;

  /**
   * Builds the scene and lets it settle, or begins from where it has settled before. `seed` defaults to the scenario's.
   * @param settled what `settle` gave for this scenario, whatever its coaching
   */
  constructor(
    readonly scenario: Scenario,
    readonly seed: number = scenario.seed,
    settled?: SettledState,
  ) {
    this.room = new Room(scenario, seed, settled);
    this.ledger = new Ledger(rulesInForce(scenario));
    this.procedure = new Procedure(scenario);
    this.speaking = new SpeakingUp(this.room, seed);
    this.openingFacts = this.room.openingFacts();
    for (const fact of this.openingFacts) this.take(fact);
  }

  get stepCount(): number {
    return this.count;
  }

  get finished(): boolean {
    return this.ended;
  }

  get breaks(): readonly Break[] {
    return this.ledger.breaks;
  }

  get progress(): Progress {
    return this.procedure.progress;
  }

  get nextHolds(): readonly NextHold[] {
    return holdsAmong(this.procedure.nextActs);
  }

  get nextRequest(): RequestId | null {
    return requestAmong(this.procedure.nextActs);
  }

  get cues(): readonly CueReport[] {
    return this.cueReports;
  }

  get challenges(): readonly ChallengeReport[] {
    return this.speaking.challenges;
  }

  get remedy(): RemedyStatus | null {
    return this.room.remedies.status(this.room.hands, this.room.happenings.humpX);
  }

  /** Does one step of 1/120 s with the commands that were given for it. */
  step(commands: readonly Command[]): StepOutcome {
    assert(!this.ended, 'a finished run does not go on');
    const step = this.count;
    const known = this.ledger.breaks.length;
    const remedyBefore = this.room.remedies.active;
    const outcome = this.room.step(step, commands);
    for (const fact of outcome.facts) this.take(fact);
    this.procedure.observe(outcome.observation);
    const spoken = this.speaking.step(step, this.ledger.breaks, known, commands);
    const cue = this.reportCues(step, [...outcome.cues, ...spoken]);
    if (!remedyBefore && this.room.remedies.active) this.remedyStart = step;
    this.count++;
    if (commands.some(({ type }) => type === 'run.end')) this.ended = true;
    return { step, facts: outcome.facts, newBreaks: this.ledger.breaks.slice(known), cue, finished: this.ended };
  }

  picture(): RoomPicture {
    this.marks ??= this.ledger.marks();
    return this.room.picture(this.count, this.marks);
  }

  touchLines(): readonly TouchLine[] {
    return touchLines(this.room, this.ledger);
  }

  heldWords(side: Side): { readonly what: string; readonly state: string; readonly broken: boolean } {
    return heldWords(this.room, this.ledger, side);
  }

  result(): RunResult {
    const words: Record<string, string> = {};
    for (const known of this.ledger.breaks) {
      for (const { surface } of known.spread) words[surface] = this.room.surfaces.words(surface);
      for (const id of [known.surface, known.against]) if (id) words[id] = this.room.surfaces.words(id);
    }
    return {
      steps: this.count,
      breaks: this.ledger.breaks,
      words,
      notices: this.ledger.notices.map(({ step, breaks }) => ({ step, breaks })),
      remedies: this.remedyReports,
      cues: this.cueReports,
      challenges: this.speaking.challenges,
      progress: this.procedure.progress,
      handling: handlingOf(this.room),
    };
  }

  hash(): string {
    const hash = new StateHash();
    hash.addInt(this.count);
    this.room.hashInto(hash);
    this.ledger.hashInto(hash);
    this.procedure.hashInto(hash);
    this.speaking.hashInto(hash);
    return hash.digest();
  }

  /** Everything that is needed to go on bit for bit, in a run of the same scenario and seed. */
  snapshot(): RunSnapshot {
    return {
      step: this.count,
      parts: {
        room: this.room.save(), ledger: this.ledger.snapshot(), procedure: this.procedure.snapshot(),
        speaking: this.speaking.save(), cues: [...this.cueReports], remedies: [...this.remedyReports], remedyStart: this.remedyStart, ended: this.ended,
      },
    };
  }

  restore(snapshot: RunSnapshot): void {
    const { parts } = snapshot;
    this.count = snapshot.step;
    this.room.restore(parts['room']);
    this.ledger.restore(parts['ledger'] as LedgerSnapshot);
    this.marks = null;
    this.procedure.restore(parts['procedure']);
    this.speaking.restore(parts['speaking']);
    this.cueReports = [...(parts['cues'] as CueReport[])];
    this.remedyReports = [...(parts['remedies'] as RemedyReport[])];
    this.remedyStart = parts['remedyStart'] as number;
    this.ended = parts['ended'] as boolean;
  }

  private take(fact: Fact): void {
    this.ledger.apply(fact);
    this.marks = null;
    if (fact.kind === 'remedied') this.remedyReports.push({ remedy: fact.remedy, startStep: this.remedyStart, endStep: fact.step, things: fact.things });
  }

  private reportCues(step: number, cues: readonly { kind: string; words: string }[]): CueReport | null {
    for (const { kind, words } of cues) this.cueReports.push({ step, kind, words });
    return cues.length > 0 ? this.cueReports[this.cueReports.length - cues.length]! : null;
  }
}
