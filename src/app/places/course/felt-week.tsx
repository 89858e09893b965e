import type { JSX } from 'preact';
import { Caution } from '../../parts/caution.tsx';
import { Note } from '../../parts/note.tsx';
import { feltThisWeek } from '../../views/check-in-view.ts';
import { health } from '../../views/health-view.ts';
import './felt-week.css';

/** The week's daily notes beside the weeks before, and the screen for too little energy where it speaks. */
export function FeltWeek(): JSX.Element | null {
  const { measures } = feltThisWeek.value;
  const { screen } = health.value;
  const grave = screen?.level === 'see a physician' ? screen : undefined;
  if (measures.length === 0 && !grave) return null;
  return (
    <div class="stack">
      {grave && (
        <Caution
          title="Have it looked at by a physician before you take more food away"
          words={[...grave.signs.map(({ words }) => words), grave.caution]}
        />
      )}
      {measures.length > 0 && (
        <Note>Your daily notes of this week; scores you do not tap stand as they say.</Note>
      )}
      <ul class="felt-week">
        {measures.map(({ measure, words }) => (
          <li key={measure}>{words}</li>
        ))}
      </ul>
    </div>
  );
}
