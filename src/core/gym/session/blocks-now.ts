import type { SessionBlock, SessionSlot } from '#core/journal/kinds/gym-scheme.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import type { TrainingSession } from './training-sessions.ts';

export interface BlocksNow {
  readonly blocks: readonly SessionBlock[];
  /** Slots whose remaining sets were dropped. */
  readonly dropped: ReadonlySet<string>;
}

/**
 * The blocks of a session as they stand: the template of that time, exercises added and substituted, the newest order.
 * A block left out of a new order keeps its place after those named. All of it from entries, so that a session goes on
 * after the phone slept, broke, or was another (GYM-34).
 */
export function blocksNow(ledger: Ledger, session: TrainingSession): BlocksNow {
  const own = <Kind extends { data: { session: string } }>(facts: readonly Kind[]) =>
    facts.filter(({ data }) => session.names.includes(data.session));
  let blocks = templateBlocks(ledger, session);
  for (const { data } of own(ledger.of('exercise-added'))) {
    if (blocks.some(({ slots }) => slots.some(({ slot }) => slot === data.slot.slot))) continue;
    const block = { block: data.slot.slot, slots: [data.slot] };
    const after = blocks.findIndex((each) => each.block === data.after);
    blocks = after === -1 ? [...blocks, block] : blocks.toSpliced(after + 1, 0, block);
  }
  for (const { data } of own(ledger.of('exercise-substituted'))) {
    const { exercise, machine, implement } = data;
    blocks = withSlot(blocks, data.slot, ({ slot, sides, sets }) => ({
      slot,
      exercise,
      sets,
      ...(sides === undefined ? {} : { sides }),
      ...(machine === undefined ? {} : { machine }),
      ...(implement === undefined ? {} : { implement }),
    }));
  }
  const order = own(ledger.of('session-reordered')).at(-1)?.data.blocks ?? [];
  const place = (block: SessionBlock) =>
    order.includes(block.block) ? order.indexOf(block.block) : order.length;
  const dropped = new Set(own(ledger.of('exercise-dropped')).map(({ data }) => data.slot));
  return { blocks: blocks.toSorted((a, b) => place(a) - place(b)), dropped };
}

/** The template as it stood when the session was begun; a template changed later does not change a session under way. */
function templateBlocks(ledger: Ledger, { template, begunMs }: TrainingSession): readonly SessionBlock[] {
  const planned = ledger.of('session-planned').filter(({ data }) => data.template === template);
  const then = planned.findLast(({ epochMs }) => begunMs === undefined || epochMs <= begunMs);
  return (then ?? planned[0])?.data.blocks ?? [];
}

function withSlot(
  blocks: readonly SessionBlock[],
  slot: string,
  change: (slot: SessionSlot) => SessionSlot,
): readonly SessionBlock[] {
  return blocks.map((block) => ({
    ...block,
    slots: block.slots.map((each) => (each.slot === slot ? change(each) : each)),
  }));
}
