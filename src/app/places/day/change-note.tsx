import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { pathTo } from '../../shell/route.ts';
import { nothingToPlanFrom, planChange, planning, type Planning } from '../../views/planner.ts';
import './change-note.css';

/** What the last new plan changed and why; what is missing where no plan can be made. */
export function ChangeNote(): JSX.Element {
  return (
    <div aria-live="polite">
      <Progress planning={planning.value} />
      <Change />
    </div>
  );
}

function Progress({ planning: state }: { readonly planning: Planning }): JSX.Element | null {
  if (state.status === 'refused') {
    return <Caution title={state.problem.message} words={state.problem.remedy} />;
  }
  if (state.status === 'planning' && state.best) {
    return <Note>{`Best plan so far: meals at ${state.best.map((meal) => meal.at).join(', ')}.`}</Note>;
  }
  return null;
}

function Change(): JSX.Element | null {
  const change = planChange.value;
  if (!change) return null;
  return (
    <Section
      title="What changed"
      action={
        <Button kind="quiet" onPress={() => (planChange.value = undefined)}>
          Seen
        </Button>
      }
    >
      <ul class="change-list">
        {change.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <WhyButton why={{ title: 'Why this plan', sentences: change.why }}>Why this plan?</WhyButton>
      {nothingToPlanFrom.value && <Button href={pathTo('kitchen', 'buy')}>Put food in stock</Button>}
    </Section>
  );
}
