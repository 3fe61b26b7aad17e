import { z } from 'zod';
import { failure, success, type Result } from '../base/result.ts';
import { SIDES, type Side } from '../base/side.ts';
import { commandSchema, type Command } from '../commands/command.ts';
import type { StepCommands } from './recording.ts';
import { decodeIntegers, decodeNaturals, encodeInteger, encodeNatural } from './varint.ts';

/**
 * Commands as a file holds them. Moves and turns of the hands, up to 60 a second each, are differences to the one before in a text
 * per hand and coordinate (millimetres, degrees; see varint.ts), which packs well; the few other commands stay as they are.
 */
export const packedCommandsSchema = z.strictObject({
  /** One letter per command in the order of play: R and L move that hand, r and l turn it, o takes the next of `others`. */
  kinds: z.string().regex(/^[RLrlo]*$/),
  /** Steps since the command before, one number per command. */
  steps: z.string(),
  rightX: z.string(),
  rightY: z.string(),
  rightTurn: z.string(),
  leftX: z.string(),
  leftY: z.string(),
  leftTurn: z.string(),
  others: z.array(commandSchema),
});

export type PackedCommands = z.output<typeof packedCommandsSchema>;
type Track = 'rightX' | 'rightY' | 'rightTurn' | 'leftX' | 'leftY' | 'leftTurn';
const TRACKS: readonly Track[] = ['rightX', 'rightY', 'rightTurn', 'leftX', 'leftY', 'leftTurn'];

const MOVE: Readonly<Record<Side, string>> = { right: 'R', left: 'L' };
const TURN: Readonly<Record<Side, string>> = { right: 'r', left: 'l' };

/** Writes numbers of each track as differences to the number before. */
class TrackWriter {
  readonly texts: Record<Track, string> = { rightX: '', rightY: '', rightTurn: '', leftX: '', leftY: '', leftTurn: '' };
  private readonly last: Record<Track, number> = { rightX: 0, rightY: 0, rightTurn: 0, leftX: 0, leftY: 0, leftTurn: 0 };

  add(track: Track, value: number): void {
    this.texts[track] += encodeInteger(value - this.last[track]);
    this.last[track] = value;
  }
}

/** Packs commands in rising order of steps. */
export function packCommands(recorded: readonly StepCommands[]): PackedCommands {
  const tracks = new TrackWriter();
  const others: Command[] = [];
  let kinds = '';
  let steps = '';
  let lastStep = 0;
  for (const { step, commands } of recorded) {
    for (const command of commands) {
      steps += encodeNatural(step - lastStep);
      lastStep = step;
      if (command.type === 'hand.move') {
        kinds += MOVE[command.hand];
        tracks.add(`${command.hand}X`, command.xMm);
        tracks.add(`${command.hand}Y`, command.yMm);
      } else if (command.type === 'hand.turn') {
        kinds += TURN[command.hand];
        tracks.add(`${command.hand}Turn`, command.angleDeg);
      } else {
        kinds += 'o';
        others.push(command);
      }
    }
  }
  return { kinds, steps, ...tracks.texts, others };
}

/** Where packed commands contradict themselves. */
export interface UnpackFault {
  readonly path: string;
  readonly fault: string;
}

/** Reads the numbers of each track one after the other. */
class TrackReader {
  private readonly values: Record<Track, readonly number[]>;
  private readonly at: Record<Track, number> = { rightX: 0, rightY: 0, rightTurn: 0, leftX: 0, leftY: 0, leftTurn: 0 };
  private readonly last: Record<Track, number> = { rightX: 0, rightY: 0, rightTurn: 0, leftX: 0, leftY: 0, leftTurn: 0 };

  constructor(values: Record<Track, readonly number[]>) {
    this.values = values;
  }

  /** The next value of a track; NaN when it has no more, which no command allows. */
  next(track: Track): number {
    this.last[track] += this.values[track][this.at[track]++] ?? Number.NaN;
    return this.last[track];
  }

  /** First track with more numbers than were read. */
  unread(): Track | undefined {
    return TRACKS.find((track) => this.at[track] < this.values[track].length);
  }
}

/** The commands of a recording of `steps` steps, each checked against the list of commands. */
export function unpackCommands(packed: PackedCommands, steps: number): Result<StepCommands[], UnpackFault> {
  const gaps = decodeNaturals(packed.steps);
  if (gaps?.length !== packed.kinds.length) return failure({ path: 'commands.steps', fault: 'does not hold one number per command' });
  const values: Partial<Record<Track, readonly number[]>> = {};
  for (const track of TRACKS) {
    const numbers = decodeIntegers(packed[track]);
    if (!numbers) return failure({ path: `commands.${track}`, fault: 'is not a row of packed numbers' });
    values[track] = numbers;
  }
  return assemble(packed, steps, gaps, new TrackReader(values as Record<Track, readonly number[]>));
}

function assemble(packed: PackedCommands, steps: number, gaps: readonly number[], tracks: TrackReader): Result<StepCommands[], UnpackFault> {
  const recorded: { step: number; commands: Command[] }[] = [];
  let step = 0;
  let othersRead = 0;
  for (let k = 0; k < gaps.length; k++) {
    step += gaps[k]!;
    if (step >= steps) return failure({ path: 'commands.steps', fault: `names step ${step} of a run of ${steps} steps` });
    const kind = packed.kinds[k]!;
    const read = commandSchema.safeParse(kind === 'o' ? packed.others[othersRead++] : handCommand(kind, tracks));
    if (!read.success) return failure({ path: `commands, number ${k + 1}`, fault: 'is not something a person can do' });
    const last = recorded.at(-1);
    if (last?.step === step) last.commands.push(read.data);
    else recorded.push({ step, commands: [read.data] });
  }
  const unread = tracks.unread() ?? (othersRead < packed.others.length ? 'others' : undefined);
  return unread ? failure({ path: `commands.${unread}`, fault: 'holds more than the commands use' }) : success(recorded);
}

function handCommand(kind: string, tracks: TrackReader): unknown {
  const hand = SIDES.find((side) => MOVE[side] === kind || TURN[side] === kind)!;
  return MOVE[hand] === kind
    ? { type: 'hand.move', hand, xMm: tracks.next(`${hand}X`), yMm: tracks.next(`${hand}Y`) }
    : { type: 'hand.turn', hand, angleDeg: tracks.next(`${hand}Turn`) };
}
