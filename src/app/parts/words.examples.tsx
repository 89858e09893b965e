import type { Example } from '../gallery/example.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { EmptyState } from './empty-state.tsx';
import { Facts } from './facts.tsx';
import { Figure } from './figure.tsx';
import { Note } from './note.tsx';
import { SavedLine } from './saved-line.tsx';
import { Section } from './section.tsx';
import { Table } from './table.tsx';
import { Tag } from './tag.tsx';
import { UndoStrip } from './undo-strip.tsx';
import { WhyText } from './why-sheet.tsx';

export const examples: readonly Example[] = [
  {
    name: 'caution',
    show: () => (
      <Caution
        words="Cooked rice spoils fast when it cools slowly. Cool it within the hour and eat it within a day."
        source="Food Standards Agency, guidance on chilling"
      />
    ),
  },
  {
    name: 'urgent',
    show: () => (
      <Caution
        kind="urgent"
        words="Potassium of 6.4 mmol/L: call a doctor today, before you do anything else."
      />
    ),
  },
  {
    name: 'nothing yet',
    show: () => (
      <EmptyState
        title="Nothing cooked"
        words="Cook a batch: weigh what goes in raw, then the pan when it is done."
        action={<Button kind="next">Cook a batch</Button>}
      />
    ),
  },
  {
    name: 'facts',
    show: () => (
      <Facts
        items={[
          { name: 'Yield', value: <Figure value={62.9} unit="%" decimals={1} /> },
          { name: 'Use by', value: 'Thursday 4 March' },
        ]}
      />
    ),
  },
  {
    name: 'section, note and tags',
    show: () => (
      <Section title="Portions" detail="3 of 174 g" action={<Button>Weigh again</Button>}>
        <Note>Each holds 226.7 g of raw beef.</Note>
        <div class="row">
          <Tag>pinned</Tag>
          <Tag kind="next">next</Tag>
          <Tag kind="caution">use today</Tag>
        </div>
      </Section>
    ),
  },
  {
    name: 'saved, saving, not saved, perhaps',
    show: () => (
      <div class="stack">
        <SavedLine status="saved" />
        <SavedLine status="saving" />
        <SavedLine
          status="notSaved"
          words="2 entries wait. This device is full. Free some space, then save again."
        />
        <SavedLine status="maybeSaved" words="The tab was asleep. Save again to be sure." />
      </div>
    ),
  },
  {
    name: 'undo',
    show: () => <UndoStrip words="Meal at 12:30 logged" onUndo={() => undefined} onClose={() => undefined} />,
  },
  {
    name: 'table',
    show: () => (
      <Table
        caption="Per 100 g cooked"
        columns={[
          { key: 'name', label: 'Nutrient' },
          { key: 'batch', label: 'Batch', unit: 'g', numeric: true },
          { key: 'portion', label: 'Portion', unit: 'g', numeric: true },
        ]}
        rows={[
          { name: 'Protein', batch: '24.1', portion: '41.9' },
          { name: 'Carbohydrate', batch: '2.7', portion: '4.7' },
          { name: 'Fat', batch: '11.3', portion: '19.7' },
        ]}
      />
    ),
  },
  {
    name: 'reasons, as the sheet shows them',
    show: () => (
      <WhyText
        why={{
          title: 'Yield',
          sentences: ['The pan lost 308 g of water: 830 g went in, 522 g came out.'],
          formula: 'yield = cooked ÷ raw = 522 ÷ 830',
          inputs: [
            { name: 'Beef, minced', value: '680 g', from: 'weighed raw' },
            { name: 'Onion', value: '150 g', from: 'weighed raw' },
          ],
          uncertainty: 'The scale reads to 1 g, so 62.8 to 63.0 %.',
          source: 'Common practice, no source',
        }}
      />
    ),
  },
];
