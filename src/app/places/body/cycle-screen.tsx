import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { sourceWords } from '../../views/source-words.ts';

const DRAFT = 'body/cycle';
const problems = signal<readonly Problem[]>([]);
const EVENTS = [
  { value: 'menses began', label: 'Menses began' },
  { value: 'menses ended', label: 'Menses ended' },
  { value: 'no menses for three months', label: 'No menses for three months' },
] as const;

const cycleDraft = v.strictObject({
  day: v.string(),
  event: v.picklist(EVENTS.map(({ value }) => value)),
});
type CycleDraft = v.InferOutput<typeof cycleDraft>;

/** The onset of menses, so that its water is told from tissue; and its absence, which is a sign to act on. */
export function CycleScreen(): JSX.Element {
  const typed = draft(DRAFT, cycleDraft, { day: today.value, event: 'menses began' });
  const noted = ledger.value.of('cycle-noted').slice(-6).toReversed();
  return (
    <Page title="Cycle" back={pathTo('body')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Section title="What and when" detail="water of the cycle is told apart from tissue">
          <div class="stack">
            <ChoiceField
              label="Event"
              layout="column"
              value={typed.value.event}
              options={EVENTS}
              onValue={(event) => (typed.value = { ...typed.value, event })}
            />
            <DateField
              label="On"
              value={typed.value.day}
              max={today.value}
              onValue={(day) => (typed.value = { ...typed.value, day })}
            />
          </div>
          {typed.value.event === 'no menses for three months' && (
            <Caution
              title="See a physician"
              words="Menses that stay away are a sign of too little energy for too long. Eat more, and have it looked at: bone and heart pay for it later."
              source={sourceWords('mountjoy-2018')}
            />
          )}
        </Section>
        {noted.length > 0 && (
          <Section title="Noted so far">
            <List label="Cycle">
              {noted.map((fact) => (
                <ListRow key={fact.entry.id} title={fact.data.event} detail={dateWords(fact.day)} />
              ))}
            </List>
          </Section>
        )}
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep({ day, event }: CycleDraft): Promise<void> {
  if (day === '' || day > today.value) {
    problems.value = [
      {
        code: 'body/day-ahead',
        path: 'day',
        message: 'This day has not been yet.',
        remedy: `Choose ${today.value} or an earlier day.`,
      },
    ];
    return;
  }
  const saved = await record('cycle-noted', { event }, { day, says: 'Cycle noted' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('body'));
}
