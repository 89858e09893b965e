import type { JSX } from 'preact';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { gymDay, push } from '../../views/gym-view.ts';
import { newId } from '../../views/new-id.ts';
import { TellsSection } from './tells-section.tsx';

/** The gym's front: today's session first, then what lifting tells, then what everything is made of. */
export function GymScreen(): JSX.Element {
  return (
    <Page title="Gym">
      <Columns wide="first">
        <div class="stack">
          <TodaySection />
          <TellsSection />
        </div>
        <div class="stack">
          <RecentSection />
          <CardioSection />
          <AtHandSection />
        </div>
      </Columns>
    </Page>
  );
}

async function begin(template: string | undefined, name: string): Promise<void> {
  const place = gymDay.peek().recent[0]?.place;
  const saved = await record(
    'session-begun',
    {
      session: newId('session'),
      ...(template === undefined ? { title: name } : { template }),
      ...(place !== undefined && { place }),
    },
    { says: `${name} is begun` },
  );
  if (saved.status !== 'refused') go(pathTo('gym', 'session'));
}

function TodaySection(): JSX.Element {
  const { open, templates, suggested } = gymDay.value;
  if (open) {
    const name =
      open.title ?? templates.find(({ data }) => data.template === open.template)?.data.name ?? 'Session';
    return (
      <Section title={name} detail="under way">
        <Button kind="next" wide href={pathTo('gym', 'session')}>
          Go on with it
        </Button>
      </Section>
    );
  }
  const first = templates.find(({ data }) => data.template === suggested);
  const others = templates.filter((one) => one !== first);
  return (
    <Section title="Today" detail={push.value.push === 'match' ? 'match, not more' : undefined}>
      {first ? (
        <Button kind="next" records wide onPress={() => void begin(first.data.template, first.data.name)}>
          {`Begin ${first.data.name}`}
        </Button>
      ) : (
        <EmptyState
          title="No training day is planned yet"
          words="Put one together from the exercises, or begin without a plan and add as you go."
        />
      )}
      {push.value.push === 'match' && <Note>{push.value.words}</Note>}
      <List label="Other days">
        {others.map(({ data, lastDay }) => (
          <ListRow
            key={data.template}
            title={data.name}
            detail={lastDay === undefined ? 'not trained yet' : `last on ${dateWords(lastDay)}`}
            figure={
              <Button
                records
                label={`Begin ${data.name}`}
                onPress={() => void begin(data.template, data.name)}
              >
                Begin
              </Button>
            }
          />
        ))}
      </List>
      <div class="row">
        <Button records onPress={() => void begin(undefined, 'Session')}>
          Begin without a plan
        </Button>
        <Button kind="quiet" href={pathTo('gym', 'days')}>
          Training days
        </Button>
      </div>
    </Section>
  );
}

const SHOWN = 4;

function RecentSection(): JSX.Element | null {
  const { recent, templates } = gymDay.value;
  const ended = recent.filter(({ endedMs }) => endedMs !== undefined).slice(0, SHOWN);
  if (ended.length === 0) return null;
  return (
    <Section title="Done">
      <List>
        {ended.map(({ session, day, title, template }) => (
          <ListRow
            key={session}
            title={title ?? templates.find(({ data }) => data.template === template)?.data.name ?? 'Session'}
            detail={dateWords(day)}
            href={pathTo('gym', 'done', session)}
          />
        ))}
      </List>
    </Section>
  );
}

function CardioSection(): JSX.Element {
  const { cardio, conflicts } = gymDay.value;
  const { week, before } = cardio;
  return (
    <Section
      title="Cardio"
      detail="seven days"
      action={
        <Button kind="quiet" href={pathTo('gym', 'cardio')}>
          Log cardio
        </Button>
      }
    >
      <p>{`${week.minutes} min in ${week.sessions} ${week.sessions === 1 ? 'session' : 'sessions'}, ${week.netKcal} kcal beyond rest; ${before.minutes} min in the seven days before.`}</p>
      {conflicts.map((words) => (
        <Caution key={words} title="In the way" words={words} />
      ))}
    </Section>
  );
}

function AtHandSection(): JSX.Element {
  return (
    <Section title="At hand">
      <List>
        <ListRow
          title="Warm-up and plates"
          detail="sets up to a top set, as plates"
          href={pathTo('gym', 'loads')}
        />
        <ListRow
          title="Machines"
          detail="by their pegs: where they are hard"
          href={pathTo('gym', 'machines')}
        />
        <ListRow title="Exercises" detail="your own, and what to protect" href={pathTo('gym', 'exercises')} />
        <ListRow title="Training days" detail="exercises and sets by day" href={pathTo('gym', 'days')} />
        <ListRow
          title="Bars, plates, dumbbells"
          detail="what the place has"
          href={pathTo('gym', 'weights')}
        />
      </List>
    </Section>
  );
}
