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
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { book, gymDay } from '../../views/gym-view.ts';
import { problemAt } from '../../views/problem-at.ts';

type PainNoted = DataOf<'pain-noted'>;
type Sign = NonNullable<PainNoted['signs']>[number];
const SIGNS = [
  'numbness',
  'swelling',
  'locking',
  'giving way',
  'night pain',
  'sudden pop',
] as const satisfies readonly Sign[];
const SIDES = ['left', 'right', 'both'] as const;

const painDraft = v.strictObject({
  joint: v.string(),
  side: v.picklist(SIDES),
  score: v.optional(v.number()),
  signs: v.array(v.picklist(SIGNS)),
  words: v.string(),
});

type PainDraft = v.InferOutput<typeof painDraft>;

const problem = signal<Problem | undefined>(undefined);

/** Pain or a joint's complaint at an exercise, told when it comes up again. */
export function PainScreen({ exercise }: { readonly exercise: string }): JSX.Element {
  const { name, caution } = book.value.exercise(exercise);
  const typed = draft(keyOf(exercise), painDraft, {
    joint: caution?.joint ?? '',
    side: caution?.side ?? 'both',
    signs: [],
    words: '',
  });
  const change = (part: Partial<PainDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const { open } = gymDay.value;
  const back = open ? pathTo('gym', 'session') : pathTo('gym', 'exercise', exercise);
  return (
    <Page title="Note pain" detail={`at ${name}`} back={back} busy>
      <WhereFields typed={typed.value} change={change} />
      <SignFields typed={typed.value} change={change} />
      <ActionBar>
        <Button kind="next" records wide onPress={() => void keep(exercise, typed.value, back)}>
          Keep this note
        </Button>
      </ActionBar>
    </Page>
  );
}

interface PainFieldsProps {
  readonly typed: PainDraft;
  readonly change: (part: Partial<PainDraft>) => void;
}

function WhereFields({ typed, change }: PainFieldsProps): JSX.Element {
  const problems = problem.value ? [problem.value] : [];
  return (
    <Section title="Where and how much">
      <TextField
        label="Joint or place"
        hint="knee, lower back, front of the shoulder"
        value={typed.joint}
        onValue={(joint) => change({ joint })}
        problem={problemAt(problems, 'joint')}
      />
      <ChoiceField
        label="Side"
        layout="row"
        value={typed.side}
        options={SIDES.map((value) => ({ value, label: value }))}
        onValue={(side) => change({ side })}
      />
      <StepperField
        label="How bad, 0 gone to 10 worst"
        step={1}
        min={0}
        max={10}
        value={typed.score}
        onValue={(score) => change({ score })}
        problem={problemAt(problems, 'score')}
      />
      <TextField
        label="In your words"
        value={typed.words}
        onValue={(words) => change({ words })}
        lines={2}
        optional
      />
    </Section>
  );
}

function SignFields({ typed, change }: PainFieldsProps): JSX.Element {
  return (
    <Section title="Any of these" detail="signs that are never waited out">
      {SIGNS.map((sign) => (
        <CheckField
          key={sign}
          label={sign}
          checked={typed.signs.includes(sign)}
          onChecked={(on) =>
            change({
              signs: on ? [...typed.signs, sign] : typed.signs.filter((other) => other !== sign),
            })
          }
        />
      ))}
      {typed.signs.length > 0 && (
        <Caution
          kind="urgent"
          title="Have it looked at"
          words="Leave this exercise out and see a doctor or physiotherapist before the next heavy set. This tool diagnoses nothing."
        />
      )}
      <Note>
        A note is no diagnosis. Repeated, it holds the load lower; persisting pain belongs to a clinician.
      </Note>
    </Section>
  );
}

async function keep(exercise: string, typed: PainDraft, back: string): Promise<void> {
  const { joint, side, score, signs, words } = typed;
  problem.value = faultOf(joint, score);
  if (problem.value || score === undefined) return;
  const { open } = gymDay.value;
  const saved = await record(
    'pain-noted',
    {
      joint: joint.trim(),
      score,
      exercise,
      ...(side !== 'both' && { side }),
      ...(open && { session: open.session }),
      ...(signs.length > 0 && { signs: [...signs] }),
      ...(words.trim() !== '' && { words: words.trim() }),
    },
    { says: `Noted at ${book.value.exercise(exercise).name}` },
  );
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
  if (saved.status === 'refused') return;
  clearDraft(keyOf(exercise));
  go(back);
}

function keyOf(exercise: string): string {
  return `gym/pain/${exercise}`;
}

function faultOf(joint: string, score: number | undefined): Problem | undefined {
  if (joint.trim() === '')
    return {
      code: 'gym/no-joint',
      path: 'joint',
      message: 'The place has no name.',
      remedy: 'Enter where it hurts.',
    };
  if (score !== undefined) return undefined;
  return {
    code: 'gym/no-score',
    path: 'score',
    message: 'It is not said how bad it is.',
    remedy: 'Enter 0 to 10.',
  };
}
