import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { CardioScreen } from './cardio-screen.tsx';
import { GymScreen } from './gym-screen.tsx';
import { LoadsScreen } from './loads-screen.tsx';
import { WeightsScreen } from './weights-screen.tsx';

/** The session, loads and plates, machines, cardio. */
export default function GymPlace({ path }: PlaceProps): JSX.Element {
  switch (path[0]) {
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
