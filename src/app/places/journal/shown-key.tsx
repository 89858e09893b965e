import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Section } from '../../parts/section.tsx';
import { PrintButton } from '../../print/print-button.tsx';
import { PrintSheet } from '../../print/print-sheet.tsx';
import { today } from '../../state/clock.ts';
import { syncPhrase } from '../../state/sync.ts';
import { KeyWords } from './key-words.tsx';

const phrase = signal<string | undefined>(undefined);

/** Call when the key changes: the words shown are of the one before. */
export function hidePhrase(): void {
  phrase.value = undefined;
}

/** The key, to pair a second device with and to keep on paper; shown only when asked for. */
export function ShownKey(): JSX.Element {
  // Whoever leaves the screen leaves no key on it.
  useEffect(() => hidePhrase, []);
  const words = phrase.value;
  if (words === undefined)
    return (
      <Section title="A second device">
        <Button
          onPress={() => {
            void syncPhrase().then((found) => (phrase.value = found));
          }}
        >
          Show the phrase
        </Button>
      </Section>
    );
  return (
    <Section title="A second device" action={<Button onPress={hidePhrase}>Hide the phrase</Button>}>
      <div class="stack">
        <Caution
          title="Whoever has these words has the journal"
          words="Show them to no one else, send them through nobody, and keep the printed sheet where you keep papers."
        />
        <PrintSheet
          title="Recovery sheet of a Stagewright journal"
          date={today.value}
          version="the key in force"
        >
          <div class="stack">
            <p>
              Open the app on the second device, Journal, Devices, and type these words or read the square
              with its camera:
            </p>
            <KeyWords words={words} label="The phrase as a QR code" />
          </div>
        </PrintSheet>
        <PrintButton>Print the recovery sheet</PrintButton>
      </div>
    </Section>
  );
}
