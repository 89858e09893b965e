import { defineConfig } from 'vitest/config';
import { findPostgres } from './test/postgres/find-postgres.ts';

/** Without a PostgreSQL there is nothing to hold its store against; test/ensure-programs.ts says so before the tests. */
const withoutPostgres = findPostgres() === undefined ? ['test/postgres/**'] : [];
const jsx = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

export default defineConfig({
  oxc: jsx,
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'demo/**/*.test.ts', 'test/**/*.test.ts'],
          exclude: ['**/*.long.test.ts', 'test/browser/**', ...withoutPostgres],
          // Sweeps of simulated athletes take seconds; on a busy machine more of them.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // Two browsers at once: most of a test is waiting for a screen.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'long',
          include: ['**/*.long.test.ts'],
          exclude: ['node_modules/**'],
          testTimeout: 600_000,
        },
      },
    ],
  },
});
