import type { Example } from '../gallery/example.ts';
import { Facts } from '../parts/facts.tsx';
import { PrintButton } from './print-button.tsx';
import { PrintSheet, StepBox } from './print-sheet.tsx';

export const examples: readonly Example[] = [
  {
    name: 'kitchen sheet',
    show: () => (
      <div class="stack">
        <PrintSheet title="Beef and onions" date="2027-03-01" version="3 portions of 174 g">
          <StepBox>Weigh the empty pan: 840 g</StepBox>
          <StepBox>Brown 680 g of minced beef</StepBox>
          <Facts items={[{ name: 'Protein', value: '41.9 g a portion' }]} />
        </PrintSheet>
        <PrintButton>Print the sheet</PrintButton>
      </div>
    ),
  },
];
