import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { CheckInScreen } from './check-in-screen.tsx';
import { CorrectScreen } from './correct-screen.tsx';
import { CourseScreen } from './course-screen.tsx';
import { LayScreen } from './lay-screen.tsx';
import { SheetScreen } from './sheet-screen.tsx';
import { ShowScreen } from './show-screen.tsx';
import { StretchScreen } from './stretch-screen.tsx';

/** The show, where the course lands, the weekly check-in and the corrections. */
export default function CoursePlace({ path }: PlaceProps): JSX.Element {
  switch (path[0]) {
    case 'show':
      return <ShowScreen key={path[1]} id={path[1]} />;
    case 'lay':
      return <LayScreen />;
    case 'correct':
      return <CorrectScreen />;
    case 'stretch':
      return <StretchScreen />;
    case 'check-in':
      return <CheckInScreen />;
    case 'sheet':
      return <SheetScreen />;
    default:
      return <CourseScreen />;
  }
}
