import type { JSX } from 'preact';
import type { DrawnPanel } from '#core/health/fhir/draft-to-panel.ts';
import { dateWords } from '#core/words/dates.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { exportAs } from '../../state/copies.ts';
import { health } from '../../views/health-view.ts';
import { download } from '../journal/download.ts';
import { readingOf } from './panel-view.ts';

/** Panels, newest first, the draw that is planned, and the ways in and out. */
export function BloodSection(): JSX.Element {
  const { blood, newest, draw } = health.value;
  return (
    <Section title="Blood">
      {newest && !newest.ok && <Caution title={newest.problem.message} words={newest.problem.remedy} />}
      <List label="Blood">
        {draw && (
          <ListRow
            title={`Draw on ${dateWords(draw.data.date)} at ${draw.data.at}`}
            detail={`${inDays(draw.data.date)}; what to do until then`}
            href={pathTo('health', 'draw')}
            state="next"
          />
        )}
        {blood.panels.map((panel) => (
          <PanelRow key={panel.panel} panel={panel} />
        ))}
      </List>
      {blood.panels.length === 0 && <Note>No panel is entered yet.</Note>}
      <div class="row">
        <Button href={pathTo('health', 'panel', 'new')}>Enter a panel</Button>
        <Button href={pathTo('health', 'file')}>From a file</Button>
        {!draw && <Button href={pathTo('health', 'draw')}>Plan a draw</Button>}
        {blood.panels.length > 0 && <Button onPress={() => void save()}>Save all as FHIR</Button>}
      </div>
    </Section>
  );
}

function PanelRow({ panel }: { readonly panel: DrawnPanel }): JSX.Element {
  const reading = readingOf(panel.panel);
  const results = reading.ok ? reading.value.results : [];
  const count = (flag: string) => results.filter((result) => result.flag === flag).length;
  const [now, low, high] = [count('seek care now'), count('low'), count('high')];
  return (
    <ListRow
      title={dateWords(panel.drawn.date)}
      detail={`${panel.values.length} values, ${low} low, ${high} high${panel.laboratory === undefined ? '' : `; ${panel.laboratory}`}`}
      {...(now > 0 && { figure: <Tag kind="caution">care now</Tag> })}
      href={pathTo('health', 'panel', panel.panel)}
    />
  );
}

function inDays(date: string): string {
  const days = daysBetween(today.value, date);
  return days === 0 ? 'today' : days === 1 ? 'tomorrow' : `in ${days} days`;
}

/** Panels and body measurements in the open standard that laboratories and portals read. */
async function save(): Promise<void> {
  const file = await exportAs('fhir', today.peek());
  if (file) download(file.name, file.text, file.mediaType);
}
