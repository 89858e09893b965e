import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { DoseScreen } from './dose-screen.tsx';
import { DrinkScreen } from './drink-screen.tsx';
import { EatScreen } from './eat-screen.tsx';
import { RunSheetScreen } from './run-sheet-screen.tsx';
import { ShapeScreen } from './shape-screen.tsx';
import { TargetsScreen } from './targets-screen.tsx';
import { WeighScreen } from './weigh-screen.tsx';
import { WishesScreen } from './wishes-screen.tsx';

/** The run sheet and what is done from it. */
export default function DayPlace({ path }: PlaceProps): JSX.Element {
  const [screen, slot] = path;
  switch (screen) {
    case 'weigh':
      return <WeighScreen slot={slot ?? ''} />;
    case 'eat':
      return <EatScreen slot={slot} />;
    case 'shape':
      return <ShapeScreen />;
    case 'targets':
      return <TargetsScreen />;
    case 'wishes':
      return <WishesScreen />;
    case 'doses':
      return <DoseScreen group={slot ?? ''} />;
    case 'drink':
      return <DrinkScreen />;
    default:
      return <RunSheetScreen />;
  }
}
