import type { JSX } from 'preact';
import type { CorrectionAnswer } from '#core/course/course-answer.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { dateWords } from '#core/words/dates.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../parts/button.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { openCorrection } from './correction-draft.ts';
import { say } from '../../views/say.ts';
import { chanceWords, moveWords } from './course-words.ts';
import './proposal.css';

/** The corrections that would bring the course back, the smallest first; or that it is to be held, and why. */
export function Proposal({ now }: { readonly now: CourseNow }): JSX.Element {
  const { corrections, verdict, why } = now.answer;
  // The first two sentences are the landing and the chance, which stand above.
  const reasons = why.slice(2, 5);
  return (
    <Section
      title={corrections.length > 0 ? 'Corrections' : verdict === 'on course' ? 'Hold' : 'No correction'}
      detail={corrections.length > 0 ? `from ${dateWords(now.from)} on` : undefined}
    >
      <div class="stack">
        {corrections.length === 0 && reasons.map((sentence) => <Note key={sentence}>{say(sentence)}</Note>)}
        {corrections.map((correction) => (
          <CorrectionRow key={moveWords(correction.change)} correction={correction} now={now} />
        ))}
      </div>
    </Section>
  );
}

interface RowProps {
  readonly correction: CorrectionAnswer;
  readonly now: CourseNow;
}

function CorrectionRow({ correction, now }: RowProps): JSX.Element {
  const { change, probabilityAfter, lossPercentPerWeek, why } = correction;
  const words = moveWords(change);
  const take = (): void => {
    openCorrection({
      ...change,
      before: now.answer.probability,
      after: probabilityAfter,
      why: [...now.answer.why.slice(2, 3), ...why],
    });
    go(pathTo('course', 'correct'));
  };
  return (
    <div class="correction">
      <p class="correction-words">{capital(words)}</p>
      <div class="row">
        <Figure
          value={`${chanceWords(now.answer.probability)} to ${chanceWords(probabilityAfter)}`}
          size="line"
          label="Chance"
          why={() => ({
            title: words,
            sentences: why,
            inputs: [
              { name: 'Loss a week after it', value: `${lossPercentPerWeek.toFixed(2)} % of body mass` },
            ],
            uncertainty:
              'Counted over the same paths before and after, so the difference is that of the plans alone.',
          })}
        />
        <Button label={`Take it: ${words}`} onPress={take}>
          Take it
        </Button>
      </div>
    </div>
  );
}
