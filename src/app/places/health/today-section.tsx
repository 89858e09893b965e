import type { JSX } from 'preact';
import { Caution } from '../../parts/caution.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { pathTo } from '../../shell/route.ts';
import { unitsWords } from '../../views/dose-words.ts';
import { doses } from '../../views/health-view.ts';

/** Today's doses with their times, the caffeine of the day, and what to mind about a dose. */
export function TodaySection(): JSX.Element {
  if (!doses.value.ok)
    return (
      <Section title="Today">
        <Note>{`${doses.value.problem.message} ${doses.value.problem.remedy}`}</Note>
      </Section>
    );
  const { answer, done } = doses.value.value;
  const { takenMg, plannedMg, limitMg } = answer.caffeine;
  return (
    <Section
      title="Today"
      detail={`${done.length} done, ${answer.items.length} to come`}
      action={<WhyButton why={{ title: "Today's doses", sentences: answer.why }}>Why these times?</WhyButton>}
    >
      <List label="Doses to come">
        {answer.items.map(({ regimen, name, units, unit, at, words, slot }) => (
          <ListRow
            key={regimen}
            title={name}
            detail={`${unitsWords(units, unit)}, ${words}`}
            figure={<Figure value={at} size="line" label="At" labelHidden />}
            href={pathTo('day', 'doses', slot ?? at)}
          />
        ))}
      </List>
      {takenMg + plannedMg > 0 && (
        <p>{`Caffeine: ${Math.round(takenMg)} mg so far and ${Math.round(plannedMg)} mg to come, of ${limitMg} mg a day.`}</p>
      )}
      {answer.cautions.map(({ words, source }) => (
        <Caution key={words} words={words} source={source} />
      ))}
    </Section>
  );
}
