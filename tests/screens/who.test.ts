// A patient's name is shown once, in full, however often it was said in one breath. All names are invented.

import { describe, expect, it } from 'vitest';
import { whoIs } from '../../src/screens/records/who.ts';

const shown = (name: string) => whoIs({ patient: 1, label: '', name, tag: '' });

describe('a name', () => {
  it.each([
    ['Ada. Ada Lark', 'Patient 1, Ada Lark'],
    ['Ada Lark, Ada', 'Patient 1, Ada Lark'],
    ['ada, Ada', 'Patient 1, ada'],
    ['Ada.', 'Patient 1, Ada'],
    ['Ada', 'Patient 1, Ada'],
    ['', 'Patient 1'],
  ])('said as “%s” is shown as “%s”', (name, line) => expect(shown(name)).toBe(line));

  it.each([
    ['Ada. Adam Lark', 'Patient 1, Ada. Adam Lark'],
    ['Lark, Ada', 'Patient 1, Lark, Ada'],
    ['St. John Lark', 'Patient 1, St. John Lark'],
  ])('said as “%s” loses nothing: “%s”', (name, line) => expect(shown(name)).toBe(line));
});
