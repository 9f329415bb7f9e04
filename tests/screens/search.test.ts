// Finding a kept record by what a person remembers of it, and keeping the patients of an incident together.

import { describe, expect, it } from 'vitest';
import { UNFILED } from '../../src/record/index.ts';
import { byIncident, matches } from '../../src/screens/records/search.ts';
import { type Shown, shownOf } from '../../src/screens/records/summary.ts';
import { inListOrder, notOne, recordInWords, recordsMeant } from '../../src/screens/records/wanted.ts';
import { shapeOf, whoIs } from '../../src/screens/records/who.ts';

/** Invented. */
const shown = (id: string, startedAt: string, summary: Partial<Shown['summary']>): Shown => ({
  facts: { id, kind: 'live', title: '', startedAt },
  summary: { ...UNFILED, incident: id, name: '', lastHeardAt: '', entries: 1, ...summary },
});

const ADA = shown('a', '2031-04-05T10:00:00+02:00', { name: 'Ada Quindélo', place: 'north gully' });
const BEA = shown('b', '2031-04-05T10:20:00+02:00', { incident: 'a', patient: 2, label: 'the tall one' });
const OLD = shown('c', '2030-12-31T23:59:00-07:00', { patient: 1, tag: 'by the stream' });

describe('a record', () => {
  it.each([
    [ADA, 'ada'],
    [ADA, 'quindelo'],
    [ADA, 'GULLY north'],
    [ADA, '2031-04-05'],
    [ADA, '5 april'],
    [BEA, 'patient 2'],
    [BEA, 'tall'],
    [OLD, '31 dec 2030'],
    [OLD, 'stream'],
    [OLD, ''],
  ])('%# is found by “%s”', (one, typed) => {
    expect(matches(one, typed)).toBe(true);
  });

  it.each([
    [ADA, 'bea'],
    [ADA, 'ada stream'],
    [BEA, 'patient 3'],
    [OLD, '1 jan 2031'],
    [OLD, 'ream'],
  ])('%# is not found by “%s”', (one, typed) => {
    expect(matches(one, typed)).toBe(false);
  });

  it('of which no summary was kept is the first patient of its own incident', () => {
    const { summary } = shownOf({ facts: ADA.facts, summary: {} });
    expect(summary).toEqual({ ...UNFILED, incident: 'a', name: '', lastHeardAt: '', entries: 0 });
  });
});

describe('the patients', () => {
  it('of one incident stand together, the first one first, and the latest incident on top', () => {
    const found = byIncident([OLD, BEA, ADA]);
    expect(found.map(({ records }) => records.map(({ facts }) => facts.id))).toEqual([['a', 'b'], ['c']]);
  });

  it('are told apart by number and shape, and called by what is known of them', () => {
    expect(whoIs(BEA.summary)).toBe('Patient 2, the tall one');
    expect(whoIs({ ...UNFILED, name: '' })).toBe('Patient 1');
    expect(new Set([1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map(shapeOf)).size).toBe(10);
  });
});

describe('a record that is asked for by word', () => {
  const listed = inListOrder([OLD, BEA, ADA]);

  it('is numbered as it stands in the list: the latest incident first, and in it the first patient', () => {
    expect(listed).toEqual([ADA, BEA, OLD]);
    expect(recordInWords(listed, BEA)).toBe('Record 2: Patient 2, the tall one, 2031-04-05, 10:20');
  });

  it.each([
    [{ place: 2 }, [BEA]],
    [{ place: 4 }, []],
    [{ place: 0 }, []],
    [{ patient: 2 }, [BEA]],
    [{ patient: 1 }, [ADA, OLD]],
    [{ words: 'Ada Quindelo' }, [ADA]],
    [{ words: 'the tall one' }, [BEA]],
    [{ words: 'north gully, April' }, [ADA]],
    // Half a word, or a figure that only begins one, is none.
    [{ words: 'quin' }, []],
    [{ words: '203' }, []],
    [{ words: 'Bruno' }, []],
    [{ words: '…' }, []],
  ])('is found by %j where all of it fits', (meant, found) => {
    expect(recordsMeant(listed, meant)).toEqual(found);
  });

  it('is not guessed: where two fit, both are named', () => {
    expect(notOne(listed, recordsMeant(listed, { patient: 1 }))).toBe(
      '2 records fit; none was opened. Record 1: Patient 1, Ada Quindélo, 2031-04-05, 10:00. ' +
        'Record 3: Patient 1, by the stream, 2030-12-31, 23:59. Say “open record”, and its number.',
    );
    expect(notOne(listed, [])).toBe('No record here is that one; none was opened.');
  });
});
