import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { CheckScreen } from './check-screen.tsx';
import { CopiesScreen } from './copies-screen.tsx';
import { CorrectScreen } from './correct-screen.tsx';
import { DevicesScreen } from './devices-screen.tsx';
import { EntriesScreen } from './entries-screen.tsx';
import { EntryScreen } from './entry-screen.tsx';
import { LendScreen } from './lend-screen.tsx';
import { LentScreen } from './lent-screen.tsx';
import { LoanScreen } from './loan-screen.tsx';

/** Every entry: search, history, correct, remove, export, import, check. */
export default function JournalPlace({ path }: PlaceProps): JSX.Element {
  const [screen, id] = path;
  if (screen === 'entry' && id !== undefined) return <EntryScreen id={id} />;
  if (screen === 'correct' && id !== undefined) return <CorrectScreen id={id} />;
  if (screen === 'copies') return <CopiesScreen />;
  if (screen === 'devices') return <DevicesScreen />;
  if (screen === 'lent') return <LentScreen />;
  if (screen === 'lend') return <LendScreen />;
  if (screen === 'loan' && id !== undefined) return <LoanScreen id={id} />;
  if (screen === 'check') return <CheckScreen />;
  return <EntriesScreen />;
}
