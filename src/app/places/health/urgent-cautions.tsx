import type { JSX } from 'preact';
import type { PanelCaution } from '#core/health/panel/reading.ts';
import { Caution } from '../../parts/caution.tsx';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';

/** What needs care now: first, alone, and read out at once. */
export function UrgentCautions({ cautions }: { readonly cautions: readonly PanelCaution[] }): JSX.Element {
  return (
    <>
      {cautions
        .filter(({ urgent }) => urgent)
        .map(({ words, source }) => (
          <Caution
            key={words}
            kind="urgent"
            words={say(words)}
            {...(source !== undefined && { source: sourceWords(source) })}
          />
        ))}
    </>
  );
}
