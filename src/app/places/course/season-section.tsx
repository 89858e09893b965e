import type { JSX } from 'preact';
import type { Season } from '#core/course/season.ts';
import { dateWords } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { ledger } from '../../state/open-journal.ts';
import { say } from '../../views/say.ts';
import { chanceWords } from './course-words.ts';

/** Every show of the season with its landing, and between two whether to hold or to go on. */
export function SeasonSection({ season }: { readonly season: Season }): JSX.Element {
  const nameOf = (show: string) =>
    ledger.value.of('show-set').findLast((fact) => fact.data.show === show)?.data.name ?? show;
  return (
    <Section title="The season">
      <List label="Shows">
        {season.landings.map(({ show, date, massKg, bodyFatPercent, probability }) => (
          <ListRow
            key={show}
            title={nameOf(show)}
            detail={say(
              `${dateWords(date)}: ${bodyFatPercent.mean.toFixed(1)} % body fat, ${massKg.mean.toFixed(1)} kg`,
            )}
            figure={
              <Figure
                value={chanceWords(probability)}
                size="line"
                label="Chance"
                why={{
                  title: nameOf(show),
                  sentences: [
                    `If the present plan goes on to ${dateWords(date)}, it lands at ${bodyFatPercent.mean.toFixed(1)} % body fat (9 times of 10 between ${bodyFatPercent.q05.toFixed(1)} and ${bodyFatPercent.q95.toFixed(1)}).`,
                  ],
                }}
              />
            }
          />
        ))}
      </List>
      {season.between.flatMap(({ why }) =>
        why.map((sentence) => <Note key={sentence}>{say(sentence)}</Note>),
      )}
    </Section>
  );
}
