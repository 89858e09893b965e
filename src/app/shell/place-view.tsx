import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../parts/button.tsx';
import { EmptyState } from '../parts/empty-state.tsx';
import { Page } from '../parts/page.tsx';
import { FaultWall } from './fault-wall.tsx';
import type { Place, PlaceProps } from './places.ts';
import { pathTo } from './route.ts';
import type { Route } from './route.ts';

const loaded = new Map<string, ComponentType<PlaceProps>>();

/** The place the route names, loaded when first needed. */
export function PlaceView(props: { readonly places: readonly Place[]; readonly route: Route }): JSX.Element {
  const { route, places } = props;
  const place = route.place === '' ? places[0] : places.find(({ path }) => path === route.place);
  if (!place) return <NoSuchPlace places={places} />;
  const screen = [place.path, ...route.rest].join('/');
  return (
    <FaultWall key={screen}>
      <Loaded place={place} path={route.rest} />
    </FaultWall>
  );
}

function Loaded({ place, path }: { readonly place: Place; readonly path: readonly string[] }): JSX.Element {
  const [tries, setTries] = useState(0);
  const [state, setState] = useState<'loading' | 'ready' | 'failed'>(
    loaded.has(place.path) ? 'ready' : 'loading',
  );
  useEffect(() => {
    if (loaded.has(place.path)) return;
    place.load().then(
      (module) => {
        loaded.set(place.path, module.default);
        setState('ready');
      },
      () => setState('failed'),
    );
  }, [place, tries]);
  const Found = loaded.get(place.path);
  if (state === 'ready' && Found) return <Found path={path} />;
  if (state === 'loading') return <div class="page" aria-busy="true" />;
  return (
    <Page title={place.title}>
      <EmptyState
        title={`${place.title} could not be loaded`}
        words="This device does not hold this part of the app yet and the network did not answer. What you entered is kept."
        action={
          <Button
            kind="next"
            onPress={() => {
              setState('loading');
              setTries(tries + 1);
            }}
          >
            Try again
          </Button>
        }
      />
    </Page>
  );
}

function NoSuchPlace({ places }: { readonly places: readonly Place[] }): JSX.Element {
  const [front] = places;
  return (
    <Page title="Nothing here">
      <EmptyState
        title="No screen has this address"
        words="The address may be from an older version. The places of the app lead on."
        action={front && <Button href={pathTo(front.path)}>{`Go to ${front.title}`}</Button>}
      />
    </Page>
  );
}
