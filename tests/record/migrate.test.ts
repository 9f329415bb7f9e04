// Reading stored events: the present format passes as it is, all else is refused with a reason.

import { describe, expect, it } from 'vitest';
import { FORMAT, migrate } from '../../src/record/index.ts';

const GOOD = {
  format: 1,
  id: 'field-1',
  device: 'field',
  seq: 1,
  time: '2026-05-03T14:02:00-06:00',
  kind: 'utterance',
  payload: { text: 'hm', heardAt: '2026-05-03T14:02:00-06:00', zone: '-06:00' },
};

describe('migrate', () => {
  it('passes an event of the present format unchanged', () => {
    const now = { ...GOOD, format: FORMAT };
    expect(migrate(now)).toEqual({ kind: 'event', event: now });
  });

  it('brings an event of format 1 up to the present one', () => {
    expect(migrate(GOOD)).toEqual({ kind: 'event', event: { ...GOOD, format: FORMAT } });
  });

  it.each([
    ['nothing', null],
    ['a text', 'event'],
    ['no format', { ...GOOD, format: undefined }],
    ['a later format', { ...GOOD, format: FORMAT + 1 }],
    ['no device', { ...GOOD, device: undefined }],
    ['a number that is none', { ...GOOD, seq: 0.5 }],
    ['an unknown kind', { ...GOOD, kind: 'guessed' }],
    ['no payload', { ...GOOD, payload: null }],
  ])('refuses %s and says why', (_title, stored) => {
    const read = migrate(stored);
    expect(read.kind).toBe('refused');
    expect(read.kind === 'refused' ? read.why : '').not.toBe('');
  });
});
