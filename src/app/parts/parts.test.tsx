import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { TimeChart } from '../charts/time-chart.tsx';
import { Caution } from './caution.tsx';
import { Figure } from './figure.tsx';
import { NumberField } from './number-field.tsx';
import { RunRow } from './run-sheet.tsx';
import { ScaleDisplay } from './scale-display.tsx';
import { SpiritLevel } from './spirit-level.tsx';
import { TimeRule } from './time-rule.tsx';
import { closeWhy, openWhy, shownWhy } from './why.ts';
import { WhyText } from './why-sheet.tsx';

const text = (html: string): string =>
  html
    .replace(/<[^>]+>/g, '')
    .replace(/\s+/g, ' ')
    .trim();
const nothing = (): void => undefined;

describe('[LOOK-01] figures', () => {
  it('[LOOK-01] the number, what is not sure, the unit', () => {
    const html = renderToString(<Figure value={81.44} unit="kg" decimals={1} plusMinus={0.35} />);
    expect(text(html)).toBe('81.4 ± 0.4 kg');
  });

  it('[LOOK-01] what is not known is said, without a unit and never as zero', () => {
    expect(text(renderToString(<Figure value={undefined} unit="mg" label="Sodium" />))).toBe(
      'Sodium unknown',
    );
  });

  it('a number with reasons is a button that says what is asked', () => {
    const html = renderToString(
      <Figure value={42} unit="g" label="Protein" why={{ title: 'Protein', sentences: [] }} />,
    );
    expect(html).toMatch(/^<button type="button"/);
    expect(text(html)).toBe('Protein 42 g, why?');
  });
});

describe('reasons', () => {
  it('are shown and put away', () => {
    openWhy({ title: 'Yield', sentences: ['522 of 830 g.'] });
    expect(shownWhy.value?.title).toBe('Yield');
    closeWhy();
    expect(shownWhy.value).toBeUndefined();
  });

  it('hold sentences, formula, inputs, how sure, source, in this order', () => {
    const html = renderToString(
      <WhyText
        why={{
          title: 'Yield',
          sentences: ['Water left.'],
          formula: 'cooked ÷ raw',
          inputs: [{ name: 'Raw', value: '830 g', from: 'weighed' }],
          uncertainty: 'to 0.1 %.',
          source: ['One', 'Two'],
        }}
      />,
    );
    expect(text(html)).toBe('Water left.cooked ÷ rawRawweighed830 gHow sure: to 0.1 %.Source: One; Two');
  });
});

describe('[LOOK-04] fields', () => {
  it('[LOOK-04] a problem stands beside the field, is tied to it, and the value stays', () => {
    const html = renderToString(
      <NumberField
        label="Pan"
        unit="g"
        value={1900}
        onValue={nothing}
        problem="Pan: heavier than raw. Weigh again."
      />,
    );
    expect(html).toContain('aria-invalid');
    expect(html).toContain('value="1900"');
    expect(html).toMatch(/aria-describedby="[^"]+-problem"/);
    expect(text(html)).toContain('Pan: heavier than raw. Weigh again.');
  });

  it('[LOOK-02] the keypad has a decimal key only where decimals are', () => {
    const field = (decimals: number): string =>
      renderToString(<NumberField label="Mass" unit="kg" value={1} decimals={decimals} onValue={nothing} />);
    expect(field(0)).toContain('inputmode="numeric"');
    expect(field(2)).toContain('inputmode="decimal"');
  });
});

describe('[LOOK-08] words beside every sign', () => {
  it('[LOOK-08] cautions have their word, urgent ones are read at once', () => {
    expect(text(renderToString(<Caution words="Hot." source="Handbook" />))).toBe(
      'CautionHot.Source: Handbook',
    );
    expect(renderToString(<Caution kind="urgent" words="Go." />)).toContain('role="alert"');
    expect(text(renderToString(<Caution kind="urgent" words="Go." />))).toBe('Seek care nowGo.');
  });

  it('[LOOK-08] states of a row are words', () => {
    const row = (state: 'done' | 'next' | 'skipped' | 'changed'): string =>
      text(renderToString(<RunRow at={750} title="Meal 3" state={state} />));
    expect(row('done')).toBe('12:30Meal 3Done');
    expect(row('next')).toBe('12:30Meal 3Next');
    expect(row('skipped')).toBe('12:30Meal 3Skipped');
    expect(row('changed')).toBe('12:30Meal 3Changed');
  });

  it('[LOOK-10] a level is read without its drawing', () => {
    expect(
      text(renderToString(<SpiritLevel label="Protein" off={-12} unit="g" within={5} span={40} />)),
    ).toBe('Protein12 g short');
  });

  it('[LOOK-08] the rule of the day is read as a list', () => {
    const html = renderToString(
      <TimeRule
        wake={390}
        sleep={1350}
        now={755}
        marks={[{ at: 990, until: 1080, label: 'Training', kind: 'training', state: 'planned' }]}
      />,
    );
    expect(text(html)).toContain('Now 12:3516:30 to 18:00 Training, planned');
  });
});

describe('weighing', () => {
  it('shows the item large and the bowl small, or the other way round', () => {
    const item = renderToString(<ScaleDisplay item="Rice" addG={212} totalG={462} show="item" />);
    const total = renderToString(<ScaleDisplay item="Rice" addG={212} totalG={462} show="total" />);
    expect(text(item)).toBe('RiceAdd212 gBowl then holds 462 g');
    expect(text(total)).toBe('RicePour until it shows462 gOf this item 212 g');
  });
});

describe('[LOOK-09] charts', () => {
  const html = renderToString(
    <TimeChart
      title="Body mass"
      unit="kg"
      sentence="Down 1 kg."
      dots={[{ name: 'Weighed', points: [{ day: 20822, value: 82.1 }] }]}
      lines={[
        {
          name: 'Plan',
          look: 'dashed',
          points: [
            { day: 20822, value: 82 },
            { day: 20829, value: 81 },
          ],
        },
      ]}
    />,
  );

  it('[LOOK-09] is named, says its sentence, and holds its numbers as a table', () => {
    expect(html).toContain('<title');
    expect(html).toContain('<desc');
    expect(html.match(/Down 1 kg\./g)).toHaveLength(2);
    expect(text(html)).toContain('Mon 4 Jan82.182.0');
  });

  it('[LOOK-08] what is planned is dashed', () => {
    expect(html).toContain('plot-line plot-dashed');
  });

  it('[LOOK-09] an empty chart still draws its axes', () => {
    const empty = renderToString(<TimeChart title="Folds" unit="mm" sentence="Nothing measured yet." />);
    expect(empty).not.toMatch(/NaN|Infinity/);
    expect(empty).toContain('plot-axis');
  });
});
