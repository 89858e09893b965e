import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { SHELVES } from './examples.ts';

const ALL = SHELVES.flatMap((shelf) =>
  shelf.examples.map((example) => ({
    name: `${shelf.title}: ${example.name}`,
    html: renderToString(<example.show />),
  })),
);

/** Words that an interface of care does not use. */
const FORBIDDEN = /\b(please|sorry|invalid|oops|illegal|forbidden)\b/i;

describe('examples of every part', () => {
  it('each has its own name', () => {
    expect(new Set(ALL.map(({ name }) => name)).size).toBe(ALL.length);
  });

  it.each(ALL)('[LOOK-13] $name: no inline style or script', ({ html }) => {
    expect(html).not.toMatch(/<style|<script|\son[a-z]+="/);
    expect(html).not.toMatch(/\sstyle="/);
    expect(html).not.toMatch(/(src|href)="https?:/);
  });

  it.each(ALL)('[LOOK-01] $name: no NaN, undefined or -0 reaches the page', ({ html }) => {
    expect(html.replace(/<[^>]+>/g, ' ')).not.toMatch(/NaN|undefined|null|[-−]0(?![\d.])/);
    expect(html).not.toMatch(/="[^"]*(NaN|Infinity)/);
  });

  it.each(ALL)('[LOOK-04] $name: no forbidden word', ({ html }) => {
    expect(html.replace(/<[^>]+>/g, ' ')).not.toMatch(FORBIDDEN);
  });

  it.each(ALL)('$name: ids are unique and every reference finds its element', ({ html }) => {
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    const references = [
      ...html.matchAll(/\s(?:for|aria-labelledby|aria-describedby|aria-controls)="([^"]+)"/g),
    ];
    for (const id of references.flatMap((match) => (match[1] ?? '').split(' '))) expect(ids).toContain(id);
  });

  it.each(ALL)('[LOOK-08] $name: drawings are named or hidden from reading aloud', ({ html }) => {
    for (const [tag] of html.matchAll(/<svg[^>]*>/g)) {
      if (/x="/.test(tag)) continue;
      expect(tag).toMatch(/aria-hidden="true"|role="img"/);
    }
  });
});
