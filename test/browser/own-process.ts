import { spawn } from 'node:child_process';
import { chromium, type Browser } from 'playwright-core';
import { CHROMIUM, FLAGS } from './harness.ts';

export interface OwnProcess {
  readonly browser: Browser;
  /** Ends the whole browser at once, as a phone does that runs out of memory. */
  kill(): Promise<void>;
}

/** A browser in a process of its own on a profile folder, so that it can be killed and started again on what is left. */
export async function ownProcess(profile: string): Promise<OwnProcess> {
  const child = spawn(
    CHROMIUM,
    [...FLAGS, '--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const door = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.once('exit', () => reject(new Error(`Chromium ended at once: ${said}`)));
    child.stderr.on('data', (text: Buffer) => {
      said += text.toString();
      const found = /DevTools listening on (ws:\S+)/.exec(said);
      if (found?.[1]) resolve(found[1]);
    });
  });
  return {
    browser: await chromium.connectOverCDP(door),
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}
