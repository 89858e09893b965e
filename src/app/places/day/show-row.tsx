import type { JSX } from 'preact';
import type { ShowTask } from '#core/course/show-day.ts';
import { taskKey } from '#core/course/show-times.ts';
import type { RowState } from '#core/cycle/run-sheet.ts';
import { Button } from '../../parts/button.tsx';
import { RunRow, type RunState } from '../../parts/run-sheet.tsx';
import { pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';

interface ShowRowProps {
  readonly show: string;
  readonly task: ShowTask;
  readonly state: RowState;
  readonly look: RunState;
}

/** A line of the day that the show asks for. */
export function ShowRow({ show, task, state, look }: ShowRowProps): JSX.Element {
  return (
    <RunRow at={task.at} title={task.title} detail={showDetail(task)} state={look}>
      {state !== 'done' && (
        <div class="row">
          <Button
            records
            label={`Done: ${task.title}`}
            onPress={() =>
              void record('show-task-done', { show, task: taskKey(task) }, { says: `Done: ${task.title}` })
            }
          >
            Done
          </Button>
          {task.type === 'stage' && <Button href={pathTo('course', 'show-day')}>The stage runs late</Button>}
        </div>
      )}
    </RunRow>
  );
}

/** What the line holds, where there is more to say than its title. */
export function showDetail({ meal }: ShowTask): string | undefined {
  if (!meal) return undefined;
  return `${meal.carbohydrateG} g carbohydrate, ${meal.proteinG} g protein, ${meal.fatG} g fat`;
}
