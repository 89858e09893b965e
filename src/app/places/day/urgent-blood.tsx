import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { pathTo } from '../../shell/route.ts';
import { urgentBlood } from '../../views/health-view.ts';

/** A value that needs care now goes before anything that is planned for the day. */
export function UrgentBlood(): JSX.Element | null {
  const urgent = urgentBlood.value;
  if (!urgent) return null;
  return (
    <>
      <Caution kind="urgent" words={urgent.cautions.map(({ words }) => words)} />
      <div class="row">
        <Button href={pathTo('health', 'panel', urgent.panel)}>The panel</Button>
      </div>
    </>
  );
}
