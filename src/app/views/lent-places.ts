import { LENT_PARTS, type LentPart } from '#core/journal/kinds/lending.ts';
import { openCopy } from '../state/lent.ts';

/** The places that read each part of a journal, the first of them its front. */
const PLACES_OF: Readonly<Record<LentPart, readonly [front: string, ...more: string[]]>> = {
  body: ['body'],
  food: ['day', 'kitchen'],
  training: ['gym'],
  course: ['course'],
  health: ['health'],
};

/** Where to begin reading a part. */
export function frontOf(part: LentPart): string {
  return PLACES_OF[part][0];
}

/** Whether a place shows anything of the lent copy that is open: those that read no part always do. Without a name it is the Day. */
export function isLentPlace(place: string): boolean {
  const asked = place === '' ? 'day' : place;
  const parts = LENT_PARTS.filter((part) => PLACES_OF[part].includes(asked));
  return parts.length === 0 || parts.some((part) => openCopy.value?.loan.parts.includes(part));
}
