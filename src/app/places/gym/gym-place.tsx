import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { CardioScreen } from './cardio-screen.tsx';
import { ChangeScreen } from './change-screen.tsx';
import { DayScreen } from './day-screen.tsx';
import { DaysScreen } from './days-screen.tsx';
import { DescribeScreen } from './describe-screen.tsx';
import { DoneScreen } from './done-screen.tsx';
import { ExerciseScreen } from './exercise-screen.tsx';
import { ExercisesScreen } from './exercises-screen.tsx';
import { GymScreen } from './gym-screen.tsx';
import { LoadsScreen } from './loads-screen.tsx';
import { MachineScreen } from './machine-screen.tsx';
import { MachinesScreen } from './machines-screen.tsx';
import { PainScreen } from './pain-screen.tsx';
import { SessionScreen } from './session-screen.tsx';
import { SlotScreen } from './slot-screen.tsx';
import { VolumeScreen } from './volume-screen.tsx';
import { WeightsScreen } from './weights-screen.tsx';

/** The session, what lifting tells, loads and plates, machines, cardio. */
export default function GymPlace({ path }: PlaceProps): JSX.Element {
  const [screen, id = '', part] = path;
  switch (screen) {
    case 'session':
      return <SessionScreen key={id} session={id} />;
    case 'change':
      return <ChangeScreen key={id} session={id} />;
    case 'pain':
      return <PainScreen key={id} exercise={id} />;
    case 'done':
      return <DoneScreen key={id} session={id} />;
    case 'machines':
      return <MachinesScreen />;
    case 'machine':
      return <MachineScreen key={id} id={id} />;
    case 'describe':
      return <DescribeScreen key={id} id={id} />;
    case 'exercises':
      return <ExercisesScreen />;
    case 'exercise':
      return <ExerciseScreen key={id} id={id} />;
    case 'templates':
      return <DaysScreen />;
    case 'template':
      return part === undefined ? (
        <DayScreen key={id} id={id} />
      ) : (
        <SlotScreen key={part} id={id} slot={part} />
      );
    case 'volume':
      return <VolumeScreen />;
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
