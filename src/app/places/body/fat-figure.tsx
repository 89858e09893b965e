import type { JSX } from 'preact';
import type { FatReading } from '#core/cycle/measured-fat.ts';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { sourceWords } from '../../views/source-words.ts';

/** What folds or tape come to as body fat, with its equation; or what is lacking for that. */
export function FatFigure({ reading }: { readonly reading: FatReading }): JSX.Element {
  if ('lacking' in reading) return <Note>{reading.lacking}</Note>;
  const { percent, by, source } = reading;
  return (
    <Figure
      value={percent}
      unit="%"
      decimals={1}
      label={`Body fat by ${by}`}
      why={{
        title: `Body fat by ${by}`,
        sentences: [
          'The equation gives body density, and Siri turns density into fat.',
          'For one person it is off by two to four points, always to the same side. The estimate learns that bias from all your readings, so that the trend counts more than the level.',
        ],
        formula: 'body fat = 495 / density - 450',
        source: [sourceWords(source), sourceWords('siri-1961')],
        uncertainty: 'Two readings of one day by the same hand differ by about one point.',
      }}
    />
  );
}
