import { useMemo, useState } from 'preact/hooks';
import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { RuleWords } from '../services.ts';
import { Announcer } from './Announcer.tsx';
import { BreakBadge } from './BreakBadge.tsx';
import { BreakCallOut } from './BreakCallOut.tsx';
import { ChallengeBox } from './ChallengeBox.tsx';
import type { LiveRun } from './LiveRun.ts';
import { isOfChallenge } from './openChallenge.ts';
import type { StagePort } from './stagePort.ts';

const CUE_SHOWN_S = 6;
/** Kind of a cue that is the assistant's words. */
const SPEAKS = 'assistantSpeaks';
const NOTE_SHOWN_S = 3;

interface RunMessagesProps {
  readonly live: LiveRun;
  readonly stage: StagePort | null;
  readonly ruleWords: (rule: string) => RuleWords;
}

/** What the room says while it is played: cues, answers, and breaks where coaching shows them. All of it is announced. */
export function RunMessages({ live, stage, ruleWords }: RunMessagesProps) {
  const [closed, setClosed] = useState(0);
  const newest = live.coaching === 'shown' ? live.newBreak : null;
  const broken = newest && (live.run.breaks.find((candidate) => candidate.number === newest.number) ?? newest);
  const words = useMemo(() => (broken ? live.run.result().words : {}), [broken?.number, broken?.spread.length]);
  const stands = broken !== null && broken.number > closed && broken.remediedStep === null;
  const since = (step: number): number => (live.run.stepCount - step) / STEPS_PER_SECOND;
  const cue = live.cue && since(live.cue.step) < CUE_SHOWN_S && !isOfChallenge(live, live.cue.step) ? live.cue : null;
  const noted = live.note && since(live.note.step) < NOTE_SHOWN_S ? live.note : null;
  return (
    <>
      <div class="cues" role="status">
        {live.keptNotice && <p class="cue cue-note">{live.keptNotice}</p>}
        {cue && <p class="cue">{cue.kind === SPEAKS ? `Assistant: ${cue.words}` : cue.words}</p>}
        {noted && <p class="cue cue-note">{noted.words}</p>}
      </div>
      <ChallengeBox live={live} />
      <div class="unseen" role="status">
        {broken && `Break: ${ruleWords(broken.rule).title}.`}
      </div>
      {stands && <BreakBadge at={stage?.roomToScreen(broken.x, broken.y) ?? null} />}
      {stands && (
        <BreakCallOut
          broken={broken}
          rule={ruleWords(broken.rule)}
          wordsOf={(surface) => words[surface] ?? surface}
          nowStep={live.run.stepCount}
          onClose={() => setClosed(broken.number)}
        />
      )}
      <Announcer live={live} />
    </>
  );
}
