import type { JSX } from 'preact';
import type { StepNow } from '#core/cycle/gym-now.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Outcome } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { Caution } from '../../parts/caution.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import type { Why } from '../../parts/why.ts';
import { push } from '../../views/gym-view.ts';
import { say } from '../../views/say.ts';
import { sourceWords } from '../../views/source-words.ts';
import { cautionWords, setWords, shortLoadWords } from './gym-words.ts';

interface ToBeatProps {
  readonly now: StepNow;
  /** The load as it is set on the screen: what is expected follows it. */
  readonly load: Outcome<SetLoad>;
}

/** What the set is to beat, and what keeps it from hurting. */
export function ToBeat({ now, load }: ToBeatProps): JSX.Element {
  const { beat, step } = now;
  const { asked } = beat;
  return (
    <>
      <Protect now={now} />
      <div class="set-head">
        {step.side !== undefined && <p class="set-side">{`${step.side} side`}</p>}
        {asked && (
          <Figure
            label={step.set === 'warm-up' ? 'Towards' : 'Asked'}
            value={`${shortLoadWords(asked.load)} × ${asked.reps}`}
            size="large"
            why={() => whyAsked(now)}
          />
        )}
      </div>
      {asked ? <p class="set-beat">{beatLine(now, load)}</p> : <Note>{say(beat.why[0] ?? '')}</Note>}
    </>
  );
}

function beatLine({ beat, step }: StepNow, load: Outcome<SetLoad>): string {
  const { last, best } = beat;
  const expected = load.ok ? beat.expectedWith(load.value) : beat.expected;
  const short = ({ fact }: NonNullable<typeof last>): string =>
    `${shortLoadWords(fact.data.load)} × ${fact.data.reps}`;
  return [
    ...(last ? [`Last time ${short(last)}`] : []),
    ...(best && best.fact !== last?.fact ? [`best ${short(best)}`] : []),
    ...(expected && step.set !== 'warm-up'
      ? [`today ${expected.median} to failure, likely ${expected.q05} to ${expected.q95}`]
      : []),
  ].join('; ');
}

/** The sets behind what is asked, in full. */
export function SetsBefore({ now }: { readonly now: StepNow }): JSX.Element | null {
  const { last, best } = now.beat;
  if (!last) return null;
  return (
    <Facts
      items={[
        { name: `Last time, ${dateWords(last.day)}`, value: setWords(last.fact.data) },
        ...(best && best.fact !== last.fact
          ? [{ name: `Best, ${dateWords(best.day)}`, value: setWords(best.fact.data) }]
          : []),
      ]}
    />
  );
}

function whyAsked({ beat, step }: StepNow): Why {
  const { chance } = beat.asked ?? {};
  return {
    title: `What ${step.exercise.name} is asked for`,
    sentences: [...beat.why.map(say), push.value.words],
    source: ['baechle-2008', 'nuzzo-2024', 'helms-2017'].map(sourceWords),
    ...(chance !== undefined && {
      uncertainty: `It comes off about ${Math.round(100 * chance)} times of 100 with the reserve wanted.`,
    }),
  };
}

/** The exercise's own caution and what pain was noted at it. */
function Protect({ now }: { readonly now: StepNow }): JSX.Element | null {
  const caution = cautionWords(now.step.exercise);
  const { pain } = now;
  return (
    <>
      {caution && <Caution title={caution.title} words={caution.words.join(' ')} />}
      {pain?.seekCare === undefined ? (
        pain && <Caution title="Noted at this exercise" words={say(pain.words)} />
      ) : (
        <Caution kind="urgent" title="Have it looked at" words={[say(pain.words), pain.seekCare]} />
      )}
    </>
  );
}
