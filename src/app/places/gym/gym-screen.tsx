import type { JSX } from 'preact';
import type { TrainingSession } from '#core/gym/session/training-sessions.ts';
import type { TemplateNow } from '#core/cycle/gym-today.ts';
import { dateWords, dayAndMonth } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { training } from '../../views/training-view.ts';
import { newId } from '../../views/new-id.ts';
import { withWeeksOut } from '../../views/show-view.ts';
import { StrengthSections } from './strength-sections.tsx';

/** The session of today first, then what lifting tells. */
export function GymScreen(): JSX.Element {
  const { open, templates, suggested, conflicts } = training.value;
  const first = templates.find(({ data }) => data.template === suggested);
  return (
    <Page
      title="Gym"
      detail={withWeeksOut(open ? 'a session is under way' : first && `today: ${first.data.name}`)}
    >
      <Columns wide="even">
        <div class="stack">
          {conflicts.length > 0 && <Caution title="Cardio" words={conflicts} />}
          <Templates templates={templates} suggested={suggested} open={open} />
          <Section title="More">
            <List>
              <ListRow
                title="Cardio"
                detail="log it; its energy goes to Body"
                href={pathTo('gym', 'cardio')}
              />
              <ListRow
                title="Training days"
                detail="exercises, sets, supersets"
                href={pathTo('gym', 'templates')}
              />
              <ListRow title="Exercises" detail="your own, and cautions" href={pathTo('gym', 'exercises')} />
              <ListRow
                title="Warm-up and plates"
                detail="what goes on the bar"
                href={pathTo('gym', 'loads')}
              />
              <ListRow title="Bars and weights" detail="what the place has" href={pathTo('gym', 'weights')} />
              <ListRow
                title="Machines"
                detail="pegs, and loadings that compare"
                href={pathTo('gym', 'machines')}
              />
              <ListRow title="Note pain" detail="outside a session" href={pathTo('gym', 'pain')} />
            </List>
          </Section>
        </div>
        <div class="stack">
          <StrengthSections />
          <Recent sessions={training.value.recent} />
        </div>
      </Columns>
      <ActionBar>
        <Start open={open} first={first} />
      </ActionBar>
    </Page>
  );
}

interface StartProps {
  readonly open: TrainingSession | undefined;
  readonly first: TemplateNow | undefined;
}

function Start({ open, first }: StartProps): JSX.Element {
  if (open)
    return (
      <Button kind="next" wide href={pathTo('gym', 'session', open.session)}>
        Go on with the session
      </Button>
    );
  if (first)
    return (
      <Button kind="next" records wide onPress={() => void begin(first.data.template)}>
        {`Begin: ${first.data.name}`}
      </Button>
    );
  return (
    <Button kind="next" records wide onPress={() => void begin(undefined)}>
      Begin without a plan
    </Button>
  );
}

interface TemplatesProps {
  readonly templates: readonly TemplateNow[];
  readonly suggested: string | undefined;
  readonly open: TrainingSession | undefined;
}

function Templates({ templates, suggested, open }: TemplatesProps): JSX.Element {
  if (templates.length === 0)
    return (
      <EmptyState
        title="No training day is planned yet"
        words="Plan one once, and each session walks you through it; or begin without and add exercises as you go."
        action={<Button href={pathTo('gym', 'template', 'new')}>Plan a training day</Button>}
      />
    );
  return (
    <Section title="Training days">
      <List>
        {templates.map(({ data, lastDay }) => (
          <ListRow
            key={data.template}
            title={data.name}
            detail={`${countOf(data)}${lastDay === undefined ? '' : `, last ${dayAndMonth(lastDay)}`}`}
            state={data.template === suggested && !open ? 'next' : 'plain'}
            {...(!open && { onPress: () => void begin(data.template) })}
          />
        ))}
      </List>
    </Section>
  );
}

function countOf({ blocks }: TemplateNow['data']): string {
  const exercises = blocks.flatMap(({ slots }) => slots).length;
  return `${exercises} ${exercises === 1 ? 'exercise' : 'exercises'}`;
}

function Recent({ sessions }: { readonly sessions: readonly TrainingSession[] }): JSX.Element | null {
  if (sessions.length === 0) return null;
  const nameOf = ({ template, title }: TrainingSession) =>
    title ?? ledger.value.of('session-planned').findLast(({ data }) => data.template === template)?.data.name;
  return (
    <Section title="Done of late">
      <List>
        {sessions.map((session) => (
          <ListRow
            key={session.session}
            title={nameOf(session) ?? 'Session'}
            detail={dateWords(session.day)}
            href={pathTo('gym', 'done', session.session)}
          />
        ))}
      </List>
    </Section>
  );
}

async function begin(template: string | undefined): Promise<void> {
  const session = newId('session');
  const place = ledger.peek().latest('weights-counted')?.data.place;
  const saved = await record(
    'session-begun',
    { session, ...(template !== undefined && { template }), ...(place !== undefined && { place }) },
    { says: 'Session begun' },
  );
  if (saved.status !== 'refused') go(pathTo('gym', 'session', session));
}
