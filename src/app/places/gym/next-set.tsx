import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { StepNow } from '#core/cycle/gym-now.ts';
import { nextFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { book } from '../../views/gym-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { setWords, shortLoadWords } from './gym-words.ts';
import { readLoad } from './load-draft.ts';
import { LoadFields } from './load-fields.tsx';
import { LoadPlates } from './load-plates.tsx';
import { LoadedAs } from './loaded-as.tsx';
import { keyOfStep, prefilled, readSet, setDraft, type SetDraft } from './set-draft.ts';
import { SetsBefore, ToBeat } from './to-beat.tsx';

interface NextSetProps {
  readonly walk: SessionWalk;
  readonly now: StepNow;
  readonly onLogged: () => void;
}

/** The set to do: what to beat, and load and repetitions set to it, so that one press logs it. */
export function NextSet({ walk, now, onLogged }: NextSetProps): JSX.Element {
  const { step } = now;
  const kept = draft('gym/set', setDraft, { step: '', load: { of: 'kg', pegs: [], band: '' } });
  const problem = useSignal<Problem | undefined>(undefined);
  const start = prefilled(now, walk, book.value);
  const typed = kept.value.step === keyOfStep(walk.session.session, step) ? kept.value : start;
  const change = (part: Partial<SetDraft>): void => {
    kept.value = { ...typed, ...part };
  };
  const log = async (): Promise<void> => {
    const read = readSet(typed, step, walk.session.session);
    problem.value = read.ok ? undefined : read.problem;
    if (!read.ok) return;
    const saved = await record('set-done', read.value, {
      says: `${step.exercise.name}: ${setWords(read.value)}`,
    });
    problem.value = saved.status === 'refused' ? saved.problem : undefined;
    if (saved.status === 'refused') return;
    onLogged();
    window.scrollTo({ top: 0 });
  };
  return (
    <Section title="This set" titleHidden>
      <ToBeat now={now} load={readLoad(typed.load)} />
      <SetFields typed={typed} change={change} now={now} walk={walk} problem={problem.value} />
      {problem.value && (
        <Caution title="Not recorded yet" words={`${problem.value.message} ${problem.value.remedy}`} />
      )}
      <ActionBar>
        <Button kind="next" records wide onPress={() => void log()}>
          {`Log ${step.side === undefined ? '' : `${step.side}: `}${setName(typed)}`}
        </Button>
      </ActionBar>
    </Section>
  );
}

/** What the button is about to log, where it can be said. */
function setName({ load, reps }: SetDraft): string {
  const read = readLoad(load);
  if (!read.ok || reps === undefined) return 'this set';
  return `${shortLoadWords(read.value)} × ${reps}`;
}

interface SetFieldsProps extends Pick<NextSetProps, 'walk' | 'now'> {
  readonly typed: SetDraft;
  readonly change: (part: Partial<SetDraft>) => void;
  readonly problem: Problem | undefined;
}

function SetFields({ typed, change, now, walk, problem }: SetFieldsProps): JSX.Element {
  const { step } = now;
  const load = readLoad(typed.load);
  const problems = problem ? [problem] : [];
  const before = walk.sets.findLast(({ data }) => data.slot === step.slot && data.side === step.side);
  return (
    <div class="stack">
      <LoadFields
        load={typed.load}
        change={(part) => change({ load: { ...typed.load, ...part } })}
        stepKg={load.ok ? stepOf(load.value, walk.session.place) : 2.5}
        problem={problemAt(problems, 'load') ?? problemAt(problems, 'band')}
      />
      {load.ok && (
        <LoadPlates step={step} load={load.value} before={before?.data.load} place={walk.session.place} />
      )}
      <StepperField
        label="Repetitions"
        step={1}
        min={0}
        max={200}
        value={typed.reps}
        onValue={(reps) => change({ reps })}
        problem={problemAt(problems, 'reps')}
      />
      {step.set !== 'warm-up' && (
        <StepperField
          label="Left in reserve"
          hint="repetitions that would still have gone; the estimate reads it"
          step={1}
          min={0}
          max={10}
          decimals={1}
          value={typed.rir}
          onValue={(rir) => change({ rir })}
          optional
        />
      )}
      <LoadedAs step={step} typed={typed} change={change} />
      <SetsBefore now={now} />
    </div>
  );
}

/** The least change the place's weights allow. */
function stepOf(load: SetLoad, place: string | undefined): number {
  const figure = figureOfLoad(load);
  if (figure === undefined) return 2.5;
  const step = nextFigure(load, figure, 1, book.value, place) - figure;
  return step > 0 ? step : 2.5;
}
