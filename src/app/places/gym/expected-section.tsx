import type { JSX } from 'preact';
import { whatToBeat, type WhatToBeat } from '#core/gym/beat/what-to-beat.ts';
import { nextFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad, withFigure } from '#core/gym/loads/shift-load.ts';
import type { SetDone } from '#core/gym/session/counted-sets.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { today } from '../../state/clock.ts';
import { loadDecimals, loadUnit } from '../../views/load-units.ts';
import { sourceWords } from '../../views/source-words.ts';
import { book, gym } from '../../views/training-view.ts';
import { loadWords } from './gym-words.ts';

/** So many steps of the place's weights to either side of the last load. */
const STEPS = 4;

interface Expected {
  readonly load: SetLoad;
  readonly x: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** Repetitions to failure that a fresh set would allow today, over the loads around the last one. */
export function ExpectedSection({ exercise }: { readonly exercise: string }): JSX.Element | null {
  const last = gym.value.log.hardSets.findLast(({ data }) => data.exercise === exercise);
  if (!last) return null;
  const beat = freshSet(last);
  const points = loadsAround(last.data.load).flatMap((load) => expectedAt(beat, load));
  const [first] = points;
  const end = points.at(-1);
  if (!first || !end || first === end) return null;
  const side = last.data.side === undefined ? '' : `, ${last.data.side} side`;
  return (
    <Section title="Today, fresh" detail={`repetitions to failure${side}`}>
      <CurveChart
        title="Expected repetitions over the load"
        sentence={`From ${first.median} with ${loadWords(first.load)} to ${end.median} with ${loadWords(end.load)}.`}
        x={{
          label: `load, ${loadUnit.value.unit}`,
          unit: '',
          decimals: Math.max(...points.map(({ x }) => loadDecimals(x))),
        }}
        y={{ label: 'repetitions', unit: 'repetitions' }}
        lines={[
          { name: 'expected', look: 'solid', points: points.map(({ x, median }) => ({ x, y: median })) },
        ]}
        bands={[{ name: 'nine sets of ten', points: points.map(({ x, low, high }) => ({ x, low, high })) }]}
      />
      <div class="row">
        <WhyButton
          why={() => ({
            title: 'Expected repetitions',
            sentences: beat.why,
            source: ['nuzzo-2024', 'helms-2017'].map(sourceWords),
            uncertainty: 'The band held nine sets of ten on simulated lifters whose strength is known.',
          })}
        >
          Where does this come from?
        </WhyButton>
      </div>
    </Section>
  );
}

/** A working set that nothing came before, in no session yet. */
function freshSet({ data }: SetDone): WhatToBeat {
  const { log } = gym.value;
  const exercise = log.book.exercise(data.exercise);
  return whatToBeat(log, {
    exercise,
    set: 'working',
    number: 1,
    side: data.side,
    machine: data.load.of === 'pegs' || data.load.of === 'stack' ? data.load.machine : exercise.machine,
    session: '',
    dayNumber: parseDate(today.value) ?? 0,
    before: 0,
    massKg: log.massOn(today.value),
    reps: undefined,
    rir: undefined,
    push: 'more',
    caution: exercise.caution ?? {},
  });
}

function expectedAt(beat: WhatToBeat, load: SetLoad): Expected[] {
  const [expected, figure] = [beat.expectedWith(load), figureOfLoad(load)];
  if (!expected || figure === undefined) return [];
  const { median, q05, q95 } = expected;
  return [{ load, x: loadUnit.value.shown(figure), median, low: q05, high: q95 }];
}

function loadsAround(load: SetLoad): readonly SetLoad[] {
  const start = figureOfLoad(load);
  if (start === undefined) return [];
  const walk = (way: 1 | -1): number[] => {
    const figures: number[] = [];
    for (let figure = start; figures.length < STEPS; ) {
      figure = nextFigure(load, figure, way, book.value);
      if (figures.at(-1) === figure || figure === start) break;
      figures.push(figure);
    }
    return figures;
  };
  return [...walk(-1).reverse(), start, ...walk(1)].map((figure) => withFigure(load, figure));
}
