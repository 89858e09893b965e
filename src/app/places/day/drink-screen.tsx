import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger, record } from '../../state/open-journal.ts';

const USUAL_ML = [250, 330, 500, 750] as const;

/** What is drunk today; caffeine counts into the day's sum. */
export function DrinkScreen(): JSX.Element {
  const drink = useSignal('Water');
  const millilitres = useSignal<number | undefined>(undefined);
  const caffeineMg = useSignal<number | undefined>(undefined);
  const total = ledger.value
    .of('water-drunk')
    .filter((fact) => fact.day === today.value)
    .reduce((sum, fact) => sum + fact.data.millilitres, 0);
  const log = (amount: number): void => {
    const caffeine = caffeineMg.value;
    void record(
      'water-drunk',
      {
        drink: drink.value.trim() || 'Water',
        millilitres: Math.round(amount),
        ...(caffeine !== undefined && { caffeineMg: caffeine }),
      },
      { says: `${Math.round(amount)} mL logged` },
    );
    millilitres.value = undefined;
    caffeineMg.value = undefined;
  };
  return (
    <Page title="Drink" back={pathTo('day')} busy>
      <Figure value={total} unit="mL" size="reach" label="Drunk today" />
      <Form
        onSubmit={() => {
          if (millilitres.value !== undefined) log(millilitres.value);
        }}
        problems={[]}
      >
        <Section title="Log a drink">
          <div class="row">
            {USUAL_ML.map((amount) => (
              <Button key={amount} records onPress={() => log(amount)}>
                {`${amount} mL`}
              </Button>
            ))}
          </div>
          <TextField label="Drink" value={drink.value} onValue={(text) => (drink.value = text)} />
          <NumberField
            label="Another amount"
            unit="mL"
            decimals={0}
            min={1}
            max={10000}
            value={millilitres.value}
            onValue={(n) => (millilitres.value = n)}
            optional
          />
          <NumberField
            label="Caffeine in it"
            unit="mg"
            decimals={0}
            min={0}
            max={2000}
            value={caffeineMg.value}
            onValue={(n) => (caffeineMg.value = n)}
            optional
          />
        </Section>
        <ActionBar>
          <Button kind="next" wide records submits disabled={millilitres.value === undefined}>
            Log this drink
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}
