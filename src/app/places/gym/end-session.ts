import type { SessionWalk } from '#core/gym/session/session-walk.ts';
import { go, pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';

/** Ends the session under way and shows what it came to. */
export async function endSession({ session, title }: SessionWalk): Promise<void> {
  const saved = await record('session-ended', { session: session.session }, { says: `${title} is ended` });
  if (saved.status !== 'refused') go(pathTo('gym', 'done', session.session));
}
