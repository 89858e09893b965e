import type { Verdict } from './decide.ts';
import type { Flag, WeekEvidence } from './gather-week.ts';

export interface Proposal {
  readonly decision: 'hold' | 'correct' | 'more evidence';
  readonly why: readonly string[];
}

/**
 * What to do with the week (CRS-18): the course's verdict, tempered by the week. A plan that was not followed is tried
 * before it is changed; lost strength or bad feelings speak against asking more.
 */
export function propose(verdict: Verdict, week: WeekEvidence): Proposal {
  const has = (about: Flag['about']) => week.flags.some((flag) => flag.about === about);
  if (verdict === 'too little evidence' || has('log'))
    return { decision: 'more evidence', why: ['The log of this week is too thin to decide on.'] };
  if (verdict === 'on course')
    return { decision: 'hold', why: ['The course stands; nothing needs to change.'] };
  if (verdict === 'ahead') return { decision: 'correct', why: ['There is room to eat more or walk less.'] };
  if (has('adherence'))
    return {
      decision: 'hold',
      why: ['Follow the present plan for a week first; what was eaten was not what was planned.'],
    };
  if (has('strength') || week.flags.filter((flag) => flag.about === 'feelings').length >= 2)
    return {
      decision: 'hold',
      why: ['The body shows strain; a week at the present plan or a diet break comes before a further cut.'],
    };
  if (verdict === 'out of reach')
    return {
      decision: 'hold',
      why: ['No change inside the limits reaches the target: move the date or the target.'],
    };
  return { decision: 'correct', why: ['The plan was followed and misses the target beyond noise.'] };
}
