import type { JSX } from 'preact';
import { BarRows } from '../../charts/bar-rows.tsx';
import { Button } from '../../parts/button.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { sourceWords } from '../../views/source-words.ts';
import { gym, strength, training } from '../../views/training-view.ts';

/** Muscles shown; the rest stand in the table of all. */
const SHOWN = 12;

/** Strength kept, sides, hard sets and cardio: what lifting tells the rest of the tool. */
export function StrengthSections(): JSX.Element {
  return (
    <>
      <Kept />
      <Sides />
      <Volume />
      <Cardio />
    </>
  );
}

function Kept(): JSX.Element {
  const kept = strength.value;
  if (!kept)
    return (
      <Section title="Strength kept">
        <Note>
          Set the show and begin the preparation; with main lifts logged on both sides of the start, strength
          is held against it here and in the check-in.
        </Note>
      </Section>
    );
  return (
    <Section title="Strength kept" detail="main lifts against the start of the preparation">
      <Figure
        value={100 * kept.kept}
        unit="%"
        decimals={1}
        plusMinus={164.5 * kept.sd}
        size="large"
        label="Strength kept"
        labelHidden
        why={() => ({
          title: 'Strength kept',
          sentences: kept.why,
          formula:
            "kept = exp(mean of the lifts' changes of level, each by its certainty, body mass counted in)",
          source: sourceWords('kalman-1960'),
          uncertainty: 'Nine times of ten within the figure after the sign, as held on simulated lifters.',
        })}
      />
    </Section>
  );
}

function Sides(): JSX.Element | null {
  const { sides } = gym.value;
  if (sides.length === 0) return null;
  return (
    <Section title="Left and right">
      <List>
        {sides.map(({ exercise, name, words }) => (
          <ListRow key={exercise} title={name} detail={words} />
        ))}
      </List>
    </Section>
  );
}

function Volume(): JSX.Element | null {
  const { volume } = training.value;
  if (volume.length === 0) return null;
  return (
    <Section
      title="Hard sets"
      detail="the last seven days"
      action={
        <Button kind="quiet" href={pathTo('gym', 'volume')}>
          All muscles
        </Button>
      }
    >
      <BarRows
        title="The stroke is a week of the four before"
        unit="sets"
        decimals={1}
        rows={volume.slice(0, SHOWN).map(({ words, sets, usual }) => ({
          name: words,
          value: sets,
          ...(usual !== undefined && { planned: usual }),
        }))}
      />
    </Section>
  );
}

function Cardio(): JSX.Element | null {
  const { week, before, growth } = training.value.cardio;
  if (week.sessions + before.sessions === 0) return null;
  return (
    <Section title="Cardio" detail="the last seven days">
      <Facts
        items={[
          {
            name: 'Minutes',
            value: `${Math.round(week.minutes)} (${Math.round(before.minutes)} the week before)`,
          },
          { name: 'Net energy', value: `${Math.round(week.netKcal)} kcal` },
          ...(growth === undefined ? [] : [{ name: 'Growth', value: `${Math.round(100 * growth)} %` }]),
        ]}
      />
    </Section>
  );
}
