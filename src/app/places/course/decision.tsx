import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { type WeekNow, weekUntil } from '#core/cycle/week-now.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { type CheckInDraft, scoresOf } from './check-in-draft.ts';
import { openCorrection } from './correction-draft.ts';
import { say } from '../../views/say.ts';
import { chanceWords, courseWhy, VERDICTS, moveWords } from './course-words.ts';

type Decided = DataOf<'check-in-closed'>['decision'];

const WORDS: Readonly<Record<Decided, string>> = {
  hold: 'Hold: change nothing this week.',
  correct: 'A correction is due.',
  'more evidence': 'Hold, and log a little more before deciding.',
};

interface ProposedProps {
  readonly now: CourseNow;
  readonly week: WeekNow;
}

/** The correction that goes with the proposal, if it is one. */
function correctionOf({ now, week }: ProposedProps) {
  return week.proposal.decision === 'correct' ? now.answer.corrections[0] : undefined;
}

/** What is proposed, and why. */
export function Proposed(props: ProposedProps): JSX.Element {
  const { now, week } = props;
  const correction = correctionOf(props);
  return (
    <Section title="4. Proposal">
      <div class="stack">
        <p>
          <strong>{WORDS[week.proposal.decision]}</strong>
        </p>
        {week.proposal.why.map((sentence) => (
          <p key={sentence}>{say(sentence)}</p>
        ))}
        <p>
          {`${VERDICTS[now.answer.verdict].title}: the chance to meet the target stands at ${chanceWords(now.answer.probability)}.`}
        </p>
        {correction && (
          <p>
            {`The smallest that helps: ${moveWords(correction.change)}; the chance becomes ${chanceWords(correction.probabilityAfter)}.`}
          </p>
        )}
        <WhyButton why={() => courseWhy(now, 'Why this proposal')}>Why this proposal?</WhyButton>
      </div>
    </Section>
  );
}

interface CloseProps extends ProposedProps {
  readonly typed: CheckInDraft;
  readonly draftKey: string;
  readonly problems: Signal<readonly Problem[]>;
}

/** The closing of the week: as proposed, or held all the same. */
export function CloseWeek(props: CloseProps): JSX.Element {
  const corrects = correctionOf(props) !== undefined;
  const decision = corrects ? 'correct' : held(props.week.proposal.decision);
  return (
    <ActionBar>
      {corrects && (
        <Button records wide onPress={() => void close(props, 'hold')}>
          Close the week and hold
        </Button>
      )}
      <Button kind="next" records wide onPress={() => void close(props, decision)}>
        {corrects ? 'Close and look at the correction' : 'Close the week'}
      </Button>
    </ActionBar>
  );
}

/** A correction that is due but has nothing to offer is a week held. */
function held(decision: Decided): Decided {
  return decision === 'correct' ? 'hold' : decision;
}

async function close(props: CloseProps, decision: Decided): Promise<void> {
  const { now, week, typed, draftKey, problems } = props;
  const note = typed.note.trim();
  const saved = await record(
    'check-in-closed',
    {
      week: weekUntil(today.value),
      answers: scoresOf(typed),
      decision,
      evidence: [...week.evidence.words, ...week.proposal.why].map((words) => words.slice(0, 600)),
      ...(note !== '' && { note }),
    },
    { says: 'The week is closed' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(draftKey);
  const chosen = decision === 'correct' ? now.answer.corrections[0] : undefined;
  if (!chosen) {
    go(pathTo('course'));
    return;
  }
  openCorrection({
    ...chosen.change,
    before: now.answer.probability,
    after: chosen.probabilityAfter,
    why: [...week.proposal.why, ...chosen.why],
  });
  go(pathTo('course', 'correct'));
}
