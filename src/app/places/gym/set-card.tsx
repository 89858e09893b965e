import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { StepNow } from '#core/cycle/gym-now.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { Caution } from '../../parts/caution.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import type { Why } from '../../parts/why.ts';
import { say } from '../../views/say.ts';
import { sourceWords } from '../../views/source-words.ts';
import { cautionWords, loadWords, setWords } from './gym-words.ts';
import './set-card.css';

interface SetCardProps {
  readonly now: StepNow;
  readonly load: SetLoad;
  readonly reps: number;
}

let nextTakesFocus = false;

/** The button that logged a set goes with it; whoever works by keys or by ear is led on to the next one. */
export function leadOnToTheNextSet(): void {
  nextTakesFocus = true;
}

/** The set under the bar, to be read at arm's length: what it is, what is asked, what it is held against. */
export function SetCard({ now, load, reps }: SetCardProps): JSX.Element {
  const { step, pain } = now;
  const { reps: range, tempo, rir } = step.target;
  const side = step.side === undefined ? '' : `, ${step.side} side`;
  const card = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (nextTakesFocus) card.current?.focus({ preventScroll: true });
    nextTakesFocus = false;
  }, []);
  return (
    <div class="set-card" role="group" aria-label="The next set" tabIndex={-1} ref={card}>
      <p class="set-head">
        <span class="set-exercise">{step.exercise.name}</span>
        <span class="set-kind">{`${setName(step)}${side}`}</span>
      </p>
      <p class="set-window">
        <span class="set-load">{loadWords(load)}</span>
        <span class="set-reps">
          <span class="set-times" aria-hidden="true">
            ×
          </span>
          <span class="unseen"> for </span>
          {reps}
        </span>
      </p>
      {step.set === 'warm-up' ? <Towards now={now} /> : <Marks now={now} load={load} />}
      {(range !== undefined || rir !== undefined || tempo !== undefined) && (
        <Note>
          {[
            ...(range ? [`scheme ${range.min} to ${range.max}`] : []),
            ...(rir === undefined ? [] : [`${rir} left in reserve`]),
            ...(tempo === undefined ? [] : [`tempo ${tempo}`]),
          ].join(', ')}
        </Note>
      )}
      {pain && (
        <Caution
          title={pain.seekCare === undefined ? 'Noted at this exercise' : 'See a clinician'}
          words={[say(pain.words), ...(pain.seekCare === undefined ? [] : [pain.seekCare])]}
        />
      )}
      <CautionOfExercise now={now} />
    </div>
  );
}

/** "Warm-up 2", "Top set", "Working set 3". */
export function setName({ set, number }: { readonly set: string; readonly number: number }): string {
  const words = set === 'warm-up' || set === 'drop' || set === 'rest-pause' ? set : `${set} set`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} ${number}`;
}

/** A warm-up has nothing to beat; what it leads to is said. */
function Towards({ now: { beat, warmUps } }: { readonly now: StepNow }): JSX.Element | null {
  if (!beat.asked) return null;
  const { load, reps } = beat.asked;
  return (
    <Figure
      value={`towards ${loadWords(load)} × ${reps}`}
      size="line"
      label="Warming up"
      why={{ title: 'The warm-up', sentences: [...(warmUps?.why ?? []), ...beat.why] }}
    />
  );
}

function Marks({ now: { beat, step }, load }: Pick<SetCardProps, 'now' | 'load'>): JSX.Element {
  const why = (): Why => ({
    title: `${step.exercise.name}: what is asked`,
    sentences: beat.why,
    formula: 'repetitions = curve of (level + form of the day - fatigue - ln load) / bend',
    source: [sourceWords('nuzzo-2024'), sourceWords('helms-2017')],
    uncertainty: 'The interval held nine sets of ten on simulated lifters whose strength is known.',
  });
  const { last, best } = beat;
  const expected = beat.expectedWith(load);
  return (
    <dl class="set-marks">
      {last && (
        <div>
          <dt>{`Last, ${dayAndMonth(last.day)}`}</dt>
          <dd>{setWords(last.fact.data)}</dd>
        </div>
      )}
      {best && best.fact !== last?.fact && (
        <div>
          <dt>{`Best, ${dayAndMonth(best.day)}`}</dt>
          <dd>{setWords(best.fact.data)}</dd>
        </div>
      )}
      <div>
        <dt>Expected to failure</dt>
        <dd>
          <Figure
            value={expected ? `${expected.median} (${expected.q05} to ${expected.q95})` : undefined}
            size="line"
            label="Expected to failure"
            labelHidden
            why={why}
          />
        </dd>
      </div>
    </dl>
  );
}

function CautionOfExercise({ now }: { readonly now: StepNow }): JSX.Element | null {
  const caution = cautionWords(now.step.exercise);
  return caution ? <Caution title={caution.title} words={caution.words.join(' ')} /> : null;
}
