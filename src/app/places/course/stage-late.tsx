import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { ShowDayNow } from '#core/cycle/show-day-now.ts';
import { formatClock } from '#core/units/clock.ts';
import { Button } from '../../parts/button.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Section } from '../../parts/section.tsx';
import { moveStage } from '../../views/show-day-view.ts';

const LATER = [15, 30, 60] as const;

/** The call to the stage in large figures, and one tap for when it runs late. */
export function StageLate({ day }: { readonly day: ShowDayNow }): JSX.Element | null {
  const typed = useSignal<number | undefined>(undefined);
  const { stageAt, movedBy, clock } = day;
  if (stageAt === undefined) return null;
  const at = typed.value;
  return (
    <Section title="The call to the stage" detail={movedWords(movedBy)}>
      <div class="stack">
        <Figure value={formatClock(stageAt)} size="reach" label="Stage" labelHidden />
        <p class="soft">It runs late by</p>
        <div class="row">
          {LATER.map((minutes) => (
            <Button
              key={minutes}
              records
              label={`${minutes} min later`}
              onPress={() => void moveStage(day, Math.max(stageAt, clock) + minutes)}
            >
              {`${minutes} min`}
            </Button>
          ))}
        </div>
        <div class="row">
          <ClockField
            label="Or called at"
            value={at}
            onValue={(value) => {
              typed.value = value;
            }}
            optional
          />
          {at !== undefined && (
            <Button
              records
              onPress={() => {
                void moveStage(day, at);
                typed.value = undefined;
              }}
            >
              {`Move to ${formatClock(at)}`}
            </Button>
          )}
        </div>
      </div>
    </Section>
  );
}

function movedWords(minutes: number): string {
  if (minutes === 0) return 'as the running order has it';
  return minutes > 0 ? `${minutes} min later than first said` : `${-minutes} min sooner than first said`;
}
