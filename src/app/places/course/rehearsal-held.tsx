import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import type { Rehearsal } from '#core/cycle/rehearsals.ts';
import type { Problem } from '#core/problems/problem.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { dateWords, weeksOut } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { massUnit } from '../../views/mass-units.ts';
import { PhotoPair } from '../body/photo-pair.tsx';
import './check-in-screen.css';
import { type RehearsalDraft, rehearsalDraft } from './last-week-draft.ts';

const problems = signal<readonly Problem[]>([]);
const SCORES = ['1', '2', '3', '4', '5'] as const;

interface HeldProps {
  readonly show: string;
  readonly now: LastWeekNow;
  readonly rehearsal: Rehearsal;
}

/** A rehearsal that was held: what the scale did, photographs beside each other, and the judgement. */
export function RehearsalHeld({ show, now, rehearsal }: HeldProps): JSX.Element {
  const { from, judged, photos } = rehearsal;
  return (
    <Section
      title={`Loading from ${dateWords(from)}`}
      detail={weeksOut(addDays(rehearsal.until, 1), now.show.date)}
    >
      <div class="stack">
        <Facts items={factsOf(rehearsal)} />
        {photos.map(({ before, after }) => (
          <PhotoPair key={before.entry.id} earlier={before} later={after} />
        ))}
        {photos.length === 0 && (
          <>
            <Note>
              No two photographs of one view, one from before the load and one from after it, to set beside
              each other.
            </Note>
            <div class="row">
              <Button href={pathTo('body', 'photos')}>Photographs</Button>
            </div>
          </>
        )}
        {judged ? (
          <p>{`Next time ${judged.again}. ${judged.lessons ?? ''}`}</p>
        ) : (
          <Judge show={show} now={now} rehearsal={rehearsal} />
        )}
      </div>
    </Section>
  );
}

function factsOf({ carbohydrateG, massKg, judged }: Rehearsal): { name: string; value: string }[] {
  const { unit, shown } = massUnit.value;
  const { before, after } = massKg;
  const scale =
    before === undefined || after === undefined
      ? 'not weighed on both mornings'
      : `${shown(before).toFixed(1)} to ${shown(after).toFixed(1)} ${unit}`;
  return [
    ...(carbohydrateG === undefined
      ? []
      : [{ name: 'Planned a day', value: `${carbohydrateG} g carbohydrate` }]),
    { name: 'The scale', value: scale },
    ...(judged?.look === undefined ? [] : [{ name: 'The look', value: `${judged.look} of 5` }]),
    ...(judged?.gut === undefined ? [] : [{ name: 'The gut', value: `${judged.gut} of 5` }]),
  ];
}

function Judge({ show, now, rehearsal }: HeldProps): JSX.Element {
  const key = `course/rehearsal/${rehearsal.from}`;
  const typed = draft(key, rehearsalDraft, { again: 'as it was', lessons: '' });
  const change = (part: Partial<RehearsalDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const score = (name: 'look' | 'gut', label: string, hint: string): JSX.Element => (
    <ChoiceField
      label={label}
      layout="row"
      value={typed.value[name]}
      hint={hint}
      options={SCORES.map((value) => ({ value, label: value }))}
      onValue={(value) => change({ [name]: value })}
    />
  );
  return (
    <Form onSubmit={() => void judge({ show, now, rehearsal }, typed.value, key)} problems={problems.value}>
      <div class="stack scores">
        {score('look', 'The look', '1 flat or blurred, 5 full and sharp')}
        {score('gut', 'The gut', '1 bloated or upset, 5 quiet')}
        <ChoiceField
          label="For the show"
          layout="column"
          value={typed.value.again}
          options={[
            { value: 'as it was', label: 'the same load' },
            { value: 'with less', label: 'a smaller load', detail: '1.5 g per kg less' },
            { value: 'not at all', label: 'no load', detail: 'eat as usual' },
          ]}
          onValue={(again) => change({ again })}
        />
        <TextField
          label="Lessons"
          lines={3}
          value={typed.value.lessons}
          onValue={(lessons) => change({ lessons })}
          hint="which foods sat well, when the look was best, what to leave out"
          optional
        />
        <Button kind={now.rehearse ? 'plain' : 'next'} records wide submits>
          Carry it over to the show
        </Button>
      </div>
    </Form>
  );
}

async function judge({ show, now, rehearsal }: HeldProps, typed: RehearsalDraft, key: string): Promise<void> {
  const { from, until, carbohydrateG } = rehearsal;
  const mass = rehearsal.massKg.before;
  const planned = carbohydrateG !== undefined && mass ? carbohydrateG / mass : now.loadGPerKg;
  const lessons = typed.lessons.trim();
  const saved = await record(
    'rehearsal-judged',
    {
      show,
      from,
      until,
      loadGPerKg: Math.min(20, Math.round(planned * 2) / 2),
      loadDays: Math.min(7, daysBetween(from, until) + 1),
      ...(typed.look !== undefined && { look: Number(typed.look) }),
      ...(typed.gut !== undefined && { gut: Number(typed.gut) }),
      again: typed.again,
      ...(lessons !== '' && { lessons }),
    },
    { says: 'Rehearsal judged' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status !== 'refused') clearDraft(key);
}
