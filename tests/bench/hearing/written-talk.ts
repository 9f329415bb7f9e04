// Sentences of responders that were written for the parser's sake and not for the hearing's, in the words that a recogniser
// gives: what the hearing grammar should let be said. The sets that are only reported on are not among them.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import type { Reader } from '../../../src/parse/index.ts';
import { fillOf } from '../../parse/composed/fill.ts';
import { TEMPLATES } from '../../parse/composed/templates.ts';
import { entriesOf } from '../../talk-case.ts';
import { spokenNumbers } from './spoken-numbers.ts';

export interface Written {
  readonly source: 'demo' | 'talk' | 'parse' | 'composed';
  readonly said: string;
  /** kept apart, to see whether what was widened for the others fits sentences that nobody looked at */
  readonly apart: boolean;
}

const ROOT = new URL('../../../', import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8');
/** Of each template. */
const COMPOSED = 6;

/** One in three, by its words, so that it is always the same ones. */
const isApart = (said: string): boolean => (createHash('sha256').update(said).digest()[0] ?? 0) % 3 === 0;

const demoTalk = (): readonly string[] =>
  readdirSync(new URL('public/demo', ROOT))
    .filter((file) => file.endsWith('.talk'))
    .flatMap((file) => text(`public/demo/${file}`).split('\n'))
    .filter((line) => !/^[#@]/.test(line))
    .map((line) => line.replace(/^\[[\d:]+\]/, ''));

const goldTalk = (): readonly string[] =>
  ['tuning.jsonl', 'tuning-more.jsonl']
    .flatMap((file) => text(`tests/talk/${file}`).split('\n'))
    .filter((line) => line !== '')
    .flatMap((line) => (JSON.parse(line) as { talk: readonly string[] }).talk)
    .filter((line) => !line.startsWith('@'))
    .map((line) => line.replace(/^\[[\d:]+\]/, ''));

/** The first text of each row of the parser's tests. */
function parserRows(): readonly string[] {
  const files = ['tests/parse/compose', 'tests/parse'].flatMap((folder) =>
    readdirSync(new URL(folder, ROOT))
      .filter((file) => file.endsWith('.test.ts') && !/fuzz|must-not|moods|notes/.test(file))
      .map((file) => `${folder}/${file}`),
  );
  return files
    .flatMap((file) => [...text(file).matchAll(/^\s*\[(?:'([^'\n]{6,})'|"([^"\n]{6,})")/gm)])
    .map(([, single, double]) => single ?? double ?? '');
}

const composedTalk = (): readonly string[] =>
  Object.values(TEMPLATES).flatMap((template) =>
    Array.from({ length: COMPOSED }, (_, i) => template(fillOf(11 + 137 * i)).talk),
  );

/** As a recogniser gives it: no signs, no figures, letters apart. */
export function asHeard(written: string): string {
  return spokenNumbers(written.toLowerCase())
    .replace(/[^a-z' ]/g, ' ')
    .replace(/\b(csm|gcs|bp|jvd|spo)\b/g, (letters) => [...letters].join(' '))
    .replace(/centimetre/g, 'centimeter')
    .replace(/millimetre/g, 'millimeter')
    .replace(/\bmetre/g, 'meter')
    .replace(/\blitre/g, 'liter')
    .replace(/\s+/g, ' ')
    .trim();
}

const sentences = (talk: string): readonly string[] =>
  talk
    .split(/[.?!;|](?:\s|$)/)
    .map(asHeard)
    .filter((said) => said.includes(' '));

/** Each once, and only those of which the parser makes an entry that is no note when they are typed after a place. */
export function writtenTalk(reader: Reader): readonly Written[] {
  const from = (source: Written['source'], talk: readonly string[]) =>
    talk.flatMap(sentences).map((said) => ({ source, said, apart: isApart(said) }));
  const all = [
    ...from('demo', demoTalk()),
    ...from('talk', goldTalk()),
    ...from('parse', parserRows()),
    ...from('composed', composedTalk()),
  ];
  const seen = new Set<string>();
  return all.filter(({ said }) => {
    if (seen.has(said)) return false;
    seen.add(said);
    return entriesOf(reader, ['looking at the left hand', said])
      .slice(1)
      .some(({ kind }) => kind !== 'note');
  });
}
