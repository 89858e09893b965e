import type { JSX } from 'preact';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import type { Spread } from '#core/course/quantiles.ts';
import { dateWords } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { PlumbLine } from '../../parts/plumb-line.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { massUnit } from '../../views/mass-units.ts';
import { chanceWords, courseWhy, VERDICTS } from './course-words.ts';

interface LandingProps {
  readonly ask: CourseAsk;
  readonly now: CourseNow;
}

/** Where it lands beside the mark, the chance to meet the target, and the verdict. */
export function Landing({ ask, now }: LandingProps): JSX.Element {
  const { answer } = now;
  const verdict = VERDICTS[answer.verdict];
  const why = () => courseWhy(now, `Where it lands on ${dateWords(ask.show.date)}`);
  return (
    <Section title={verdict.title} detail={verdict.words}>
      <div class="stack">
        <Plumb ask={ask} now={now} />
        <div class="row">
          <Figure
            value={chanceWords(answer.probability)}
            label="Chance to meet the target"
            size="large"
            why={why}
          />
        </div>
        <Held now={now} />
        <WhyButton why={why}>{`Why ${verdict.title.toLowerCase()}?`}</WhyButton>
      </div>
    </Section>
  );
}

function Plumb({ ask, now }: LandingProps): JSX.Element {
  const { bodyFatPercent, massKg } = ask.target;
  const { arrival } = now.answer;
  const { unit, shown } = massUnit.value;
  const why = () => courseWhy(now, 'Where it lands');
  if (bodyFatPercent)
    return (
      <PlumbLine
        label="Body fat on the day"
        unit="%"
        decimals={1}
        {...scaleOf(arrival.bodyFatPercent, bodyFatPercent.max)}
        landing={landingOf(arrival.bodyFatPercent)}
        mark={{ value: bodyFatPercent.max, words: 'at most' }}
        sentence={landingWords(arrival.bodyFatPercent, bodyFatPercent.max, '%')}
        why={why}
      />
    );
  const bound = massKg?.max ?? massKg?.min ?? arrival.massKg.mean;
  const mass = {
    mean: shown(arrival.massKg.mean),
    q05: shown(arrival.massKg.q05),
    q95: shown(arrival.massKg.q95),
  };
  return (
    <PlumbLine
      label="Body mass on the day"
      unit={unit}
      decimals={1}
      {...scaleOf(mass, shown(bound))}
      landing={landingOf(mass)}
      mark={{ value: shown(bound), words: massKg?.max === undefined ? 'at least' : 'at most' }}
      sentence={landingWords(mass, shown(bound), unit)}
      why={why}
    />
  );
}

function landingOf({ mean, q05, q95 }: Spread): { mean: number; low: number; high: number } {
  return { mean, low: q05, high: q95 };
}

/** Round ends that hold the interval and the mark. */
function scaleOf({ q05, q95 }: Spread, mark: number): { from: number; to: number } {
  return { from: Math.floor(Math.min(q05, mark) - 0.5), to: Math.ceil(Math.max(q95, mark) + 0.5) };
}

function landingWords({ mean, q05, q95 }: Spread, mark: number, unit: string): string {
  const off = mean - mark;
  const where =
    Math.abs(off) < 0.05
      ? 'Lands on the mark'
      : `Lands ${Math.abs(off).toFixed(1)} ${off > 0 ? 'above' : 'below'} the mark`;
  return `${where}; 9 times of 10 between ${q05.toFixed(1)} and ${q95.toFixed(1)} ${unit}.`;
}

/** The newest day against the course as it was laid. */
function Held({ now }: { readonly now: CourseNow }): JSX.Element | null {
  const last = now.held.at(-1);
  const { unit, shown } = massUnit.value;
  if (!last) return null;
  const way = last.massAheadKg >= 0 ? 'ahead of' : 'behind';
  const size = `${Math.abs(shown(last.massAheadKg)).toFixed(1)} ${unit}`;
  return (
    <Note>
      {last.beyondNoise
        ? `Body mass is ${size} ${way} the course as laid, beyond noise.`
        : `Body mass is ${size} ${way} the course as laid: within noise.`}
    </Note>
  );
}
