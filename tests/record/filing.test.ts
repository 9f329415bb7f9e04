// Filing a record: which patient it is, and whether it is closed; logged like everything else, and folded again.

import { describe, expect, it } from 'vitest';
import { EMPTY, fileExam, fold, UNFILED } from '../../src/record/index.ts';
import { finding, hearAll, START } from './fake-reader.ts';

const exam = hearAll({ 'left wrist swelling': [finding()] });

describe('a record', () => {
  it('is the first patient of an incident of its own until it is filed', () => {
    expect(EMPTY.filing).toEqual(UNFILED);
    expect(exam.state.filing).toEqual({ ...UNFILED, patient: 1, closed: false });
  });

  it('is filed by events, the later over the earlier, and the fold gives the same', () => {
    const filed = fileExam(exam, { incident: 'i', patient: 2, label: 'patient 2' }, START);
    const closed = fileExam(filed, { closed: true, label: 'the tall one' }, START);
    const expected = { ...UNFILED, incident: 'i', patient: 2, label: 'the tall one', closed: true };
    expect(closed.state.filing).toEqual(expected);
    expect(fold(closed.events).filing).toEqual(expected);
    expect(closed.events.length).toBe(exam.events.length + 2);
    expect(closed.state.entries).toEqual(exam.state.entries);
  });

  it('logs nothing where nothing changes', () => {
    expect(fileExam(exam, { patient: 1, tag: '' }, START)).toBe(exam);
  });
});
