import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';

/** One exercise of the session as the list shows it. */
export interface SessionRow {
  readonly block: string;
  readonly slot: string;
  readonly name: string;
  /** Names of what it is walked with. */
  readonly together: readonly string[];
  readonly done: readonly WalkedStep[];
  /** Sets beyond the plan. */
  readonly extra: SessionWalk['extra'];
  readonly open: number;
  readonly planned: number;
}

/** The exercises of a session in walking order (GYM-98). */
export function sessionRows({ steps, extra }: SessionWalk): readonly SessionRow[] {
  const slots = new Map<string, WalkedStep[]>();
  for (const step of steps) slots.set(step.slot, [...(slots.get(step.slot) ?? []), step]);
  const nameOf = (slot: string): string => {
    const mine = slots.get(slot) ?? [];
    return (mine.find(({ state }) => state === 'to come') ?? mine.at(-1))?.exercise.name ?? slot;
  };
  return [...slots].map(([slot, mine]) => {
    const block = mine[0]?.block ?? '';
    const others = [...slots].filter(([other, theirs]) => other !== slot && theirs[0]?.block === block);
    return {
      block,
      slot,
      name: nameOf(slot),
      together: others.map(([other]) => nameOf(other)),
      done: mine.filter(({ state }) => state === 'done'),
      extra: extra.filter(({ data }) => data.slot === slot),
      open: mine.filter(({ state }) => state === 'to come').length,
      planned: mine.length,
    };
  });
}

/** Block order with one moved to the end: what is put off. */
export function putOff(walk: SessionWalk, block: string): readonly string[] {
  const order = [...new Set(walk.steps.map((step) => step.block))];
  return [...order.filter((other) => other !== block), block];
}
