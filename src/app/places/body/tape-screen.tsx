import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import { girthSites } from '#core/journal/kinds/body.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { fatOfGirths } from '#core/cycle/measured-fat.ts';
import type { Problem } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { athlete, measuredAthlete } from '../../views/athlete-view.ts';
import { FatFigure } from './fat-figure.tsx';

const DRAFT = 'body/tape';
const CENTIMETRES_PER_INCH = 2.54;
const problems = signal<readonly Problem[]>([]);
const tapeDraft = v.record(v.string(), v.number());
type TapeDraft = v.InferOutput<typeof tapeDraft>;

/** Girths; any of them, always at the same place and the same time of day. */
export function TapeScreen(): JSX.Element {
  const typed = draft(DRAFT, tapeDraft, {});
  const last = ledger.value.latest('girths-measured')?.data.sites;
  const inches = athlete.value?.units.length === 'in';
  const unit = inches ? 'in' : 'cm';
  const who = measuredAthlete.value;
  return (
    <Page title="Tape" back={pathTo('body')}>
      <Form onSubmit={() => void keep(typed.value, inches)} problems={problems.value}>
        <Section title="Girths" detail="before food, standing relaxed, tape level and not pulled in">
          <div class="stack">
            {girthSites.map((site) => {
              const before = last?.[site];
              return (
                <NumberField
                  key={site}
                  label={site}
                  unit={unit}
                  decimals={1}
                  min={inches ? 4 : 10}
                  max={inches ? 98 : 250}
                  value={typed.value[site]}
                  onValue={(n) => {
                    const { [site]: _, ...others } = typed.value;
                    typed.value = n === undefined ? others : { ...others, [site]: n };
                  }}
                  {...(before !== undefined && {
                    hint: `last ${roundTo(inches ? before / CENTIMETRES_PER_INCH : before, 1)} ${unit}`,
                  })}
                  optional
                />
              );
            })}
          </div>
          {who && Object.keys(typed.value).length > 0 && (
            <FatFigure reading={fatOfGirths({ sites: girthsTyped(typed.value, inches) }, who)} />
          )}
          <Note>
            The waist at its narrowest, the abdomen at the navel. A trend says more than one reading.
          </Note>
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep these girths
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

/** Girths in centimetres, as the journal keeps them. */
function girthsTyped(typed: TapeDraft, inches: boolean): DataOf<'girths-measured'>['sites'] {
  const sites: DataOf<'girths-measured'>['sites'] = {};
  for (const site of girthSites) {
    const value = typed[site];
    if (value !== undefined) sites[site] = roundTo(inches ? value * CENTIMETRES_PER_INCH : value, 2);
  }
  return sites;
}

async function keep(typed: TapeDraft, inches: boolean): Promise<void> {
  const sites = girthsTyped(typed, inches);
  if (Object.keys(sites).length === 0) {
    problems.value = [
      {
        code: 'body/no-girth',
        path: 'waist',
        message: 'No girth is entered.',
        remedy: 'Measure at least one.',
      },
    ];
    return;
  }
  const saved = await record('girths-measured', { sites }, { says: 'Girths kept' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('body'));
}
