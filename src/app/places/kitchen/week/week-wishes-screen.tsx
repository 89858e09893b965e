import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import { usualWishes, weekWishes, type WeekWishes } from '#core/cycle/week-ask.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { CheckField } from '../../../parts/check-field.tsx';
import { Columns } from '../../../parts/columns.tsx';
import { Form } from '../../../parts/form.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { StepperField } from '../../../parts/stepper-field.tsx';
import { go, pathTo } from '../../../shell/route.ts';
import { clearDraft, draft } from '../../../state/drafts.ts';
import { ledger, record } from '../../../state/open-journal.ts';
import { kitchen } from '../../../views/kitchen-view.ts';

const DRAFT = 'kitchen/week-wishes';
const problems = signal<readonly Problem[]>([]);

const wishesDraft = v.strictObject({
  days: v.number(),
  least: v.number(),
  most: v.number(),
  sameDishPerDay: v.number(),
  wantedDishes: v.number(),
  toleratedPortions: v.number(),
  cookWeekdays: v.array(v.number()),
  pansPerCookDay: v.number(),
  freezer: v.boolean(),
  /** Recipes left out. */
  without: v.array(v.string()),
});
type WishesDraft = v.InferOutput<typeof wishesDraft>;

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

interface FieldsProps {
  readonly typed: WishesDraft;
  readonly change: (part: Partial<WishesDraft>) => void;
}

/** How the week is to be planned. */
export function WeekWishesScreen(): JSX.Element {
  const typed = draft(DRAFT, wishesDraft, draftOf(weekWishes(ledger.value)));
  const props: FieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
  };
  return (
    <Page title="How to plan the week" back={pathTo('kitchen', 'week')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Days and portions">
            <Counts {...props} />
          </Section>
          <Section title="At the stove">
            <Stove {...props} />
          </Section>
          <Section title="Dishes that may be cooked">
            <Dishes {...props} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep these wishes
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

const COUNTS = [
  { key: 'days', label: 'Days planned together', min: 1, max: 14 },
  { key: 'least', label: 'Portions of dishes a day, at least', min: 0, max: 8 },
  { key: 'most', label: 'Portions of dishes a day, at most', min: 1, max: 8 },
  { key: 'sameDishPerDay', label: 'Of one dish on one day, at most', min: 1, max: 8 },
  { key: 'wantedDishes', label: 'Different dishes wanted', min: 1, max: 14 },
  { key: 'toleratedPortions', label: 'Of one dish in all, before it is too often', min: 1, max: 40 },
] as const;

function Counts({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      {COUNTS.map(({ key, label, min, max }) => (
        <StepperField
          key={key}
          label={label}
          step={1}
          min={min}
          max={max}
          value={typed[key]}
          onValue={(n) => {
            if (n !== undefined) change({ [key]: n });
          }}
        />
      ))}
    </div>
  );
}

function Stove({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      {WEEKDAYS.map((name, place) => (
        <CheckField
          key={name}
          label={`Cook on ${name}s`}
          checked={typed.cookWeekdays.includes(place + 1)}
          onChecked={(on) =>
            change({
              cookWeekdays: on
                ? [...typed.cookWeekdays, place + 1].sort((a, b) => a - b)
                : typed.cookWeekdays.filter((day) => day !== place + 1),
            })
          }
        />
      ))}
      <StepperField
        label="Pans on one day, at most"
        step={1}
        min={1}
        max={6}
        value={typed.pansPerCookDay}
        onValue={(n) => {
          if (n !== undefined) change({ pansPerCookDay: n });
        }}
      />
      <CheckField
        label="Portions may be frozen"
        checked={typed.freezer}
        onChecked={(freezer) => change({ freezer })}
      />
    </div>
  );
}

function Dishes({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      {kitchen.value.catalogue.recipes().map(({ recipe, name }) => (
        <CheckField
          key={recipe}
          label={name}
          checked={!typed.without.includes(recipe)}
          onChecked={(on) =>
            change({
              without: on ? typed.without.filter((one) => one !== recipe) : [...typed.without, recipe],
            })
          }
        />
      ))}
    </div>
  );
}

function draftOf(wishes: WeekWishes): WishesDraft {
  const portions = wishes.portionsPerDay ?? usualWishes.portionsPerDay;
  const recipes = kitchen.peek().catalogue.recipes();
  return {
    days: wishes.days ?? usualWishes.days,
    least: portions.min,
    most: portions.max,
    sameDishPerDay: wishes.sameDishPerDay ?? usualWishes.sameDishPerDay,
    wantedDishes: wishes.wantedDishes ?? usualWishes.wantedDishes,
    toleratedPortions: wishes.toleratedPortions ?? usualWishes.toleratedPortions,
    cookWeekdays: [...(wishes.cookWeekdays ?? usualWishes.cookWeekdays)],
    pansPerCookDay: wishes.pansPerCookDay ?? usualWishes.pansPerCookDay,
    freezer: wishes.freezer ?? usualWishes.freezer,
    without: wishes.recipes
      ? recipes.map(({ recipe }) => recipe).filter((recipe) => wishes.recipes?.includes(recipe) === false)
      : [],
  };
}

async function keep(typed: WishesDraft): Promise<void> {
  if (typed.most < typed.least) {
    problems.value = [
      {
        code: 'week/portions-crossed',
        path: 'most',
        message: `At most ${typed.most} portions a day is less than at least ${typed.least}.`,
        remedy: 'Raise the most, or lower the least.',
      },
    ];
    return;
  }
  const { days, sameDishPerDay, wantedDishes, toleratedPortions, cookWeekdays, pansPerCookDay, freezer } =
    typed;
  const recipes = kitchen
    .peek()
    .catalogue.recipes()
    .map(({ recipe }) => recipe);
  const saved = await record(
    'week-wished',
    {
      days,
      portionsPerDay: { min: typed.least, max: typed.most },
      sameDishPerDay,
      wantedDishes,
      toleratedPortions,
      cookWeekdays,
      pansPerCookDay,
      freezer,
      ...(typed.without.length > 0 && {
        recipes: recipes.filter((recipe) => !typed.without.includes(recipe)),
      }),
    },
    { says: 'Wishes for the week kept' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('kitchen', 'week'));
}
