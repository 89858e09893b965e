import type { JSX } from 'preact';
import { Columns } from '../parts/columns.tsx';
import { Page } from '../parts/page.tsx';
import { Section } from '../parts/section.tsx';
import { WhySheet } from '../parts/why-sheet.tsx';
import { shownWhy } from '../parts/why.ts';
import { pathTo, route } from '../shell/route.ts';
import { SteelRule } from '../shell/steel-rule.tsx';
import type { Example } from './example.ts';
import { SHELVES } from './examples.ts';
import './gallery.css';

const PLACES = ['Day', 'Kitchen', 'Gym', 'Body', 'Course', 'Health', 'Journal'].map((title) => ({
  path: title.toLowerCase(),
  title,
}));

/** All parts to look at, shelf by shelf; "#/figures" is one shelf. */
export function Gallery(): JSX.Element {
  const shelf = SHELVES.find(({ path }) => path === route.value.place) ?? SHELVES[0];
  if (!shelf) return <Page title="Gallery">{null}</Page>;
  return (
    <div class={shownWhy.value === undefined ? 'shell' : 'shell shell-why'}>
      <SteelRule places={PLACES} current="kitchen" />
      <main class="shell-main" key={shelf.path}>
        {shelf.path === 'frame' ? (
          shelf.examples.map((example) => <example.show key={example.name} />)
        ) : (
          <Page title={shelf.title} detail={<ShelfLinks />}>
            <Columns>
              {shelf.examples.map((example) => (
                <Shown key={example.name} example={example} />
              ))}
            </Columns>
          </Page>
        )}
      </main>
      <WhySheet say={(sentence) => sentence} />
    </div>
  );
}

function ShelfLinks(): JSX.Element {
  return (
    <span class="gallery-shelves">
      {SHELVES.map((shelf) => (
        <a class="gallery-shelf" key={shelf.path} href={pathTo(shelf.path)}>
          {shelf.title}
        </a>
      ))}
    </span>
  );
}

function Shown({ example }: { readonly example: Example }): JSX.Element {
  return (
    <Section title={example.name}>
      <example.show />
    </Section>
  );
}
