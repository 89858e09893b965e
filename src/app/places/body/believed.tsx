import type { JSX } from 'preact';
import type { BodyNow } from '#core/cycle/body-now.ts';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { massUnit } from '../../views/mass-units.ts';
import './believed.css';
import { NINETY, whyOf, withinWords } from './body-whys.ts';

/** Fewer weigh-ins than this and the figures are little more than what is known of anyone of this size. */
const FEW = 8;

/** Mass, fat, lean and maintenance as believed today, each with its spread and its reasons. */
export function Believed({ now }: { readonly now: BodyNow }): JSX.Element | null {
  const last = now.answer.days.at(-1);
  const { unit, shown } = massUnit.value;
  if (!last) return null;
  const { massKg, fatKg, leanKg, maintenanceKcal } = last;
  const percent = {
    mean: (100 * fatKg.mean) / massKg.mean,
    sd: (100 * fatKg.sd) / massKg.mean,
  };
  const mass = (value: { readonly mean: number; readonly sd: number }) => ({
    value: shown(value.mean),
    plusMinus: shown(NINETY * value.sd),
    decimals: 1,
    unit,
  });
  const why = (quantity: Parameters<typeof whyOf>[0], sd: number, of: string, decimals: number) => () =>
    whyOf(quantity, now, withinWords(sd, of, decimals));
  return (
    <Section title="Believed today" detail="± holds 9 times of 10">
      <div class="believed">
        <Figure
          {...mass(massKg)}
          size="large"
          label="Body mass"
          why={why('mass', shown(massKg.sd), unit, 1)}
        />
        <Figure {...mass(fatKg)} label="Fat" why={why('fat', shown(fatKg.sd), unit, 1)} />
        <Figure
          value={percent.mean}
          plusMinus={NINETY * percent.sd}
          decimals={1}
          unit="%"
          label="Body fat"
          why={why('percent', percent.sd, '%', 1)}
        />
        <Figure {...mass(leanKg)} label="Lean" why={why('lean', shown(leanKg.sd), unit, 1)} />
        <Figure
          value={Math.round(maintenanceKcal.mean / 5) * 5}
          plusMinus={Math.round((NINETY * maintenanceKcal.sd) / 5) * 5}
          unit="kcal a day"
          label="Maintenance, as you log"
          why={why('maintenance', maintenanceKcal.sd, 'kcal', 0)}
        />
      </div>
      {now.log.weighIns < FEW && (
        <Note>
          {`${now.log.weighIns} ${now.log.weighIns === 1 ? 'weigh-in' : 'weigh-ins'} so far: these figures are mostly what is known of anyone of your size. They narrow with each morning and each day of food logged in full.`}
        </Note>
      )}
    </Section>
  );
}
