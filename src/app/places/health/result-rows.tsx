import type { JSX } from 'preact';
import type { PanelResult } from '#core/health/panel/reading.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Tag } from '../../parts/tag.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { pathTo } from '../../shell/route.ts';
import './result-rows.css';
import { flagWords, intervalWords, unitSign, valueWords } from './lab-words.ts';
import { say } from '../../views/say.ts';

/** Values with their interval and change; what is out of its interval with what is known to move it. */
export function ResultRows({ results }: { readonly results: readonly PanelResult[] }): JSX.Element {
  return (
    <List>
      {results.map((result) => (
        <ResultRow key={result.read.index} result={result} />
      ))}
    </List>
  );
}

function ResultRow({ result }: { readonly result: PanelResult }): JSX.Element {
  const { read, flag, notes } = result;
  const key = read.known?.analyte.key;
  const telling = flag === 'in' ? [] : notes;
  return (
    <ListRow
      title={
        <>
          {read.name}{' '}
          {flag !== 'in' && <Tag kind={flag === undefined ? 'plain' : 'caution'}>{flagWords(flag)}</Tag>}
        </>
      }
      detail={
        <>
          <span class="result-line">{intervalLine(result)}</span>
          {telling.map(({ words }) => (
            <span class="result-line" key={words}>
              {say(words)}
            </span>
          ))}
        </>
      }
      figure={
        <Figure
          value={valueWords(read)}
          unit={unitSign(read.unit)}
          size="line"
          label={read.name}
          labelHidden
        />
      }
      {...(key !== undefined && { href: pathTo('health', 'trend', key) })}
    />
  );
}

function intervalLine({ interval, change }: PanelResult): string {
  const table = interval === undefined || interval.own ? '' : ', from the table here';
  const percent = change && writeNumber(change.percent, 0, true);
  const moved =
    change === undefined
      ? ''
      : change.real
        ? `; ${percent} % since ${dayAndMonth(change.since)}, a real change`
        : `; ${percent} %, within wandering`;
  return `interval ${intervalWords(interval)}${table}${moved}`;
}
