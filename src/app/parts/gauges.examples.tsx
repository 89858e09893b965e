import type { Example } from '../gallery/example.ts';
import { PlumbLine } from './plumb-line.tsx';
import { SpiritLevel } from './spirit-level.tsx';
import { TimeRule } from './time-rule.tsx';

export const examples: readonly Example[] = [
  {
    name: 'level: on target',
    show: () => <SpiritLevel label="Protein" detail="of 210 g" off={2} unit="g" within={5} span={40} />,
  },
  {
    name: 'level: short',
    show: () => (
      <SpiritLevel label="Carbohydrate" detail="of 240 g" off={-23} unit="g" within={5} span={40} />
    ),
  },
  {
    name: 'level: far over',
    show: () => <SpiritLevel label="Fat" detail="of 52 g" off={31} unit="g" within={3} span={25} />,
  },
  {
    name: 'plumb line: beside the mark',
    show: () => (
      <PlumbLine
        label="Body fat on show day"
        unit="%"
        from={3}
        to={9}
        landing={{ mean: 6.3, low: 5.1, high: 7.6 }}
        mark={{ value: 5.5, words: 'mark' }}
        sentence="Lands 0.8 above the mark; 9 times of 10 between 5.1 and 7.6 %."
        why={{
          title: 'Body fat on show day',
          sentences: ['The planned weeks were run 2000 times from today’s estimate.'],
        }}
      />
    ),
  },
  {
    name: 'the day on the rule',
    show: () => (
      <TimeRule
        wake={390}
        sleep={1370}
        now={790}
        marks={[
          { at: 420, until: 460, label: 'Walk', kind: 'cardio', state: 'done' },
          { at: 480, label: 'Meal 1', kind: 'meal', state: 'done' },
          { at: 825, label: 'Meal 2', kind: 'meal', state: 'next' },
          { at: 990, until: 1080, label: 'Training', kind: 'training', state: 'planned' },
          { at: 1110, label: 'Meal 3', kind: 'meal', state: 'planned' },
          { at: 1290, label: 'Meal 4', kind: 'meal', state: 'planned' },
        ]}
      />
    ),
  },
];
