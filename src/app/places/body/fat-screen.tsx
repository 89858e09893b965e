import { signal, useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Problem } from '#core/problems/problem.ts';
import { bodyFatMethod } from '#core/tables/body-fat-methods.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { FAT_METHODS } from './fat-methods.ts';
import { oddBodyFat } from './odd-body-fat.ts';

const DRAFT = 'body/fat';
const problems = signal<readonly Problem[]>([]);

const fatDraft = v.strictObject({
  day: v.string(),
  method: v.picklist(FAT_METHODS.map(({ value }) => value)),
  percent: v.optional(v.number()),
});

/** A body fat measured elsewhere, read with its method's own bias and error. */
export function FatScreen(): JSX.Element {
  const typed = draft(DRAFT, fatDraft, { day: today.value, method: 'dxa' });
  const sure = useSignal(false);
  const { percent, method, day } = typed.value;
  const odd = percent === undefined || sure.value ? undefined : oddBodyFat(percent, athlete.value?.sex);
  const known = bodyFatMethod(method);
  const change = (part: Partial<v.InferOutput<typeof fatDraft>>): void => {
    sure.value = false;
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="A measured body fat" back={pathTo('body')}>
      <Form
        onSubmit={() => {
          if (odd === undefined) void keep(typed.value);
        }}
        problems={problems.value}
      >
        <Section title="Reading">
          <div class="stack">
            <NumberField
              label="Body fat"
              unit="%"
              decimals={1}
              min={2}
              max={70}
              value={percent}
              onValue={(n) => change({ percent: n })}
              problem={problemAt(problems.value, 'percent')}
            />
            {odd !== undefined && (
              <>
                <Caution title="Is that so?" words={odd} />
                <div class="row">
                  <Button onPress={() => (sure.value = true)}>{`It is ${percent} %`}</Button>
                </div>
              </>
            )}
            <ChoiceField
              label="By"
              layout="column"
              value={method}
              options={FAT_METHODS}
              onValue={(chosen) => change({ method: chosen })}
            />
            <DateField
              label="Measured on"
              value={day}
              max={today.value}
              onValue={(value) => change({ day: value })}
              problem={problemAt(problems.value, 'day')}
            />
            {known && (
              <Note>
                {`By ${known.name} a person is off by about ${known.biasPercent} points, always to the same side, and two readings of one day differ by ${known.repeatPercent}. So it is a trend more than a level, and the estimate reads it so.`}
              </Note>
            )}
          </div>
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits disabled={odd !== undefined}>
            Keep this reading
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep({ percent, method, day }: v.InferOutput<typeof fatDraft>): Promise<void> {
  const lacking = lackingOf(percent, day);
  if (lacking || percent === undefined) {
    problems.value = lacking ? [lacking] : [];
    return;
  }
  const saved = await record(
    'body-fat-measured',
    { percent, method },
    { day, says: `Body fat ${percent} % kept` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('body'));
}

function lackingOf(percent: number | undefined, day: string): Problem | undefined {
  if (percent === undefined)
    return {
      code: 'body/no-percent',
      path: 'percent',
      message: 'Body fat has no figure.',
      remedy: 'Enter the percent that was measured.',
    };
  if (day !== '' && day <= today.value) return undefined;
  return {
    code: 'body/day-ahead',
    path: 'day',
    message: 'This day has not been yet.',
    remedy: `Choose ${today.value} or an earlier day.`,
  };
}
