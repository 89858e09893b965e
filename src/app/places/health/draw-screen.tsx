import type { JSX } from 'preact';
import { drawAhead, drawPlanOf, regimensForDraw } from '#core/cycle/draw-now.ts';
import type { DrawPlan, PlannedDraw } from '#core/health/draw/draw-plan.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Facts } from '../../parts/facts.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';
import { DrawForm } from './draw-form.tsx';

/** The next draw: what to do on which day before it, as the run sheet will say it. */
export function DrawScreen(): JSX.Element {
  const draw = drawAhead(ledger.value, today.value);
  if (!draw) return <DrawForm draw={undefined} />;
  const plan = drawPlanOf(ledger.value, draw.data, today.value);
  return (
    <Page
      title="Blood draw"
      detail={`${dateWords(draw.data.date)} at ${draw.data.at}`}
      back={pathTo('health')}
    >
      <Columns wide="first">
        <div class="stack">{plan && <Days plan={plan} />}</div>
        <div class="stack">
          <What draw={draw.data} />
          {plan && plan.cautions.length > 0 && (
            <Section title="To mind">
              {plan.cautions.map(({ words, source }) => (
                <Caution key={words} words={say(words)} source={sourceWords(source)} />
              ))}
            </Section>
          )}
        </div>
      </Columns>
      <ActionBar>
        {draw.data.date === today.value ? (
          <Button kind="next" wide href={pathTo('health', 'panel', 'new')}>
            Enter the results
          </Button>
        ) : (
          <Button kind="plain" wide href={pathTo('health', 'draw', 'change')}>
            Move or change it
          </Button>
        )}
      </ActionBar>
    </Page>
  );
}

function Days({ plan }: { readonly plan: DrawPlan }): JSX.Element {
  const days = [...new Set(plan.items.map(({ day }) => day))];
  return (
    <Section
      title="Day by day"
      detail="these lines stand on the run sheet"
      action={
        <WhyButton
          why={{
            title: 'The days before a draw',
            sentences: plan.why,
            source: [...new Set(plan.items.map(({ source }) => sourceWords(source)))],
          }}
        >
          Why?
        </WhyButton>
      }
    >
      {days.map((day) => (
        <Section key={day} title={dateWords(day)} level={3}>
          <List>
            {plan.items
              .filter((item) => item.day === day)
              .map(({ words, at }) => (
                <ListRow key={words} title={say(words)} {...(at !== undefined && { figure: at })} />
              ))}
          </List>
        </Section>
      ))}
    </Section>
  );
}

function What({ draw }: { readonly draw: PlannedDraw }): JSX.Element {
  const cancel = async (): Promise<void> => {
    const cancelled = { ...draw, cancelled: true };
    const saved = await recordAll(
      [
        { kind: 'draw-planned', data: cancelled },
        ...regimensForDraw(ledger.peek(), cancelled, today.peek(), draw.date).map(
          (data) => ({ kind: 'regimen-set', data }) as const,
        ),
      ],
      { says: 'Draw cancelled, pauses lifted' },
    );
    if (saved.status !== 'refused') go(pathTo('health'));
  };
  return (
    <Section title="What and where">
      <Facts
        items={[
          { name: 'Laboratory', value: draw.laboratory ?? 'not said' },
          { name: 'Fasting', value: draw.fasting ? 'yes' : 'no' },
          {
            name: 'To be measured',
            value:
              draw.analytes.length === 0 ? 'not said, so everything is guarded' : draw.analytes.join(', '),
          },
        ]}
      />
      <Note>No prescribed medicine is stopped here, and no water is cut.</Note>
      <Button kind="quiet" records onPress={() => void cancel()}>
        Cancel the draw
      </Button>
    </Section>
  );
}
