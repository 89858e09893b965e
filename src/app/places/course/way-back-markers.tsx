import type { JSX } from 'preact';
import type { AfterwardsNow } from '#core/cycle/afterwards-now.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { athlete } from '../../views/athlete-view.ts';

/** Signs of recovery, held against before; and when to see a physician, said plainly and without shame. */
export function WayBackMarkers({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  const { markers, cautions } = now.plan;
  return (
    <Section title="Watch each week" detail={markers.join(', ')}>
      <div class="stack">
        {now.recovery.why.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <div class="row">
          <Button href={pathTo('health', 'recovery')}>Note how it feels</Button>
          {athlete.value?.sex === 'female' && <Button href={pathTo('body', 'cycle')}>Menses</Button>}
          <Button href={pathTo('health')}>Blood panels</Button>
        </div>
        <Note>Once a week is enough; three notes a week tell more.</Note>
        <Caution title="Care" words={cautions} />
      </div>
    </Section>
  );
}
