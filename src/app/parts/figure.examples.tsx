import type { Example } from '../gallery/example.ts';
import { Figure } from './figure.tsx';

const why = {
  title: 'Protein of meal 3',
  sentences: [
    'Protein is spread evenly over the 3 meals still to come.',
    '126 g are left of the day, so each gets 42 g.',
  ],
  formula: 'protein of the meal = protein left ÷ meals left',
  inputs: [
    { name: 'Protein left', value: '126 g', from: 'target 210 g less 84 g eaten' },
    { name: 'Meals left', value: '3', from: 'until 22:30, at least 150 min apart' },
  ],
  source: 'Common practice, no source',
};

export const examples: readonly Example[] = [
  { name: 'a number with its unit', show: () => <Figure value={212} unit="g" /> },
  {
    name: 'sizes: line, normal, large, arm’s length',
    show: () => (
      <div class="row">
        <Figure value={212} unit="g" size="line" />
        <Figure value={212} unit="g" />
        <Figure value={81.4} unit="kg" decimals={1} size="large" />
        <Figure value={212} unit="g" size="reach" />
      </div>
    ),
  },
  {
    name: 'asked why, with what is not sure',
    show: () => (
      <Figure label="Maintenance" value={2680} unit="kcal" plusMinus={110} size="large" why={why} />
    ),
  },
  {
    name: 'asked why at arm’s length',
    show: () => <Figure label="Protein" value={42} unit="g" size="reach" why={why} />,
  },
  {
    name: 'a difference',
    show: () => (
      <div class="row">
        <Figure label="Since last week" value={-0.62} unit="kg" decimals={2} signed />
        <Figure label="Bench" value={2.5} unit="kg" decimals={1} signed />
      </div>
    ),
  },
  { name: 'not known', show: () => <Figure label="Sodium" value={undefined} unit="mg" /> },
];
