import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { AfterwardsScreen } from './afterwards-screen.tsx';
import { CheckInScreen } from './check-in-screen.tsx';
import { CorrectScreen } from './correct-screen.tsx';
import { CourseScreen } from './course-screen.tsx';
import { DateScreen } from './date-screen.tsx';
import { DatesScreen } from './dates-screen.tsx';
import { LastWeekScreen } from './last-week-screen.tsx';
import { LayScreen } from './lay-screen.tsx';
import { RehearsalScreen } from './rehearsal-screen.tsx';
import { SheetScreen } from './sheet-screen.tsx';
import { ShowDayScreen } from './show-day-screen.tsx';
import { ShowScreen } from './show-screen.tsx';
import { StretchScreen } from './stretch-screen.tsx';

/** The show, where the course lands, the weekly check-in and the corrections, the last week and the way back. */
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
    case 'dates':
      return path[1] === undefined ? <DatesScreen /> : <DateScreen key={path[1]} id={path[1]} />;
    case 'last-week':
      return <LastWeekScreen />;
    case 'rehearsal':
      return <RehearsalScreen />;
    case 'show-day':
      return <ShowDayScreen part={path[1]} />;
    case 'afterwards':
      return <AfterwardsScreen />;
    default:
      return <CourseScreen />;
  }
}
