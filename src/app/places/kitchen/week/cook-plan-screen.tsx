import type { JSX } from 'preact';
import type { PanAhead } from '#core/cycle/pans-ahead.ts';
import type { WeekAhead } from '#core/cycle/week-ahead.ts';
import { dateWords } from '#core/words/dates.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../../parts/button.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { PrintButton } from '../../../print/print-button.tsx';
import { PrintSheet, StepBox } from '../../../print/print-sheet.tsx';
import { pathTo } from '../../../shell/route.ts';
import { today } from '../../../state/clock.ts';
import { kitchenUnit } from '../../../views/kitchen-units.ts';
import { week } from '../../../views/week-view.ts';
import './week.css';
import { intoThePan } from '../recipes/into-the-pan.ts';

/** What to cook on which day, raw weights on the left hand, what it should weigh cooked on the right. */
export function CookPlanScreen(): JSX.Element {
  const ahead = week.value;
  const open = ahead?.pans.filter((pan) => pan.done === undefined) ?? [];
  return (
    <Page title="Cook plan" back={pathTo('kitchen', 'week')}>
      {ahead && open.length > 0 ? (
        <Pans ahead={ahead} open={open} />
      ) : (
        <EmptyState
          title={ahead ? 'Every pan of the week is cooked' : 'No week is planned yet'}
          words={ahead ? 'What is left stands in the Kitchen.' : 'Plan the week; the pans stand here then.'}
          action={<Button href={pathTo('kitchen', 'week')}>The week ahead</Button>}
        />
      )}
    </Page>
  );
}

function Pans({
  ahead,
  open,
}: {
  readonly ahead: WeekAhead;
  readonly open: readonly PanAhead[];
}): JSX.Element {
  return (
    <>
      {open.map((pan, place) => (
        <PanSection key={`${pan.recipe} ${pan.date}`} pan={pan} first={place === 0} />
      ))}
      <div class="paper-only">
        <PrintSheet
          title="Cook plan"
          date={today.value}
          version={`planned ${ahead.adopted.day}, ${open.length} ${open.length === 1 ? 'pan' : 'pans'}`}
        >
          {open.map((pan) => (
            <PanOnPaper key={`${pan.recipe} ${pan.date}`} pan={pan} />
          ))}
        </PrintSheet>
      </div>
      <div class="row">
        <PrintButton>Print the cook plan</PrintButton>
      </div>
    </>
  );
}

function PanSection({ pan, first }: { readonly pan: PanAhead; readonly first: boolean }): JSX.Element {
  return (
    <Section title={pan.name} detail={`${dateWords(pan.date)}, for ${days(pan)}`}>
      <div class="stack">
        <List label={`Raw weights of ${pan.name}`}>
          {pan.ingredients.map(({ food, name, rawG }) => (
            <ListRow
              key={food}
              title={capital(name)}
              figure={
                <Figure
                  value={kitchenUnit.value.shown(rawG)}
                  unit={kitchenUnit.value.unit}
                  size="line"
                  decimals={kitchenUnit.value.decimals(rawG)}
                  label={name}
                  labelHidden
                />
              }
            />
          ))}
        </List>
        <p class="soft">{packing(pan)}</p>
        <div class="row">
          <Button kind={first ? 'next' : 'plain'} onPress={() => intoThePan(pan)}>
            Cook this now
          </Button>
          {pan.expectedG !== undefined && (
            <Figure
              label="Should weigh cooked"
              value={kitchenUnit.value.shown(pan.expectedG)}
              unit={kitchenUnit.value.unit}
              decimals={kitchenUnit.value.decimals(pan.expectedG)}
              why={{
                title: `${pan.name}, cooked`,
                sentences: [
                  pan.expectedBy === 'recipe'
                    ? 'The recipe was weighed cooked; so many portions weigh in proportion.'
                    : 'Each raw weight times the yield of how it is cooked.',
                  'What the scale says then counts; this is to notice a forgotten ingredient by.',
                ],
              }}
            />
          )}
        </div>
      </div>
    </Section>
  );
}

function days({ eatenOn }: PanAhead): string {
  const all = [...new Set(eatenOn)];
  return `${all.length} ${all.length === 1 ? 'day' : 'days'}`;
}

function packing({ portions, freeze }: PanAhead): string {
  const packed = `Pack ${portions} ${portions === 1 ? 'portion' : 'portions'}`;
  return freeze > 0 ? `${packed}; freeze ${freeze} of them once cool.` : `${packed}.`;
}

function PanOnPaper({ pan }: { readonly pan: PanAhead }): JSX.Element {
  return (
    <section>
      <h3>{`${dateWords(pan.date)}: ${pan.name}`}</h3>
      {pan.ingredients.map(({ food, name, rawG }) => (
        <StepBox key={food}>{`${kitchenUnit.value.words(rawG)} ${name}`}</StepBox>
      ))}
      <StepBox>{packing(pan)}</StepBox>
    </section>
  );
}
