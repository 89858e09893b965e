import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { which } from '../../state/journals.ts';
import { beginSync, changeKey, joinSync, leaveSync, syncing, syncNow } from '../../state/sync.ts';
import { problemAt } from '../../views/problem-at.ts';
import { clockOf } from './clock-of.ts';
import { hidePhrase, ShownKey } from './shown-key.tsx';

const problems = signal<readonly Problem[]>([]);
const busy = signal(false);

/** Two devices in step, through a server that cannot read what it keeps. Off unless asked for. */
export function DevicesScreen(): JSX.Element {
  const back = pathTo('journal');
  if (which.value === 'demo')
    return (
      <Page title="Devices" back={back}>
        <EmptyState
          title="The invented athlete stays on this device"
          words="Start a journal of your own to keep it in step on two devices."
        />
      </Page>
    );
  return (
    <Page title="Devices" back={back}>
      {syncing.value.status === 'off' ? <Off /> : <On />}
    </Page>
  );
}

function Off(): JSX.Element {
  return (
    <>
      <Note>
        Nothing leaves this device. If you want the journal on a second one, this server can pass it on:
        sealed on this device with a key that the server never has, so that it can neither read nor change
        what it keeps.
      </Note>
      <Join />
      <ActionBar>
        <Button kind="next" records wide disabled={busy.value} onPress={() => void whileBusy(beginSync)}>
          Make a key and begin
        </Button>
      </ActionBar>
    </>
  );
}

function Join(): JSX.Element {
  const key = 'journal/join';
  const typed = draft(key, v.strictObject({ phrase: v.string() }), { phrase: '' });
  const join = async (): Promise<void> => {
    const joined = await joinSync(typed.value.phrase);
    problems.value = joined.ok ? [] : [joined.problem];
    if (joined.ok) clearDraft(key);
  };
  return (
    <Section title="Join a journal that another device has">
      <Form onSubmit={() => void whileBusy(join)} problems={problems.value}>
        <div class="stack">
          <TextField
            label="Phrase"
            hint="The 24 words that the other device shows under Journal, Devices"
            lines={3}
            value={typed.value.phrase}
            onValue={(phrase) => (typed.value = { phrase })}
            problem={problemAt(problems.value, 'phrase')}
          />
          <Button submits records disabled={busy.value}>
            Join
          </Button>
        </div>
      </Form>
    </Section>
  );
}

function On(): JSX.Element {
  return (
    <>
      <Section title="How they stand">
        <Standing />
      </Section>
      <ShownKey />
      <Section title="A lost device, or enough of it">
        <div class="stack">
          <Note>
            A new key moves the sealed journal to a new place: a device that was lost hears no more of it.
            What it holds already stays on it. Devices of yours join again with the new phrase.
          </Note>
          <div class="row">
            <Button records disabled={busy.value} onPress={() => void whileBusy(newKey)}>
              Make a new key
            </Button>
            <Button records onPress={leaveSync}>
              Stop on this device
            </Button>
          </div>
        </div>
      </Section>
      <ActionBar>
        <Button kind="next" records wide disabled={busy.value} onPress={() => void whileBusy(syncNow)}>
          Bring in step now
        </Button>
      </ActionBar>
    </>
  );
}

function Standing(): JSX.Element {
  const now = syncing.value;
  if (now.status === 'apart') return <Caution title={now.problem.message} words={now.problem.remedy} />;
  if (now.status !== 'in step') return <p>Bringing the devices together …</p>;
  return (
    <>
      <p>{`In step at ${clockOf(now.atMs)}: everything written here is on the server, and everything there is here.`}</p>
      {now.problems.map((problem) => (
        <Caution key={problem.path} title={problem.message} words={problem.remedy} />
      ))}
    </>
  );
}

function newKey(): Promise<void> {
  hidePhrase();
  return changeKey();
}

async function whileBusy(work: () => Promise<void>): Promise<void> {
  busy.value = true;
  try {
    await work();
  } finally {
    busy.value = false;
  }
}
