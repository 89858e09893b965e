import { openPostgresStore } from '../../src/outside/sealed-store/open-postgres-store.ts';
import { openSealedFolder } from '../../src/outside/sealed-store/open-sealed-folder.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen } from '../../src/server/listen.ts';

/** A folder, or a connection string of a test's own database. */
const place = process.argv[2] ?? '';
const store = place.startsWith('postgresql:')
  ? await openPostgresStore(place, (words) => process.stderr.write(`${words}\n`))
  : await openSealedFolder(place);
if (!store.ok) throw new Error(store.problem.message);
const listening = await listen(
  createServer({
    files: new Map(),
    sync: { store: store.value, clockMs: () => performance.now(), nowMs: Date.now },
  }),
  0,
);
if (!listening.ok) throw new Error(listening.problem.message);
process.stdout.write(`${listening.value.address}\n`);
