// Corrections of lists and of several things at once: what is not named stays, and what is named stands beside the rest. All invented.

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/record/index.ts';
import { standing as entriesStanding } from '../parse/standing.ts';

const standing = (talk: string): readonly Entry[] =>
  entriesStanding(talk).filter(({ kind }) => kind !== 'visit');

const historyOf = (talk: string): readonly (readonly [string, boolean])[] =>
  standing(talk).flatMap((entry) =>
    entry.kind === 'history' ? [[entry.text, entry.present !== false] as const] : [],
  );

describe('a denial of one thing of a told list', () => {
  it.each([
    ['allergic to codeine and kiwi | correction, not kiwi', 'codeine', 'kiwi'],
    ['takes ramipril and bisoprolol | correction, not bisoprolol', 'ramipril', 'bisoprolol'],
    ['past history of gout and epilepsy | correction, no epilepsy', 'gout', 'epilepsy'],
    ['allergic to codeine, kiwi and eggs | correction, not allergic to kiwi', 'codeine and eggs', 'kiwi'],
  ])('takes back that one: %s', (talk, stays, denied) => {
    const all = historyOf(talk);
    expect(all).toContainEqual([stays, true]);
    const others = all.filter(([text]) => text !== stays);
    expect(others.map(([, present]) => present)).toEqual([false]);
    expect(others[0]?.[0]).toContain(denied);
    expect(others[0]?.[0]).not.toContain(stays);
  });

  it.each([
    ['takes ramipril and bisoprolol | correction, no blood thinners', 'ramipril and bisoprolol'],
    ['allergic to codeine | correction, no egg allergy', 'codeine'],
  ])('of what the list does not name is asked about, and the list stands: %s', (talk, stays) => {
    expect(historyOf(talk)).toContainEqual([stays, true]);
    const denials = standing(talk).filter((entry) => entry.kind === 'history' && entry.present === false);
    expect(denials).toHaveLength(1);
    expect(denials[0]?.doubt?.join()).toMatch(/was told and stands/);
  });

  it.each([
    'allergic to codeine and kiwi | correction, no allergies',
    'takes ramipril and bisoprolol | correction, not on any medications',
  ])('of all of it leaves nothing: %s', (talk) => {
    expect(historyOf(talk).map(([, present]) => present)).toEqual([false]);
  });

  it('means the one that is named and not the one told last', () => {
    expect(
      historyOf('takes metformin five hundred | takes apixaban | correction, takes metformin one gram'),
    ).toEqual([
      ['apixaban', true],
      ['metformin one gram', true],
    ]);
  });
});

describe('several things in one correction', () => {
  it('stand beside each other', () => {
    const places = standing(
      'tourniquet on the left arm | correction, tourniquets on the left thigh and the right thigh',
    ).map((entry) => entry.kind === 'care' && `${entry.care} ${entry.side} ${entry.site}`);
    expect(places).toEqual(['tourniquet left thigh', 'tourniquet right thigh']);
  });

  it('all have the time of what they put right', () => {
    const all = standing(
      'tourniquet on the left arm at thirteen fifty | correction, tourniquets on the left thigh and the right thigh',
    );
    expect(all).toHaveLength(2);
    for (const { at } of all) expect(at).toMatch(/T13:50/);
  });

  it.each([
    [
      'G C S eyes three verbal four motor five | correction, G C S verbal five motor six',
      { eye: 3, verbal: 5, motor: 6, total: 14 },
    ],
    [
      'G C S eyes three verbal four motor five | pulse eighty | correction, GCS verbal five',
      { eye: 3, verbal: 5, motor: 5, total: 13 },
    ],
    ['GCS thirteen | chest no pain | correction, GCS verbal four', { verbal: 4, total: 13 }],
  ])('leave the parts of a coma scale that they do not name: %s', (talk, value) => {
    const scales = standing(talk).flatMap((entry) =>
      entry.kind === 'vital' && entry.vital === 'gcs' ? [entry.value] : [],
    );
    expect(scales).toEqual([value]);
  });
});

describe('what happened, told anew in fewer words', () => {
  it('keeps how far somebody fell where only the time is new', () => {
    const [entry] = standing('fell five metres off a scaffold | correction, she fell at thirteen fifteen');
    expect(entry).toMatchObject({ topic: 'mechanism', text: 'fell five metres off a scaffold' });
    expect(entry?.at).toMatch(/T13:15/);
  });

  it('is asked about where a measure went with it', () => {
    const [entry] = standing('hit by a car at forty miles an hour | correction, he was hit by a van');
    expect(entry).toMatchObject({ topic: 'mechanism', text: 'he was hit by a van' });
    expect(entry?.doubt?.join()).toMatch(/forty miles an hour/);
  });

  it('stands by itself where it tells as much', () => {
    const [entry] = standing('fell five metres off a scaffold | correction, he fell two metres off a ladder');
    expect(entry).toMatchObject({ text: 'he fell two metres off a ladder' });
    expect(entry?.doubt).toBeUndefined();
  });
});
