// Holds the gold sets to the contract's words, so that a case can fail only for what the parser did.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/record/entry.ts';
import {
  ASPECTS,
  CARES,
  DIGITS,
  FINDINGS,
  isPaired,
  isSite,
  PARTS,
  PULSE_POINTS,
  SEVERITIES,
  SIDES,
  STRENGTHS,
  TOPICS,
  VITALS,
} from '../../src/terms/index.ts';
import { type GoldCase, judge, type PartialEntry } from './gold-match.ts';

const read = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');
const cases = (name: string): readonly GoldCase[] =>
  read(name)
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as GoldCase);

const WORDS: Readonly<Record<string, readonly unknown[]>> = {
  kind: ['finding', 'csm', 'vital', 'history', 'care', 'visit', 'mark', 'note'],
  side: SIDES,
  finding: FINDINGS,
  aspect: ASPECTS,
  vital: VITALS,
  topic: TOPICS,
  care: CARES,
  pulse: PULSE_POINTS,
  digit: DIGITS,
  present: [true, false],
};

function faults(partial: PartialEntry): readonly string[] {
  const wrong = Object.entries(partial).filter(([key, value]) => {
    if (key === 'site') return !isSite(String(value));
    if (key === 'part')
      return !(value as string[]).every((part) => (PARTS as readonly string[]).includes(part));
    if (key === 'severity') return typeof value !== 'number' && !SEVERITIES.some((word) => word === value);
    if (key === 'strength') return typeof value !== 'number' && !STRENGTHS.some((word) => word === value);
    return WORDS[key]?.includes(value) === false;
  });
  const site = String(partial.site);
  const both = partial.side === 'both' && isSite(site) && !isPaired(site);
  return [...wrong.map(([key, value]) => `${key}: ${value}`), ...(both ? [`both of ${site}`] : [])];
}

const plain = (line: string): string =>
  line
    .toLowerCase()
    .replace(/^\[[^\]]*\]|[^a-z0-9 ]/g, '')
    .trim();
const lines = (set: readonly GoldCase[]): Set<string> => new Set(set.flatMap((gold) => gold.talk.map(plain)));

describe.each(['tuning', 'tuning-outside', 'report'])('the %s set', (name) => {
  const set = cases(`${name}.jsonl`);

  it('holds enough cases, each with its own id and something to check', () => {
    expect(set.length).toBeGreaterThanOrEqual(130);
    expect(new Set(set.map((gold) => gold.id)).size).toBe(set.length);
    expect(set.filter((gold) => gold.expect.length + (gold.forbid ?? []).length === 0)).toEqual([]);
  });

  it("uses the contract's identifiers only", () => {
    const wrong = set.flatMap((gold) =>
      [...gold.expect, ...(gold.forbid ?? [])].flatMap((partial) =>
        faults(partial).map((it) => `${gold.id} ${it}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('forbids nothing that it expects', () => {
    const clash = set.filter((gold) => {
      const entries = gold.expect.map((partial) => ({ ...partial, state: 'heard' }) as unknown as Entry);
      return judge(gold, entries).unwanted.length > 0 || judge(gold, entries).missing.length > 0;
    });
    expect(clash.map((gold) => gold.id)).toEqual([]);
  });
});

describe('the sets beside each other', () => {
  it('share no line longer than three words between tuning and report', () => {
    const tuning = lines(cases('tuning.jsonl'));
    const shared = [...lines(cases('report.jsonl'))].filter((line) => tuning.has(line));
    expect(shared.filter((line) => line.split(' ').length > 3)).toEqual([]);
  });

  it('give at least eighty lines that must not match, each with one reason and said once', () => {
    const rows = read('must-not-match.tsv').trimEnd().split('\n').slice(1);
    expect(rows.length).toBeGreaterThanOrEqual(80);
    expect(rows.filter((row) => !/^[^\t]+\t[^\t]+$/.test(row))).toEqual([]);
    expect(new Set(rows.map((row) => plain(row.split('\t')[0] ?? ''))).size).toBe(rows.length);
  });
});

describe('judging a case', () => {
  const entry = (slots: object): Entry => ({ id: '1', state: 'heard', ...slots }) as unknown as Entry;
  const knee = { kind: 'finding', site: 'knee', finding: 'swelling', present: true };
  const gold = (wanted: PartialEntry, forbid: readonly PartialEntry[] = []): GoldCase => ({
    id: 'x',
    about: 'x',
    talk: [],
    expect: [wanted],
    forbid,
  });

  it('takes a left and a right entry for both, and not one of them alone', () => {
    const both = gold({ ...knee, side: 'both' });
    const left = entry({ ...knee, side: 'left' });
    expect(judge(both, [left, entry({ ...knee, side: 'right' })]).missing).toEqual([]);
    expect(judge(both, [left]).missing).toHaveLength(1);
  });

  it('looks past struck and replaced entries', () => {
    const struck = entry({ ...knee, state: 'struck' });
    expect(judge(gold(knee, [knee]), [struck])).toEqual({ missing: [knee], unwanted: [] });
  });

  it('allows the rounding of a converted unit and no more', () => {
    const cut = gold({ kind: 'finding', size: { value: 5.08, unit: 'cm' } });
    const sized = (value: number): Entry => entry({ kind: 'finding', size: { value, unit: 'cm' } });
    expect(judge(cut, [sized(5.1)]).missing).toEqual([]);
    expect(judge(cut, [sized(5)]).missing).toHaveLength(1);
  });

  it('compares times as instants and text by the words it holds', () => {
    const given = gold({ kind: 'care', at: '2026-05-03T14:12:00-06:00', text: 'aspirin' });
    const care = (at: string, text: string): Entry => entry({ kind: 'care', at, text });
    expect(judge(given, [care('2026-05-03T20:12:00Z', 'Aspirin 300 mg')]).missing).toEqual([]);
    expect(judge(given, [care('2026-05-03T20:13:00Z', 'Aspirin 300 mg')]).missing).toHaveLength(1);
  });
});
