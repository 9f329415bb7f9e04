// Sentences made from templates mean what they were made to mean, with their commas and, as a recogniser gives them, without.

import { describe, expect, it } from 'vitest';
import { fillOf, said } from './composed/fill.ts';
import { TEMPLATES } from './composed/templates.ts';
import { statementsOf } from './read.ts';

const EACH = 25;

/** What a talk gives as findings; those that are put to the partner as a question stand apart. */
function findingsOf(talk: string): { readonly sure: readonly string[]; readonly asked: readonly string[] } {
  const found = statementsOf(talk).flatMap(({ statement, doubt }) =>
    statement.kind === 'finding'
      ? [
          {
            line: said(statement.finding, statement.side, statement.site, statement.present),
            isAsked: doubt.length > 0,
          },
        ]
      : [],
  );
  const lines = (asked: boolean) => found.filter(({ isAsked }) => isAsked === asked).map(({ line }) => line);
  return { sure: lines(false), asked: lines(true) };
}

const asHeard = (talk: string): string => talk.replace(/[,:?.]/g, '').toLowerCase();

describe.each(Object.entries(TEMPLATES))('%s', (_, template) => {
  const sentences = Array.from({ length: EACH }, (_, i) => template(fillOf(7 + 131 * i)));

  it('means just that as it is written', () => {
    const wrong = sentences.filter(({ talk, means }) => {
      const { sure, asked } = findingsOf(talk);
      return [...sure, ...asked].toSorted().join('; ') !== means.toSorted().join('; ');
    });
    expect(wrong.map(({ talk }) => ({ talk, ...findingsOf(talk) }))).toEqual([]);
  });

  it('means nothing else as it is heard, without commas', () => {
    const wrong = sentences.filter(({ talk, means }) =>
      findingsOf(asHeard(talk)).sure.some((line) => !means.includes(line)),
    );
    expect(wrong.map(({ talk }) => ({ talk: asHeard(talk), ...findingsOf(asHeard(talk)) }))).toEqual([]);
  });
});
