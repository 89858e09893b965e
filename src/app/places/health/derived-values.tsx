import type { JSX } from 'preact';
import type { PanelReading } from '#core/health/panel/read-panel.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import { sourceWords } from '../../views/source-words.ts';
import { unitSign } from './lab-words.ts';

/** What follows from the values by published formulas; what must not be worked out, with the reason. */
export function DerivedValues({ reading }: { readonly reading: PanelReading }): JSX.Element | null {
  const { derived, withheld } = reading;
  if (derived.length + withheld.length === 0) return null;
  return (
    <Section title="Worked out from these" detail="tap a figure for its formula and source">
      <List>
        {derived.map((one) => (
          <ListRow
            key={one.key}
            title={one.name}
            detail={one.notes.join(' ')}
            figure={
              <Figure
                value={String(Number(one.value.toPrecision(3)))}
                unit={unitSign(one.unit)}
                size="line"
                label={one.name}
                labelHidden
                why={{
                  title: one.name,
                  sentences: ['Worked out from the values of this panel.', ...one.notes],
                  formula: one.formula,
                  source: sourceWords(one.source),
                }}
              />
            }
          />
        ))}
        {withheld.map(({ key, name, reason }) => (
          <ListRow key={key} title={name} detail={reason} figure={<Tag>not worked out</Tag>} />
        ))}
      </List>
    </Section>
  );
}
