import type { JSX } from 'preact';
import { showsFrom } from '#core/course/read-course.ts';
import { type SeasonDate, seasonDates, type Suggested, usualDates } from '#core/cycle/season-dates.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { exportAs } from '../../state/copies.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { momentThere, nextShow, outWords } from '../../views/show-view.ts';
import { download } from '../journal/download.ts';
import { newId } from '../../views/new-id.ts';
import { zoneWords } from './zone-field.tsx';

/** The season by its dates: shows, and what is to be done on the way to them. */
export function DatesScreen(): JSX.Element {
  const dates = seasonDates(ledger.value, today.value);
  const show = nextShow.value;
  return (
    <Page title="Season" back={pathTo('course')} detail={show && `${outWords(show)} · ${show.name}`}>
      <Columns wide="first">
        <Section
          title="Dates ahead"
          detail="each stands on the run sheet of its day"
          action={
            dates.length > 0 && (
              <Button kind="quiet" onPress={() => void saveCalendar()}>
                Save for a calendar
              </Button>
            )
          }
        >
          {dates.length === 0 ? (
            <EmptyState
              title="No date is set"
              words="Set a show; posing, tanning, check-in and registration follow from it."
            />
          ) : (
            <List label="Dates ahead">
              {dates.map((one) => (
                <DateRow key={one.type === 'show' ? one.show.show : one.fact.entry.id} one={one} />
              ))}
            </List>
          )}
        </Section>
        <Usual />
      </Columns>
      <ActionBar>
        <Button kind="next" wide href={show ? pathTo('course', 'dates', 'new') : pathTo('course', 'show')}>
          {show ? 'Add a date' : 'Set a show'}
        </Button>
      </ActionBar>
    </Page>
  );
}

function DateRow({ one }: { readonly one: SeasonDate }): JSX.Element {
  if (one.type === 'show') return <ShowDateRow one={one} />;
  const { data, entry } = one.fact;
  const at = data.at === undefined ? '' : `, ${data.at}`;
  const lasts = data.minutes === undefined ? '' : `, ${data.minutes} min`;
  return (
    <ListRow
      title={data.title}
      detail={`${dateWords(data.date)}${at}${lasts}`}
      state={data.done === true ? 'done' : 'plain'}
      href={pathTo('course', 'dates', entry.id)}
    />
  );
}

function ShowDateRow({ one }: { readonly one: Extract<SeasonDate, { type: 'show' }> }): JSX.Element {
  const { data } = one.show;
  const words = [
    dateWords(data.date),
    outWords(data),
    ...(data.class ? [data.class.name] : []),
    ...(data.zone === undefined ? [] : [`clocks of ${zoneWords(data.zone)}`]),
  ];
  return (
    <ListRow
      title={data.name}
      detail={words.join(' · ')}
      figure={<Tag>show</Tag>}
      href={pathTo('course', 'show', data.show)}
    />
  );
}

/** What a show usually asks for, each one tap away. */
function Usual(): JSX.Element | null {
  const show = showsFrom(ledger.value, today.value)[0];
  if (!show) return null;
  const { hereMinutes, thereMinutes } = momentThere(show.data);
  const suggested = usualDates(ledger.value, show, today.value, thereMinutes - hereMinutes);
  if (suggested.length === 0) return null;
  return (
    <Section title="Usual before a show" detail="common practice; the organiser's own dates come first">
      <List label="Usual before a show">
        {suggested.map((one) => (
          <ListRow
            key={one.title}
            title={one.title}
            detail={one.says}
            figure={
              <Button records label={`Add: ${one.title}`} onPress={() => void add(one)}>
                Add
              </Button>
            }
          />
        ))}
      </List>
      <Note>Tap a date afterwards to move it.</Note>
    </Section>
  );
}

async function add({ title, events }: Suggested): Promise<void> {
  await recordAll(
    events.map((event) => ({ kind: 'event-dated' as const, data: { event: newId('date'), ...event } })),
    { says: events.length === 1 ? `Dated: ${title}` : `Dated ${events.length} times: ${title}` },
  );
}

async function saveCalendar(): Promise<void> {
  const file = await exportAs('ical', today.peek());
  if (file) download(file.name, file.text, file.mediaType);
}
