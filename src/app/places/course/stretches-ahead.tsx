import type { JSX } from 'preact';
import type { ForetoldJump } from '#core/course/foretell-jump.ts';
import type { StretchAhead } from '#core/cycle/course-now.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { ledger } from '../../state/open-journal.ts';
import { say } from '../../views/say.ts';
import { stretchTitle } from './stretch-title.ts';

/** Stretches ahead, each with what the scale will do, so that nobody reads water as fat. */
export function StretchesAhead({
  stretches,
  show,
}: {
  readonly stretches: readonly StretchAhead[];
  readonly show: string;
}): JSX.Element {
  return (
    <Section title="Planned otherwise">
      <List label="Stretches">
        {stretches.map(({ stretch, jump }) => (
          <ListRow
            key={`${stretch.type} ${stretch.from}`}
            detail={jumpWords(jump)}
            {...stretchTitle(ledger.value, show, stretch)}
          />
        ))}
      </List>
    </Section>
  );
}

/** "The scale will stand 0.9 kg higher on 12 March: 0.8 kg of it water, gone by 18 March." */
export function jumpWords(jump: ForetoldJump | undefined): string {
  if (jump === undefined) return 'The scale will not tell it from other days.';
  const { on, riseKg, waterKg, tissueKg, goneBy } = jump;
  const gone = goneBy === undefined ? 'not all gone before the show' : `gone by ${dayAndMonth(goneBy)}`;
  return say(
    `The scale will stand ${riseKg.mean.toFixed(1)} kg higher on ${dayAndMonth(on)} (9 times of 10 between ${riseKg.q05.toFixed(1)} kg and ${riseKg.q95.toFixed(1)} kg): ${waterKg.toFixed(1)} kg of it water, ${gone}; ${Math.abs(tissueKg).toFixed(1)} kg tissue.`,
  );
}
