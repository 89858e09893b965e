import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Caution } from '../parts/caution.tsx';
import { Page } from '../parts/page.tsx';
import { shownWhy } from '../parts/why.ts';
import { WhySheet } from '../parts/why-sheet.tsx';
import { FirstStart } from '../start/first-start.tsx';
import { failure, phase, which } from '../state/journals.ts';
import { ledger } from '../state/open-journal.ts';
import { isLentPlace } from '../views/lent-places.ts';
import { say } from '../views/say.ts';
import { NotLent } from './not-lent.tsx';
import { PlaceView } from './place-view.tsx';
import type { Place } from './places.ts';
import { route } from './route.ts';
import './shell.css';
import { DemoLine, LentLine, SavedStatus, UpdateLine } from './status-lines.tsx';
import { SteelRule } from './steel-rule.tsx';
import { UndoPlace } from './undo-place.tsx';

/** The frame around every screen: the steel rule, the lines that say how things stand, the reasons. */
export function Shell({ places }: { readonly places: readonly Place[] }): JSX.Element {
  const main = useRef<HTMLElement>(null);
  const [strip, setStrip] = useState(false);
  const current = route.value.place === '' ? (places[0]?.path ?? '') : route.value.place;
  const asks = asksWho() && !readsLent();
  const classes = ['shell', strip && 'shell-strip', shownWhy.value && 'shell-why', asks && 'shell-alone'];
  return (
    <div class={classes.filter(Boolean).join(' ')}>
      <button type="button" class="shell-skip" onClick={() => main.current?.focus()}>
        To the page
      </button>
      {!asks && <SteelRule places={places} current={current} />}
      <main class="shell-main" ref={main} tabIndex={-1}>
        <DemoLine />
        <LentLine />
        <UpdateLine />
        <div class="shell-status">
          <SavedStatus />
        </div>
        <MainScreen places={places} asks={asks} />
      </main>
      <UndoPlace onShown={setStrip} />
      <WhySheet say={say} />
    </div>
  );
}

/** Whoever only came to read a lent copy is not asked who prepares. */
function readsLent(): boolean {
  return route.value.place === 'journal' && route.value.rest[0] === 'lent';
}

/** One's own journal that does not know yet who prepares asks first. */
function asksWho(): boolean {
  return phase.value === 'open' && which.value === 'own' && ledger.value.of('athlete-described').length === 0;
}

function MainScreen(props: { readonly places: readonly Place[]; readonly asks: boolean }): JSX.Element {
  if (phase.value === 'starting') return <div class="page" aria-busy="true" />;
  if (phase.value === 'failed') {
    const problem = failure.value;
    return (
      <Page title="The journal did not open">
        <Caution words={problem ? [problem.message, problem.remedy] : ['Load the page again.']} />
      </Page>
    );
  }
  if (props.asks) return <FirstStart />;
  if (which.value === 'lent' && !isLentPlace(route.value.place)) return <NotLent />;
  return <PlaceView places={props.places} route={route.value} />;
}
