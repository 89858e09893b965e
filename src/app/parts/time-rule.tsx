import type { JSX } from 'preact';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { clamp } from '#core/units/rounding.ts';
import './time-rule.css';

export interface TimeMark {
  readonly at: ClockMinutes;
  /** For what lasts: training, cardio. */
  readonly until?: ClockMinutes | undefined;
  readonly label: string;
  readonly kind: 'meal' | 'training' | 'cardio' | 'other';
  readonly state: 'done' | 'next' | 'planned';
}

export interface TimeRuleProps {
  readonly wake: ClockMinutes;
  readonly sleep: ClockMinutes;
  readonly now?: ClockMinutes | undefined;
  readonly marks: readonly TimeMark[];
}

/** The waking day as a steel rule: hours along the edge, meals as notches, training as a length, now as the index. */
export function TimeRule(props: TimeRuleProps): JSX.Element {
  const { wake, sleep, now, marks } = props;
  const start = Math.floor(wake / 60) * 60;
  const end = Math.ceil(sleep / 60) * 60;
  const at = (minutes: ClockMinutes): number => 2 + 96 * clamp((minutes - start) / (end - start || 1), 0, 1);
  return (
    <div class="time-rule">
      <svg class="time-rule-drawing" width="100%" height="86" aria-hidden="true">
        <rect class="time-rule-steel" x="0" y="40" width="100%" height="44" />
        <Hours start={start} end={end} at={at} />
        {marks.map((mark) => (
          <Mark key={`${mark.at} ${mark.label}`} mark={mark} at={at} />
        ))}
        {now !== undefined && now >= start && now <= end && (
          <g>
            <line class="time-rule-now" x1={`${at(now)}%`} x2={`${at(now)}%`} y1="14" y2="60" />
            <text
              class="time-rule-words"
              x={`${at(now)}%`}
              y="11"
              text-anchor={at(now) > 85 ? 'end' : at(now) < 15 ? 'start' : 'middle'}
            >
              {`now ${formatClock(now)}`}
            </text>
          </g>
        )}
      </svg>
      <ul class="unseen">
        {now !== undefined && <li>{`Now ${formatClock(now)}`}</li>}
        {marks.map((mark) => (
          <li key={`${mark.at} ${mark.label}`}>{markWords(mark)}</li>
        ))}
      </ul>
    </div>
  );
}

function markWords(mark: TimeMark): string {
  const until = mark.until === undefined ? '' : ` to ${formatClock(mark.until)}`;
  return `${formatClock(mark.at)}${until} ${mark.label}, ${mark.state}`;
}

function Hours(props: {
  readonly start: ClockMinutes;
  readonly end: ClockMinutes;
  readonly at: (minutes: ClockMinutes) => number;
}): JSX.Element {
  const quarters = Array.from(
    { length: (props.end - props.start) / 15 + 1 },
    (_unused, i) => props.start + i * 15,
  );
  const hours = quarters.filter((minutes) => minutes % 180 === 0);
  return (
    <g>
      {quarters.map((minutes) => (
        <line
          key={minutes}
          class="time-rule-tick"
          x1={`${props.at(minutes)}%`}
          x2={`${props.at(minutes)}%`}
          y1="40"
          y2={minutes % 60 === 0 ? 54 : minutes % 30 === 0 ? 49 : 45}
        />
      ))}
      {hours.map((minutes) => (
        <text key={minutes} class="time-rule-hour" x={`${props.at(minutes)}%`} y="76" text-anchor="middle">
          {String(minutes / 60)}
        </text>
      ))}
    </g>
  );
}

function Mark(props: {
  readonly mark: TimeMark;
  readonly at: (minutes: ClockMinutes) => number;
}): JSX.Element {
  const { mark, at } = props;
  const classes = `time-mark time-mark-${mark.kind} time-mark-${mark.state}`;
  if (mark.until !== undefined) {
    const width = `${at(mark.until) - at(mark.at)}%`;
    return (
      <rect
        class={classes}
        x={`${at(mark.at)}%`}
        y={mark.kind === 'training' ? 24 : 30}
        width={width}
        height={mark.kind === 'training' ? 14 : 8}
      />
    );
  }
  return (
    <svg x={`${at(mark.at)}%`} y="40" overflow="visible">
      <path class={classes} d="M0 0-6-9V-19H6V-9Z" />
    </svg>
  );
}
