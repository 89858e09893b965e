import type { JSX } from 'preact';
import { signal } from '@preact/signals';
import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { gym, training } from '../../views/training-view.ts';

const SIGNS = ['numbness', 'swelling', 'locking', 'giving way', 'night pain', 'sudden pop'] as const;
type Sign = (typeof SIGNS)[number];

const painDraft = v.strictObject({
  joint: v.optional(v.string(), ''),
  side: v.optional(v.picklist(['left', 'right', 'neither'])),
  score: v.optional(v.number()),
  signs: v.optional(v.array(v.picklist(SIGNS)), []),
  words: v.optional(v.string(), ''),
});
type PainDraft = v.InferOutput<typeof painDraft>;

const problems = signal<readonly Problem[]>([]);

/** Pain or a joint's complaint at an exercise; it is shown the next time the exercise comes up. */
export function PainScreen({ exercise }: { readonly exercise: string }): JSX.Element {
  const key = `gym/pain/${exercise}`;
  const typed = draft(key, painDraft, { joint: '', signs: [], words: '' });
  const name = exercise === '' ? undefined : gym.value.log.book.exercise(exercise).name;
  const change = (part: Partial<PainDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="Note pain" detail={name} back={pathTo('gym')} busy>
      <Form onSubmit={() => void keep(typed.value, exercise, key)} problems={problems.value}>
        <PainFields typed={typed.value} change={change} />
        <Caution
          title="Pain is not a measure of work"
          words="This tool diagnoses nothing. Sharp, sudden, spreading or lasting pain, and any of the signs above, belong before a clinician."
        />
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this note
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: PainDraft;
  readonly change: (part: Partial<PainDraft>) => void;
}

function PainFields({ typed, change }: FieldsProps): JSX.Element {
  const toggle = (sign: Sign, on: boolean): void =>
    change({ signs: on ? [...typed.signs, sign] : typed.signs.filter((other) => other !== sign) });
  return (
    <>
      <Section title="Where and how much">
        <div class="stack">
          <TextField
            label="Joint or place"
            value={typed.joint}
            onValue={(joint) => change({ joint })}
            problem={problemAt(problems.value, 'joint')}
          />
          <ChoiceField
            label="Side"
            layout="row"
            value={typed.side}
            options={[
              { value: 'left', label: 'left' },
              { value: 'right', label: 'right' },
              { value: 'neither', label: 'neither' },
            ]}
            onValue={(side) => change({ side })}
          />
          <StepperField
            label="How much"
            hint="0 gone, 10 the worst there can be"
            value={typed.score}
            step={1}
            min={0}
            max={10}
            onValue={(score) => change({ score })}
            problem={problemAt(problems.value, 'score')}
          />
          <TextField
            label="In your words"
            value={typed.words}
            onValue={(words) => change({ words })}
            optional
          />
        </div>
      </Section>
      <Section title="With it">
        {SIGNS.map((sign) => (
          <CheckField
            key={sign}
            label={sign}
            checked={typed.signs.includes(sign)}
            onChecked={(on) => toggle(sign, on)}
          />
        ))}
      </Section>
    </>
  );
}

async function keep(typed: PainDraft, exercise: string, key: string): Promise<void> {
  const missing = whatIsMissing(typed);
  if (missing) {
    problems.value = [missing];
    return;
  }
  const open = training.peek().open?.session;
  const data: DataOf<'pain-noted'> = {
    joint: typed.joint.trim(),
    score: typed.score ?? 0,
    ...(typed.side !== undefined && typed.side !== 'neither' && { side: typed.side }),
    ...(typed.signs.length > 0 && { signs: [...typed.signs] }),
    ...(typed.words.trim() !== '' && { words: typed.words.trim() }),
    ...(exercise !== '' && { exercise }),
    ...(open !== undefined && { session: open }),
  };
  const saved = await record('pain-noted', data, { says: 'Pain noted' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(open === undefined ? pathTo('gym') : pathTo('gym', 'session', open));
}

function whatIsMissing({ joint, score }: PainDraft): Problem | undefined {
  if (joint.trim() === '')
    return {
      code: 'gym/no-joint',
      path: 'joint',
      message: 'It is not said where it hurts.',
      remedy: 'Name the joint or the place: knee, lower back, elbow.',
    };
  if (score === undefined)
    return {
      code: 'gym/no-score',
      path: 'score',
      message: 'It is not said how much it hurts.',
      remedy: 'Choose a number from 0 (gone) to 10.',
    };
  return undefined;
}
