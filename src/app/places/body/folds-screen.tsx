import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { fatOfFolds, foldSitesOf } from '#core/cycle/measured-fat.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { athlete, measuredAthlete } from '../../views/athlete-view.ts';
import { FatFigure } from './fat-figure.tsx';
import { SiteDrawing } from './site-drawing.tsx';
import { foldSitesOnFigure, type FoldSite, type SiteOnFigure } from './fold-sites.ts';

const DRAFT = 'body/folds';
const problems = signal<readonly Problem[]>([]);

const equations = ['jackson-pollock-3', 'jackson-pollock-7', 'durnin-womersley'] as const;
type Equation = (typeof equations)[number];

const foldsDraft = v.strictObject({
  equation: v.picklist(equations),
  millimetres: v.record(v.string(), v.number()),
});
type FoldsDraft = v.InferOutput<typeof foldsDraft>;

function sitesOf(equation: Equation): readonly FoldSite[] {
  return foldSitesOf(equation, athlete.value?.sex ?? 'male');
}

/** Skinfolds by the sites of a published equation, with the sites drawn. */
export function FoldsScreen(): JSX.Element {
  const typed = draft(DRAFT, foldsDraft, { equation: 'jackson-pollock-7', millimetres: {} });
  const sites = sitesOf(typed.value.equation).flatMap(
    (site) => foldSitesOnFigure.find((one) => one.site === site) ?? [],
  );
  return (
    <Page title="Skinfolds" back={pathTo('body')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Where">
            <ChoiceField
              label="Which sites"
              layout="column"
              value={typed.value.equation}
              options={[
                { value: 'jackson-pollock-7', label: 'Seven sites' },
                { value: 'jackson-pollock-3', label: 'Three sites' },
                { value: 'durnin-womersley', label: 'Four sites, trunk and arm' },
              ]}
              onValue={(equation) => {
                typed.value = { ...typed.value, equation };
              }}
            />
            <Figures sites={sites} />
          </Section>
          <Section title="Millimetres" detail="right side, standing relaxed">
            <div class="stack">
              {sites.map(({ site, where }, place) => (
                <NumberField
                  key={site}
                  label={`${place + 1}. ${site}`}
                  hint={where}
                  unit="mm"
                  decimals={1}
                  min={1}
                  max={100}
                  value={typed.value.millimetres[site]}
                  onValue={(n) => {
                    const { [site]: _, ...others } = typed.value.millimetres;
                    typed.value = {
                      ...typed.value,
                      millimetres: n === undefined ? others : { ...others, [site]: n },
                    };
                  }}
                />
              ))}
            </div>
            <FoldResult typed={typed.value} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep these folds
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Figures({ sites }: { readonly sites: readonly SiteOnFigure[] }): JSX.Element {
  const marks = (view: SiteOnFigure['view']) =>
    sites.flatMap(({ site, x, y, view: side }, place) =>
      side === view ? [{ key: site, number: place + 1, x, y }] : [],
    );
  return (
    <div class="site-pair">
      <SiteDrawing title="Front of the body with the sites numbered" marks={marks('front')} />
      <SiteDrawing title="Back of the body with the sites numbered" marks={marks('back')} />
    </div>
  );
}

/** What the folds come to, once all of them are there. */
function FoldResult({ typed }: { readonly typed: FoldsDraft }): JSX.Element | null {
  const who = measuredAthlete.value;
  const sites = sitesMeasured(typed);
  if (!who || Object.keys(sites).length < sitesOf(typed.equation).length) return null;
  return <FatFigure reading={fatOfFolds({ sites, equation: typed.equation }, who)} />;
}

function sitesMeasured(typed: FoldsDraft): DataOf<'folds-measured'>['sites'] {
  const sites: DataOf<'folds-measured'>['sites'] = {};
  for (const site of sitesOf(typed.equation)) {
    const millimetres = typed.millimetres[site];
    if (millimetres !== undefined) sites[site] = [millimetres];
  }
  return sites;
}

async function keep(typed: FoldsDraft): Promise<void> {
  const missing = sitesOf(typed.equation).find((site) => typed.millimetres[site] === undefined);
  if (missing) {
    problems.value = [
      {
        code: 'body/fold-missing',
        path: missing,
        message: `The ${missing} fold is missing.`,
        remedy: 'Measure it, or choose fewer sites.',
      },
    ];
    return;
  }
  const saved = await record(
    'folds-measured',
    { sites: sitesMeasured(typed), equation: typed.equation },
    { says: 'Skinfolds kept' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('body'));
}
