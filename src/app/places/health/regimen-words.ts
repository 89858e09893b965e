import type { Cadence, Tie } from '#core/journal/kinds/health.ts';

/** "with the first meal", "45 min before training". */
export function tieWords(tie: Tie): string {
  switch (tie.to) {
    case 'first meal':
      return 'with the first meal';
    case 'last meal':
      return 'with the last meal';
    case 'high-carbohydrate meal':
      return `with a meal high in carbohydrate${tie.atLeastG === undefined ? '' : `, ${tie.atLeastG} g and more`}`;
    case 'fat-holding meal':
      return `with a meal that holds fat${tie.atLeastG === undefined ? '' : `, ${tie.atLeastG} g and more`}`;
    case 'before training':
      return `${tie.minutes} min before training`;
    case 'after training':
      return 'after training';
    case 'before sleep':
      return `${tie.minutes} min before sleep`;
    case 'waking, empty stomach':
      return 'on waking, empty stomach';
    case 'clock':
      return `at ${tie.at}`;
  }
}

export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

/** "every day", "every 2nd day", "Mon, Wed, Fri". */
export function cadenceWords(cadence: Cadence): string {
  switch (cadence.of) {
    case 'every day':
    case 'training days':
    case 'rest days':
      return cadence.of;
    case 'every n-th day':
      return cadence.days === 2 ? 'every second day' : `every ${cadence.days} days`;
    case 'weekdays':
      return [...cadence.weekdays]
        .sort((a, b) => a - b)
        .map((weekday) => WEEKDAYS[weekday - 1] ?? '')
        .join(', ');
  }
}
