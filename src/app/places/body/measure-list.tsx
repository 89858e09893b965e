import type { JSX } from 'preact';
import type { FatReading } from '#core/cycle/measured-fat.ts';
import { fatOfFolds, fatOfGirths } from '#core/cycle/measured-fat.ts';
import { dateWords } from '#core/words/dates.ts';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { ledger } from '../../state/open-journal.ts';
import { athlete, measuredAthlete } from '../../views/athlete-view.ts';
import { fatMethodWords } from './fat-methods.ts';

/** Everything else that can be measured, each with what was measured last. */
export function MeasureList(): JSX.Element {
  const who = athlete.value;
  return (
    <Section title="Measure">
      <List label="Measurements">
        <ListRow title="Skinfolds" detail={foldWords()} href={pathTo('body', 'folds')} />
        <ListRow title="Tape" detail={tapeWords()} href={pathTo('body', 'tape')} />
        <ListRow title="Photographs" detail={photoWords()} href={pathTo('body', 'photos')} />
        <ListRow title="A measured body fat" detail={fatWords()} href={pathTo('body', 'fat')} />
        <ListRow
          title="Food of a whole day"
          detail="a total, a fast, or every meal logged"
          href={pathTo('body', 'intake')}
        />
        {who?.sex === 'female' && (
          <ListRow title="Cycle" detail={cycleWords()} href={pathTo('body', 'cycle')} />
        )}
      </List>
    </Section>
  );
}

function foldWords(): string {
  const last = ledger.value.latest('folds-measured');
  const who = measuredAthlete.value;
  if (!last) return 'none yet; every second week is enough';
  return `${dateWords(last.day)}${who ? readingWords(fatOfFolds(last.data, who)) : ''}`;
}

function tapeWords(): string {
  const last = ledger.value.latest('girths-measured');
  const who = measuredAthlete.value;
  if (!last) return 'none yet; the waist says most';
  const { waist } = last.data.sites;
  const inches = athlete.value?.units.length === 'in';
  const girth =
    waist === undefined
      ? ''
      : `, waist ${(inches ? waist / 2.54 : waist).toFixed(1)} ${inches ? 'in' : 'cm'}`;
  return `${dateWords(last.day)}${girth}${who ? readingWords(fatOfGirths(last.data, who)) : ''}`;
}

function photoWords(): string {
  const taken = ledger.value.of('photo-taken');
  const last = taken.at(-1);
  return last ? `${taken.length} kept, last on ${dateWords(last.day)}` : 'none yet; they stay on this device';
}

function fatWords(): string {
  const last = ledger.value.latest('body-fat-measured');
  return last
    ? `${fatMethodWords(last.data.method)}, ${last.data.percent} % on ${dateWords(last.day)}`
    : 'a scan, underwater weighing, impedance';
}

function cycleWords(): string {
  const last = ledger.value.of('cycle-noted').findLast((fact) => fact.data.event === 'menses began');
  return last ? `last onset ${dateWords(last.day)}` : 'its water is told apart where the onset is noted';
}

function readingWords(reading: FatReading): string {
  return 'percent' in reading ? `, ${reading.percent.toFixed(1)} %` : '';
}
