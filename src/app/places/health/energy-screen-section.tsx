import type { JSX } from 'preact';
import type { EnergyScreen } from '#core/health/recovery/energy-screen.ts';
import { Caution } from '../../parts/caution.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { health } from '../../views/health-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';

const LEVELS: Readonly<Record<EnergyScreen['level'], string>> = {
  'see a physician': 'Have it looked at by a physician',
  watch: 'Signs to watch',
  'nothing noted': 'No sign is noted',
  'too little noted': 'Too little is noted to say anything',
};

/** Signs of too little energy by published criteria: a reason to see a physician, never a diagnosis. */
export function EnergyScreenSection(): JSX.Element | null {
  const { screen } = health.value;
  if (!screen) return null;
  const grave = screen.level === 'see a physician';
  return (
    <Section title="Too little energy?" detail="a screen by published criteria, no score">
      <div class="stack">
        {grave ? (
          <Caution title={LEVELS[screen.level]} words={screen.caution} />
        ) : (
          <p>{`${LEVELS[screen.level]}.`}</p>
        )}
        {screen.signs.length > 0 && (
          <List label="Signs">
            {screen.signs.map(({ sign, words, source }) => (
              <ListRow key={sign} title={say(words)} detail={sourceWords(source)} />
            ))}
          </List>
        )}
        {screen.notLookedAt.length > 0 && (
          <Note>{`Not known, so not looked at: ${screen.notLookedAt.join('; ')}.`}</Note>
        )}
        {!grave && <Note>{screen.caution}</Note>}
      </div>
    </Section>
  );
}
