import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { showsFrom } from '#core/course/read-course.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { problemAt } from '../../views/problem-at.ts';
import { sourceWords } from '../../views/source-words.ts';
import { ZoneField } from './zone-field.tsx';
import { draftOfShow, showDraft, showFrom, targetDoubt, type ShowDraft } from './show-draft.ts';

const problems = signal<readonly Problem[]>([]);

/** The show: when, where, which class, and what to bring. `id` names it, "new" adds another; absent, the next one is changed. */
export function ShowScreen({ id }: { readonly id: string | undefined }): JSX.Element {
  const shows = showsFrom(ledger.value, today.value);
  const next = (id === undefined ? shows[0] : shows.find(({ show }) => show === id))?.data;
  const key = `course/show/${next?.show ?? 'new'}`;
  const typed = draft(key, showDraft, draftOfShow(next));
  const change = (part: Partial<ShowDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title={next ? 'The show' : 'A show'} back={pathTo('course')}>
      <Form onSubmit={() => void keep(typed.value, next?.show, key)} problems={problems.value}>
        <Section title="When and where">
          <div class="stack">
            <TextField
              label="Name"
              value={typed.value.name}
              onValue={(name) => change({ name })}
              problem={problemAt(problems.value, 'name')}
            />
            <DateField
              label="Date"
              value={typed.value.date}
              min={today.value}
              onValue={(date) => change({ date })}
              problem={problemAt(problems.value, 'date')}
            />
            <TextField
              label="Place"
              value={typed.value.place}
              onValue={(place) => change({ place })}
              optional
            />
            <ZoneField zone={typed.value.zone} onZone={(zone) => change({ zone })} />
          </div>
        </Section>
        <TargetFields typed={typed.value} change={change} />
        <ClassFields typed={typed.value} change={change} />
        {next && (
          <Button kind="caution" records onPress={() => void withdraw(next)}>
            Withdraw from this show
          </Button>
        )}
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the show
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: ShowDraft;
  readonly change: (part: Partial<ShowDraft>) => void;
}

function TargetFields({ typed, change }: FieldsProps): JSX.Element {
  const doubt = targetDoubt(typed.bodyFatPercentMax, athlete.value?.sex);
  return (
    <Section title="What to bring" detail="any of these; all that are given must be met">
      <div class="stack">
        <NumberField
          label="Body fat, at most"
          unit="%"
          decimals={1}
          min={2}
          max={50}
          value={typed.bodyFatPercentMax}
          onValue={(bodyFatPercentMax) => change({ bodyFatPercentMax })}
          problem={problemAt(problems.value, 'bodyFatPercentMax')}
          optional
        />
        {doubt && (
          <Caution
            title="Below what is planned for"
            words={[doubt.words, 'It can be written down; no course will be laid to it.']}
            source={sourceWords(doubt.source)}
          />
        )}
        <MassField label="Body mass, at most" name="massMaxKg" typed={typed} change={change} />
        <MassField label="Body mass, at least" name="massMinKg" typed={typed} change={change} />
        <Note>
          A body fat is known to a few points at best. Folds by the same hand, every second week, make it
          worth more.
        </Note>
      </div>
    </Section>
  );
}

/** The class as its own rules have it: the tool knows no federation's table. */
function ClassFields({ typed, change }: FieldsProps): JSX.Element {
  const who = athlete.value;
  const { classHeightMaxCm } = typed;
  return (
    <Section title="Class" detail="with its own limits, as the organiser writes them">
      <div class="stack">
        <TextField
          label="Class"
          value={typed.className}
          onValue={(className) => change({ className })}
          optional
        />
        <MassField label="Class limit, at most" name="classMaxKg" typed={typed} change={change} />
        <MassField label="Class limit, at least" name="classMinKg" typed={typed} change={change} />
        <HeightField typed={typed} change={change} />
        {who && classHeightMaxCm !== undefined && who.heightCm > classHeightMaxCm && (
          <Caution
            title="Taller than the class"
            words="The height you entered is above this class's limit. Measure again as the organiser does, or enter the next class."
          />
        )}
      </div>
    </Section>
  );
}

function HeightField({ typed, change }: FieldsProps): JSX.Element {
  const inches = athlete.value?.units.length === 'in';
  const cm = typed.classHeightMaxCm;
  const factor = inches ? CM_PER_INCH : 1;
  return (
    <NumberField
      label="Height, at most"
      unit={inches ? 'in' : 'cm'}
      decimals={1}
      min={Math.ceil(100 / factor)}
      max={Math.floor(250 / factor)}
      value={cm === undefined ? undefined : Math.round((10 * cm) / factor) / 10}
      onValue={(n) => change({ classHeightMaxCm: n === undefined ? undefined : n * factor })}
      optional
    />
  );
}

const CM_PER_INCH = 2.54;

interface MassFieldProps extends FieldsProps {
  readonly label: string;
  readonly name: 'massMaxKg' | 'massMinKg' | 'classMaxKg' | 'classMinKg';
}

function MassField({ label, name, typed, change }: MassFieldProps): JSX.Element {
  const { unit, shown, read } = massUnit.value;
  const value = typed[name];
  return (
    <NumberField
      label={label}
      unit={unit}
      decimals={1}
      min={Math.ceil(shown(30))}
      max={Math.floor(shown(250))}
      value={value === undefined ? undefined : Math.round(shown(value) * 10) / 10}
      onValue={(n) => change({ [name]: n === undefined ? undefined : read(n) })}
      problem={problemAt(problems.value, name)}
      optional
    />
  );
}

async function keep(typed: ShowDraft, id: string | undefined, key: string): Promise<void> {
  const show = showFrom(typed, id ?? `show-${typed.date}`, today.value);
  if (!show.ok) {
    problems.value = [show.problem];
    return;
  }
  const saved = await record('show-set', show.value, { says: `${show.value.name} kept` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('course'));
}

async function withdraw(show: DataOf<'show-set'>): Promise<void> {
  const saved = await record(
    'show-set',
    { ...show, withdrawn: true },
    { says: `Withdrawn from ${show.name}` },
  );
  if (saved.status !== 'refused') go(pathTo('course'));
}
