// Every way in which the device's database fails has a name, and every name has words for the screen.

import { describe, expect, it } from 'vitest';
import { type FailureKind, failureOf, storeFailure } from '../../../src/record/store/index.ts';
import { notKept, whyNot } from '../../../src/screens/records/words.ts';

describe('a failure of the database', () => {
  // The names are those of the Indexed Database API 3.0 (W3C), and of Storage (WHATWG) for the quota.
  it.each([
    ['QuotaExceededError', 'full'],
    ['ConstraintError', 'taken'],
    ['AbortError', 'aborted'],
    ['InvalidStateError', 'aborted'],
    ['VersionError', 'newer'],
    ['SecurityError', 'unavailable'],
    ['UnknownError', 'request'],
    ['DataError', 'request'],
  ] as const)('%s is called %s', (name, kind) => {
    expect(failureOf(new DOMException('invented', name), 'request').failure).toBe(kind);
  });

  it('that has a name keeps it', () => {
    expect(failureOf(storeFailure('blocked', 'invented'), 'request').failure).toBe('blocked');
    expect(failureOf('nonsense', 'aborted').failure).toBe('aborted');
  });

  it.each(['unavailable', 'blocked', 'newer', 'full', 'aborted', 'request', 'taken'] satisfies FailureKind[])(
    '%s is said in words of its own',
    (kind) => {
      const words = notKept(storeFailure(kind, 'invented'));
      expect(words).toMatch(/^NOT KEPT on this device/);
      expect(words).not.toContain('gave no reason');
      expect(words).not.toContain('invented');
    },
  );

  it('of no name is said to have none', () => {
    expect(whyNot(new Error('invented'))).toContain('gave no reason');
  });
});
