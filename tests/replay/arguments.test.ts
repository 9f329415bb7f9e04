// The command line's words: one option at most, one file at least.

import { describe, expect, it } from 'vitest';
import { FORMS, readArguments } from '../../src/replay/arguments.ts';

describe('the command line', () => {
  it.each(FORMS)('takes --%s, before or after the file', (form) => {
    const expected = { kind: 'run', form, files: ['a.talk'] };
    expect(readArguments([`--${form}`, 'a.talk'])).toEqual(expected);
    expect(readArguments(['a.talk', `--${form}`])).toEqual(expected);
  });

  it('prints the report where no option is given, of every file in the order named', () => {
    expect(readArguments(['b.talk', '-', 'a.talk'])).toEqual({
      kind: 'run',
      form: 'report',
      files: ['b.talk', '-', 'a.talk'],
    });
  });

  it('takes what follows -- as files', () => {
    expect(readArguments(['--soap', '--', '--json'])).toEqual({
      kind: 'run',
      form: 'soap',
      files: ['--json'],
    });
  });

  it.each([
    ['no words', []],
    ['an option without a file', ['--json']],
    ['two options', ['--json', '--soap', 'a.talk']],
    ['the same option twice', ['--json', '--json', 'a.talk']],
    ['an unknown option', ['--xml', 'a.talk']],
    ['an unknown short option', ['-j', 'a.talk']],
    ['an option with a value', ['--json=pretty', 'a.talk']],
    ['standard input twice', ['-', '-']],
    ['a nameless file', ['']],
  ])('is wrong with %s', (_title, words) => {
    expect(readArguments(words).kind).toBe('usage');
  });
});
