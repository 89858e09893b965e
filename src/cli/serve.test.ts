import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { backupCommand, restoreCommand } from './backup.ts';
import { serveCommand } from './serve.ts';

let said = '';
let folder = '';
beforeEach(() => {
  said = '';
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

describe('serving beyond this machine', () => {
  it.each(['0.0.0.0', '::', '192.0.2.7', '127.0.0.1.example.org'])(
    '[SRV-09] %s is refused where no TLS in front is declared',
    async (address) => {
      expect(await serveCommand.run(['--port', '0', '--listen', address])).toBe(2);
      expect(said).toContain('nothing is served without TLS in front');
      expect(said).toContain('--behind-tls');
    },
  );

  it('[SRV-09] an unknown option and a port that is none are said', async () => {
    expect(await serveCommand.run(['--prot', '1'])).toBe(2);
    expect(await serveCommand.run(['--port', '70000'])).toBe(2);
    expect(said).toContain('"70000" is no port');
  });
});

describe('backup and restore', () => {
  it('[SYN-17] name what is missing and change nothing', async () => {
    expect(await backupCommand.run([folder, join(folder, 'copy')])).toBe(1);
    expect(said).toContain('There is no "sealed.sqlite"');
    expect(await restoreCommand.run([join(folder, 'copy'), folder])).toBe(1);
    expect(said).toContain('There is no file');
    expect(await backupCommand.run([folder])).toBe(2);
    expect(await restoreCommand.run([])).toBe(2);
  });
});
