// Holds the design's order of stages and the purity of those that must run the same everywhere.

import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Left to right; a stage may import from those before it. The last three stand side by side. */
const STAGES = [
  'terms',
  'jsgf',
  'speech',
  'parse',
  'record',
  'clinical',
  'timeline',
  'handoff',
  'link',
] as const;
const ENDS = ['screens', 'replay', 'post'] as const;

const PURE: readonly string[] = ['terms', 'jsgf', 'parse', 'record', 'clinical', 'timeline', 'handoff'];
/** Small tables that may be taken without the rest of their stage: an index would bring the whole parser along. */
const LEAVES: readonly string[] = ['record/entry.ts', 'parse/units.ts'];
/** The store is the one part of a pure stage that touches a browser, and nothing pure may import it. */
const STORE = /^record\/store(\/|\.ts$)/;

const IMPURE: readonly (readonly [what: string, pattern: RegExp])[] = [
  ['a clock', /\bDate\.now\b|\bnew Date\(\s*\)|(?<!new )\bDate\(|\bperformance\b/],
  ['randomness', /\bMath\.random\b|\bcrypto\b/],
  ['a page', /\b(window|document|navigator|localStorage|sessionStorage|indexedDB|location)\b\s*[.[(]/],
  ['a network', /\b(fetch|XMLHttpRequest|WebSocket)\b\s*\(/],
  ['a terminal', /\bconsole\.|\bprocess\./],
  ['a timer', /\b(setTimeout|setInterval|queueMicrotask|requestAnimationFrame)\b/],
];

interface Source {
  /** path under src/ */
  readonly path: string;
  readonly stage: string;
  readonly code: string;
  readonly imports: readonly { readonly from: string; readonly typeOnly: boolean }[];
}

const SRC = new URL('../src/', import.meta.url);

const IMPORT = /^\s*(?:import|export)\s(type\s)?[^;'"]*?(?:from\s*)?['"]([^'"]+)['"]/gm;
const LATE_IMPORT = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;

/** The code without comments, and with nothing in its strings; a pattern must not match what is only talked of. */
const bare = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\/|(?<![:'"`])\/\/.*$/gm, '').replace(/'[^'\n]*'|"[^"\n]*"/g, "''");

function sourceOf(path: string, text: string): Source {
  const stage = path.split('/')[0] ?? '';
  const found = [...text.matchAll(IMPORT)].map(([, type, from = '']) => ({
    from,
    typeOnly: type !== undefined,
  }));
  const late = [...text.matchAll(LATE_IMPORT)].map(([, from = '']) => ({ from, typeOnly: false }));
  const imports = [...found, ...late].map(({ from, typeOnly }) => ({
    from: from.startsWith('.') ? posix.join(posix.dirname(path), from) : from,
    typeOnly,
  }));
  return { path, stage, code: bare(text), imports };
}

const SOURCES: readonly Source[] = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => /\.tsx?$/.test(path) && path.includes('/'))
  .map((path) => sourceOf(path, readFileSync(new URL(path, SRC), 'utf8')));

/** What is wrong with an import, or null. */
function wrongImport(source: Source, from: string): string | null {
  const target = from.split('/')[0] ?? '';
  if (target === source.stage) return null;
  if (from.startsWith('..')) return 'leaves src';
  const known: readonly string[] = [...STAGES, ...ENDS];
  if (!known.includes(target)) return from.includes('/src/') ? 'is no stage' : null;
  if (ENDS.some((end) => end === target)) return `${target} is nobody's to import`;
  const [mine, theirs] = [known.indexOf(source.stage), known.indexOf(target)];
  return theirs < mine ? null : `${target} stands to the right of ${source.stage}`;
}

function impurities(source: Source): readonly string[] {
  const nodes = source.imports
    .filter(({ from, typeOnly }) => !typeOnly && from.startsWith('node:'))
    .map(({ from }) => from);
  const stores = source.imports.filter(({ from }) => STORE.test(from)).map(({ from }) => from);
  return [
    ...nodes,
    ...stores,
    ...IMPURE.filter(([, pattern]) => pattern.test(source.code)).map(([what]) => what),
  ];
}

describe('the stages', () => {
  it('are all known to this test', () => {
    const found = new Set(SOURCES.map(({ stage }) => stage));
    expect([...found].filter((stage) => ![...STAGES, ...ENDS].some((known) => known === stage))).toEqual([]);
    expect(found.size).toBeGreaterThan(5);
  });

  it('import only from their left', () => {
    const wrong = SOURCES.flatMap((source) =>
      source.imports.flatMap(({ from }) => {
        const why = wrongImport(source, from);
        return why === null ? [] : [`${source.path} imports ${from}: ${why}`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it('take of another stage only its types and what an index or a shared leaf offers', () => {
    const wrong = SOURCES.flatMap(({ path, stage, imports }) =>
      imports
        .filter(
          ({ from, typeOnly }) =>
            !typeOnly && STAGES.some((other) => other !== stage && from.startsWith(`${other}/`)),
        )
        .filter(({ from }) => !from.endsWith('/index.ts') && !LEAVES.includes(from))
        .map(({ from }) => `${path} imports ${from}`),
    );
    expect(wrong).toEqual([]);
  });
});

describe('the pure stages', () => {
  const pure = SOURCES.filter(({ stage, path }) => PURE.includes(stage) && !STORE.test(path));

  it('touch no page, clock, network, terminal, timer or randomness', () => {
    const wrong = pure.flatMap((source) => impurities(source).map((what) => `${source.path}: ${what}`));
    expect(wrong).toEqual([]);
  });

  it.each([
    'const now = Date.now();',
    'const now = new Date();',
    'const id = Math.random();',
    "document.getElementById('a');",
    "await fetch('/a');",
    "import { readFileSync } from 'node:fs';",
    "import { open } from './store.ts';",
    "const fs = await import('node:fs');",
    'console.log(1);',
  ])('would be caught at %s', (line) => {
    expect(impurities(sourceOf('record/invented.ts', line))).not.toEqual([]);
  });

  it.each([
    'const at = new Date(epochMs);',
    '// the clock, Date.now(), is handed in',
    "const text = 'the document.title';",
    "import type { Stats } from 'node:fs';",
    "import { stands } from './entry.ts';",
  ])('are not accused of %s', (line) => {
    expect(impurities(sourceOf('record/invented.ts', line))).toEqual([]);
  });
});

describe('an import', () => {
  it.each([
    ['parse/a.ts', '../record/index.ts'],
    ['record/a.ts', '../link/index.ts'],
    ['screens/a.ts', '../post/post.ts'],
    ['record/a.ts', '../clinical/index.ts'],
    ['screens/a.ts', '../replay/run.ts'],
    ['terms/a.ts', '../../tests/a.ts'],
  ])('from %s of %s would be caught', (path, from) => {
    const source = sourceOf(path, `import { a } from '${from}';`);
    expect(source.imports.map((one) => wrongImport(source, one.from))).not.toContain(null);
    expect(source.imports).toHaveLength(1);
  });
});
