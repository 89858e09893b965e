import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import { packsKnown } from '#core/cycle/week-ask.ts';
import type { Problem } from '#core/problems/problem.ts';
import { capital } from '#core/units/capital.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Form } from '../../../parts/form.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Page } from '../../../parts/page.tsx';
import { TextField } from '../../../parts/text-field.tsx';
import { go, pathTo } from '../../../shell/route.ts';
import { clearDraft, draft } from '../../../state/drafts.ts';
import { ledger, record } from '../../../state/open-journal.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { problemAt } from '../../../views/problem-at.ts';

const problems = signal<readonly Problem[]>([]);

const packDraft = v.strictObject({
  packG: v.optional(v.number()),
  price: v.optional(v.number()),
  aisle: v.string(),
});
type PackDraft = v.InferOutput<typeof packDraft>;

/** How a food is sold where you shop: the list rounds up to it. */
export function PackScreen({ id }: { readonly id: string }): JSX.Element {
  const key = `kitchen/pack/${id}`;
  const known = packsKnown(ledger.value).get(id);
  const typed = draft(key, packDraft, {
    aisle: known?.aisle ?? '',
    ...(known && { packG: known.packG }),
    ...(known?.priceCents !== undefined && { price: known.priceCents / 100 }),
  });
  const change = (part: Partial<PackDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const name = kitchen.value.nameOfFood(id) ?? id;
  return (
    <Page title={capital(name)} detail="How it is sold" back={pathTo('kitchen', 'shopping')}>
      <Form onSubmit={() => void keep(id, name, typed.value, key)} problems={problems.value}>
        <NumberField
          label="One pack holds"
          unit="g"
          decimals={0}
          min={1}
          max={100_000}
          value={typed.value.packG}
          onValue={(packG) => change({ packG })}
          problem={problemAt(problems.value, 'packG')}
        />
        <NumberField
          label="Price of a pack"
          hint="In your own money; the week weighs it in when every price of a dish is known"
          decimals={2}
          min={0}
          max={100_000}
          value={typed.value.price}
          onValue={(price) => change({ price })}
          optional
        />
        <TextField
          label="Aisle"
          hint={kitchen.value.catalogue.food(id)?.aisle ?? 'where it stands in the shop'}
          value={typed.value.aisle}
          onValue={(aisle) => change({ aisle })}
          optional
        />
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the pack size
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep(food: string, name: string, typed: PackDraft, key: string): Promise<void> {
  const { packG, price } = typed;
  const aisle = typed.aisle.trim();
  if (packG === undefined || packG <= 0) {
    problems.value = [
      {
        code: 'week/no-pack',
        path: 'packG',
        message: 'The pack has no weight.',
        remedy: 'Enter the grams printed on it.',
      },
    ];
    return;
  }
  const saved = await record(
    'pack-known',
    {
      food,
      packG,
      ...(price !== undefined && { priceCents: Math.round(price * 100) }),
      ...(aisle !== '' && { aisle }),
    },
    { says: `${capital(name)}: packs of ${packG} g` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('kitchen', 'shopping'));
}
