import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { BodyScreen } from './body-screen.tsx';
import { CycleScreen } from './cycle-screen.tsx';
import { FatScreen } from './fat-screen.tsx';
import { FoldsScreen } from './folds-screen.tsx';
import { IntakeScreen } from './intake-screen.tsx';
import { PhotosScreen } from './photos-screen.tsx';
import { TapeScreen } from './tape-screen.tsx';
import { WeighInScreen } from './weigh-screen.tsx';

/** Weigh-ins, folds, tape, photographs, and what they say together. */
export default function BodyPlace({ path }: PlaceProps): JSX.Element {
  switch (path[0]) {
    case 'weigh':
      return <WeighInScreen />;
    case 'folds':
      return <FoldsScreen />;
    case 'tape':
      return <TapeScreen />;
    case 'photos':
      return <PhotosScreen />;
    case 'fat':
      return <FatScreen />;
    case 'cycle':
      return <CycleScreen />;
    case 'intake':
      return <IntakeScreen key={path[1]} day={path[1]} />;
    default:
      return <BodyScreen />;
  }
}
