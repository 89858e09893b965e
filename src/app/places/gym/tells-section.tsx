import type { JSX } from 'preact';
import { roundTo } from '#core/units/rounding.ts';
import { Button } from '../../parts/button.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { gym, gymDay, strength } from '../../views/gym-view.ts';
import { say } from '../../views/say.ts';

/** Half width of a 90 % interval in standard deviations. */
const NINETY = 1.645;

/** Strength kept and sides in a few lines; the rest a press away. */
export function TellsSection(): JSX.Element {
  return (
    <Section
      title="What lifting tells"
      action={
        <Button kind="quiet" href={pathTo('gym', 'volume')}>
          Sets by muscle
        </Button>
      }
    >
      <StrengthLine />
      <SidesList />
    </Section>
  );
}

function StrengthLine(): JSX.Element {
  const kept = strength.value;
  if (kept === undefined) {
    return (
      <Note>
        Strength kept is worked out once a main lift was trained four times before the preparation began and
        four times since.
      </Note>
    );
  }
  return (
    <Figure
      label="Strength kept since the preparation began"
      value={roundTo(100 * kept.kept, 1)}
      plusMinus={roundTo(100 * NINETY * kept.sd, 1)}
      decimals={1}
      unit="%"
      size="large"
      why={() => ({
        title: 'Strength kept',
        sentences: kept.why.map(say),
        formula: 'of each main lift: estimate now / estimate at the start, together by their certainty',
        uncertainty: `9 times of 10 it is within ${roundTo(100 * NINETY * kept.sd, 1)} points of this.`,
      })}
    />
  );
}

function SidesList(): JSX.Element | null {
  const { sides } = gym.value;
  if (sides.length === 0) return null;
  return (
    <List label="Left and right">
      {sides.map(({ exercise, name, words }) => (
        <ListRow key={exercise} title={name} detail={words} />
      ))}
    </List>
  );
}

/** Hard sets of the week by muscle, beside the weeks before. */
export function volumeRows(): readonly { muscle: string; sets: string; usual: string; trend: string }[] {
  return gymDay.value.volume.map(({ words, sets, usual, trend }) => ({
    muscle: words.charAt(0).toUpperCase() + words.slice(1),
    sets: String(roundTo(sets, 1)),
    usual: usual === undefined ? 'unknown' : String(roundTo(usual, 1)),
    trend,
  }));
}
