import { openSealedFolder } from '../../src/outside/sealed-store/open-sealed-folder.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen } from '../../src/server/listen.ts';

const store = await openSealedFolder(process.argv[2] ?? '');
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
