import type { JSX } from 'preact';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { setWords } from './gym-words.ts';
import { oneMore } from './set-draft.ts';
import { setName } from './set-card.tsx';

interface SessionStepsProps {
  readonly walk: SessionWalk;
  /** The step under the bar. */
  readonly current: WalkedStep | undefined;
  readonly onGo: (step: WalkedStep) => void;
}

/** Every set of the session in walking order, block by block; an open one may be taken out of its turn. */
export function SessionSteps({ walk, current, onGo }: SessionStepsProps): JSX.Element {
  const blocks = [...new Set(walk.steps.map(({ block }) => block))];
  return (
    <>
      {blocks.map((block) => {
        const steps = walk.steps.filter((step) => step.block === block);
        const names = [...new Set(steps.map(({ exercise }) => exercise.name))];
        const done = steps.filter(({ state }) => state !== 'to come').length;
        return (
          <Section
            key={block}
            level={3}
            title={names.join(' and ')}
            detail={`${names.length > 1 ? 'one after the other, ' : ''}${done} of ${steps.length} sets`}
          >
            <List>
              {steps.map((step) => (
                <StepRow
                  key={`${step.slot} ${step.set} ${step.number} ${step.side ?? ''}`}
                  step={step}
                  many={names.length > 1}
                  current={step === current}
                  onGo={onGo}
                />
              ))}
            </List>
            {done === steps.length && <MoreOf walk={walk} steps={steps} onGo={onGo} />}
          </Section>
        );
      })}
      <Extra walk={walk} />
    </>
  );
}

interface MoreOfProps extends Pick<SessionStepsProps, 'walk' | 'onGo'> {
  readonly steps: readonly WalkedStep[];
}

/** Where all that was planned is done, a set more may follow. */
function MoreOf({ walk, steps, onGo }: MoreOfProps): JSX.Element {
  const slots = [...new Map(steps.map(({ slot, exercise }) => [slot, exercise.name]))];
  return (
    <div class="row">
      {slots.map(([slot, name]) => {
        const step = oneMore(walk, slot);
        return (
          step && (
            <Button
              key={slot}
              label={`One more ${slots.length > 1 ? '' : 'set '}of ${name}`}
              onPress={() => onGo(step)}
            >
              {slots.length > 1 ? `One more of ${name}` : 'One more set'}
            </Button>
          )
        );
      })}
    </div>
  );
}

interface StepRowProps {
  readonly step: WalkedStep;
  readonly many: boolean;
  readonly current: boolean;
  readonly onGo: (step: WalkedStep) => void;
}

function StepRow({ step, many, current, onGo }: StepRowProps): JSX.Element {
  const side = step.side === undefined ? '' : `, ${step.side}`;
  const title = `${many ? `${step.exercise.name}: ` : ''}${setName(step)}${side}`;
  if (step.state === 'to come')
    return <ListRow title={title} state={current ? 'next' : 'plain'} onPress={() => onGo(step)} />;
  return (
    <ListRow
      title={title}
      detail={step.done ? setWords(step.done.data) : 'left out'}
      state={step.done ? 'done' : 'plain'}
    />
  );
}

function Extra({ walk: { extra } }: { readonly walk: SessionWalk }): JSX.Element | null {
  if (extra.length === 0) return null;
  return (
    <Section level={3} title="Beyond the plan">
      <List>
        {extra.map((set) => (
          <ListRow key={set.entry.id} title={setWords(set.data)} detail={set.data.exercise} state="done" />
        ))}
      </List>
    </Section>
  );
}
