import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { CardioScreen } from './cardio-screen.tsx';
import { ChangeScreen } from './change-screen.tsx';
import { DoneScreen } from './done-screen.tsx';
import { GymScreen } from './gym-screen.tsx';
import { LoadsScreen } from './loads-screen.tsx';
import { PainScreen } from './pain-screen.tsx';
import { SessionScreen } from './session-screen.tsx';
import { WeightsScreen } from './weights-screen.tsx';

/** The session, what lifting tells, loads and plates, machines, cardio. */
export default function GymPlace({ path }: PlaceProps): JSX.Element {
  const [screen, id = ''] = path;
  switch (screen) {
    case 'session':
      return <SessionScreen session={id} />;
    case 'change':
      return <ChangeScreen session={id} />;
    case 'done':
      return <DoneScreen session={id} />;
    case 'pain':
      return <PainScreen exercise={id} />;
    case 'cardio':
      return <CardioScreen />;
    case 'loads':
      return <LoadsScreen />;
    case 'weights':
      return <WeightsScreen />;
    default:
      return <GymScreen />;
  }
}
