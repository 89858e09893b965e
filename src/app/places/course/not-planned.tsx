import type { JSX } from 'preact';
import { redFlags, refusedPractices } from '#core/limits/refused-practices.ts';
import { Caution } from '../../parts/caution.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { sourceWords } from '../../views/source-words.ts';

/** What the tool refuses to plan, why, and what it has done to people; and when to stop everything. */
export function NotPlanned(): JSX.Element {
  return (
    <Section title="Not planned here, whoever advises it">
      <div class="stack">
        <Caution
          title="Stop, and call emergency care, at any of these"
          words={[
            `${capital(redFlags.join('; '))}.`,
            'Say what was eaten, drunk and taken. No show is worth waiting.',
          ]}
        />
        <List label="Not planned">
          {refusedPractices.map(({ practice, why, hazard, source }) => (
            <ListRow
              key={practice}
              title={practice}
              detail={
                <>
                  {why} <strong>{hazard}</strong>{' '}
                  <span class="soft">{`Source: ${sourceWords(source)}.`}</span>
                </>
              }
            />
          ))}
        </List>
      </div>
    </Section>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
