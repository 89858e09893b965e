import type { JSX } from 'preact';
import type { EstimateAnswer } from '#core/body/estimate-request.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { body } from '../../views/body-view.ts';
import { massUnit } from '../../views/mass-units.ts';

/** The scale against what the body is believed to weigh. */
export function BodyScreen(): JSX.Element {
  const { weighed, estimate } = body.value;
  const { unit, shown } = massUnit.value;
  const last = weighed.at(-1);
  return (
    <Page
      title="Body"
      detail={last ? `last weigh-in ${shown(last.massKg).toFixed(1)} ${unit}` : 'no weigh-in yet'}
    >
      {estimate.ok ? (
        <Estimated answer={estimate.value} />
      ) : (
        <EmptyState title={estimate.problem.message} words={estimate.problem.remedy} />
      )}
      <div class="row">
        <Button href={pathTo('body', 'folds')}>Skinfolds</Button>
        <Button href={pathTo('body', 'tape')}>Tape</Button>
        <Button href={pathTo('body', 'photos')}>Photographs</Button>
        <CloseDay />
      </div>
      <ActionBar>
        <Button kind="next" wide href={pathTo('body', 'weigh')}>
          Weigh in
        </Button>
      </ActionBar>
    </Page>
  );
}

/** A day whose meals are all logged counts as a log of the day; nothing is guessed. */
function CloseDay(): JSX.Element | null {
  const facts = ledger.value.onDay(today.value);
  const ate = facts.some((fact) => fact.kind === 'meal-eaten');
  const closed = facts.some((fact) => fact.kind === 'day-closed');
  if (!ate || closed) return null;
  return (
    <Button
      records
      onPress={() => void record('day-closed', { complete: true }, { says: 'Today counts as fully logged' })}
    >
      Today is fully logged
    </Button>
  );
}

function Estimated({ answer }: { readonly answer: EstimateAnswer }): JSX.Element {
  const last = answer.days.at(-1);
  const { unit, shown } = massUnit.value;
  const why = { title: 'What the body did', sentences: answer.why };
  if (!last) return <EmptyState title="Too little to go on" words="A few more mornings on the scale." />;
  const { massKg, fatKg, leanKg, maintenanceKcal } = last;
  return (
    <Columns wide="first">
      <Section title="Scale and body" detail="dots are the scale, the line is the body, the band is how sure">
        <MassChart answer={answer} />
      </Section>
      <Section title="Believed today">
        <div class="stack">
          <Figure
            value={shown(massKg.mean)}
            plusMinus={shown(massKg.sd)}
            decimals={1}
            unit={unit}
            label="Body mass without water's noise"
            why={why}
          />
          <Figure
            value={shown(fatKg.mean)}
            plusMinus={shown(fatKg.sd)}
            decimals={1}
            unit={unit}
            label="Fat"
            why={why}
          />
          <Figure
            value={shown(leanKg.mean)}
            plusMinus={shown(leanKg.sd)}
            decimals={1}
            unit={unit}
            label="Lean"
            why={why}
          />
          <Figure
            value={maintenanceKcal.mean}
            plusMinus={maintenanceKcal.sd}
            decimals={0}
            unit="kcal"
            label="Maintenance, as you log"
            why={why}
          />
        </div>
      </Section>
    </Columns>
  );
}

/** Twice the standard deviation either way: about 19 days of 20. */
const BAND_SD = 2;

function MassChart({ answer }: { readonly answer: EstimateAnswer }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const days = answer.days.flatMap(({ date, massKg }) => {
    const day = parseDate(date);
    return day === undefined || massKg.sd > 3
      ? []
      : [{ day, mean: shown(massKg.mean), sd: shown(massKg.sd) }];
  });
  const readings = body.value.weighed.flatMap(({ day: date, massKg }) => {
    const day = parseDate(date);
    return day === undefined ? [] : [{ day, value: shown(massKg) }];
  });
  const [first, last] = [days[0], days.at(-1)];
  const sentence =
    first && last
      ? `From ${first.mean.toFixed(1)} to ${last.mean.toFixed(1)} ${unit} in ${last.day - first.day} days.`
      : 'Not enough weigh-ins for a line yet.';
  return (
    <TimeChart
      title="Body mass"
      unit={unit}
      sentence={sentence}
      decimals={1}
      bands={[
        {
          name: 'How sure',
          points: days.map(({ day, mean, sd }) => ({
            day,
            low: mean - BAND_SD * sd,
            high: mean + BAND_SD * sd,
          })),
        },
      ]}
      lines={[{ name: 'Body', look: 'solid', points: days.map(({ day, mean }) => ({ day, value: mean })) }]}
      dots={[{ name: 'Scale', points: readings }]}
    />
  );
}
