import type { JSX } from 'preact';
import { redFlags, refusedPractices } from '#core/limits/refused-practices.ts';
import { capital } from '#core/units/capital.ts';
import { Caution } from '../../parts/caution.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import type { Why } from '../../parts/why.ts';
import { WhyButton } from '../../parts/why-button.tsx';
import { sourceWords } from '../../views/source-words.ts';

/** What the tool refuses to plan, why, and what it has done to people; and when to stop everything. */
export function NotPlanned(): JSX.Element {
  return (
    <Section
      title="Not planned here, whoever advises it"
      action={<WhyButton why={sourcesOfRefusals}>Sources</WhyButton>}
    >
      <div class="stack">
        <Caution
          title="Stop, and call emergency care, at any of these"
          words={[
            `${capital(redFlags.join('; '))}.`,
            'Say what was eaten, drunk and taken. No show is worth waiting.',
          ]}
        />
        <List label="Not planned">
          {refusedPractices.map(({ practice, why, hazard }) => (
            <ListRow
              key={practice}
              title={practice}
              detail={
                <>
                  {why} <strong>{hazard}</strong>
                </>
              }
            />
          ))}
        </List>
      </div>
    </Section>
  );
}

function sourcesOfRefusals(): Why {
  return {
    title: 'What these rest on',
    sentences: refusedPractices.map(({ practice, why, hazard }) => `${practice}: ${why} ${hazard}`),
    source: [...new Set(refusedPractices.map(({ source }) => sourceWords(source)))],
  };
}
