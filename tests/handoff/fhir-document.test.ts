// What holds of the FHIR document as a whole: confirmation, what no longer stands, what is absent; entries are invented.

import { describe, expect, test } from 'vitest';
import { confirmationsOf } from '../../src/handoff/fhir/index.ts';
import { genderOf } from '../../src/handoff/fhir/patient.ts';
import { BY_HAND, confirmEntries } from '../../src/record/index.ts';
import type { FindingStatement, HistoryStatement, Topic } from '../../src/terms/index.ts';
import { finding, hearAll } from '../record/fake-reader.ts';
import {
  documentOf,
  type FhirInput,
  observed,
  ofType,
  resourceFor,
  resourceOfStatement,
} from './fhir-input.ts';
import { clockTime, made, nothingExamined } from './made-up.ts';

const swelling: FindingStatement = {
  kind: 'finding',
  site: 'wrist',
  side: 'right',
  finding: 'swelling',
  present: true,
};
const history = (topic: Topic, text: string, more: Partial<HistoryStatement> = {}): HistoryStatement => ({
  kind: 'history',
  topic,
  text,
  ...more,
});
const notesIn = (resource: { readonly note?: readonly { readonly text: string }[] }): string =>
  (resource.note ?? []).map(({ text }) => text).join(' | ');

describe('what is not confirmed', () => {
  const facts = { state: 'heard', known: { side: 'carried' }, doubt: ['Left or right?'] } as const;

  test('is preliminary and tagged, with what was not spoken and what is in doubt', () => {
    const heard = observed(swelling, facts);
    expect(heard).toMatchObject({ status: 'preliminary', meta: { tag: [{ code: 'unconfirmed' }] } });
    expect(notesIn(heard)).toBe(
      'Heard: “words of a” | Unconfirmed. | Side carried, not spoken. | To settle: Left or right?',
    );
    expect(heard.text?.div).toContain('(unconfirmed; side carried)');
  });

  test('loses those marks once it is confirmed', () => {
    const confirmed = observed(swelling, { ...facts, state: 'confirmed' });
    expect(confirmed).toMatchObject({ status: 'final', meta: { tag: [{ code: 'confirmed' }] } });
    expect(notesIn(confirmed)).toBe('Heard: “words of a”');
  });

  test('is no completed act and no medicine in use', () => {
    const tourniquet = { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' } as const;
    const aspirin = { kind: 'care', care: 'medication', text: 'aspirin' } as const;
    const status = (state: 'heard' | 'confirmed') =>
      [tourniquet, aspirin, history('medications', 'metoprolol')].map((said) => {
        const resource = resourceOfStatement(said, { state });
        return resource !== undefined && 'status' in resource ? resource.status : null;
      });
    expect(status('heard')).toEqual(['unknown', 'unknown', 'unknown']);
    expect(status('confirmed')).toEqual(['completed', 'completed', 'active']);
  });

  test('makes the whole document preliminary', () => {
    const sure = made('a', swelling);
    const unsure = made('b', swelling, { state: 'heard' });
    const status = (...entries: (typeof sure)[]) => ofType(documentOf(entries), 'Composition')[0]?.status;
    expect([status(sure), status(sure, unsure), status()]).toEqual(['final', 'preliminary', 'preliminary']);
  });
});

describe('what no longer stands', () => {
  test.each(['struck', 'replaced'] as const)('%s is nowhere in the document', (state) => {
    const kept = made('kept', { ...swelling, site: 'knee' });
    const gone = made('gone', { ...swelling, finding: 'amputation' }, { state, heard: 'xylophone' });
    const text = JSON.stringify(documentOf([kept, gone]));
    expect(text).not.toMatch(/amputation|xylophone/i);
    expect(resourceFor(documentOf([kept, gone]), 'kept')).toBeDefined();
  });
});

describe('the patient', () => {
  const patient = (...entries: ReturnType<typeof made>[]) => ofType(documentOf(entries), 'Patient')[0];

  test('of whom nothing was told has an absent name and an unknown sex', () => {
    expect(patient()).toMatchObject({ name: [{ extension: [{ valueCode: 'unknown' }] }], gender: 'unknown' });
  });

  test('has the name told, for temporary use until it is confirmed', () => {
    const name = history('name', 'Jo Invented');
    expect(patient(made('a', name))?.name).toEqual([{ text: 'Jo Invented' }]);
    expect(patient(made('a', name, { state: 'heard' }))).toMatchObject({
      name: [{ use: 'temp', text: 'Jo Invented' }],
      meta: { tag: [{ code: 'unconfirmed' }] },
    });
  });

  test.each([
    [['male'], 'male'],
    [['she is a woman'], 'female'],
    [['female'], 'female'],
    [['male', 'female'], 'unknown'],
    [['not male'], 'unknown'],
    [['Tallahassee'], 'unknown'],
    [[], 'unknown'],
  ] as const)('told as %j is %s', (texts, gender) => {
    const told = texts.map((text, index) => made(`${index}`, history('sex', text)));
    expect(genderOf(told as Parameters<typeof genderOf>[0])).toBe(gender);
  });
});

describe('what was not examined', () => {
  const coverageIn = (more: Partial<FhirInput>) =>
    ofType(documentOf([], more), 'Observation').find(({ code }) => code.coding?.[0]?.code === 'coverage');

  test('is absent data at each place, and has no value', () => {
    const components = coverageIn({ coverage: nothingExamined })?.component ?? [];
    expect(components).toHaveLength(nothingExamined.length);
    for (const component of components) {
      expect(component.dataAbsentReason?.coding?.[0]?.code).toBe('not-performed');
      expect(Object.keys(component).filter((key) => key.startsWith('value'))).toEqual([]);
    }
  });

  test('differs from what was touched, denied or found', () => {
    const states = ['touched', 'clear', 'found'] as const;
    const coverage = states.map((state) => ({ site: 'knee', side: 'left', state }) as const);
    const codes = coverageIn({ coverage })?.component?.map(
      (one) => one.valueCodeableConcept?.coding?.[0]?.code,
    );
    expect(codes).toEqual([...states]);
  });

  test('is not made up where coverage was not worked out', () => {
    expect(coverageIn({ coverage: [] })).toBeUndefined();
  });
});

describe('the sections', () => {
  const sections = (...entries: ReturnType<typeof made>[]) =>
    ofType(documentOf(entries, { flags: [] }), 'Composition')[0]?.section ?? [];

  test('are all there in an empty record, with their data absent and not with "none"', () => {
    const bare = sections();
    expect(bare).toHaveLength(10);
    for (const { title, entry, emptyReason, text } of bare) {
      expect(entry).toBeUndefined();
      if (title !== 'Criteria for field triage')
        expect(emptyReason?.coding?.[0], title).toMatchObject({ code: 'unknown' });
      expect(text.div).not.toContain('nil');
    }
  });

  test('tell in words what they point to', () => {
    const examination = sections(made('a', swelling)).find(({ title }) => title === 'Examination');
    expect(examination?.entry).toHaveLength(1);
    expect(examination?.text.div).toContain('<p>Right wrist: swelling.</p>');
  });

  test('hold no markup that was said', () => {
    const kept = sections(made('a', { kind: 'note', text: '<b>& "so"' })).find(
      ({ title }) => title === 'Kept as said',
    );
    expect(kept?.text.div).toContain('“&lt;b&gt;&amp; &quot;so&quot;”');
  });
});

describe('who confirmed', () => {
  const agents = (by: string, people = {}) =>
    documentOf([made('a', swelling), made('b', swelling, { state: 'heard' })], {
      confirmations: [{ entries: ['a', 'b'], by, at: clockTime('14:10') }],
      people,
    });

  test('by hand is the partner, with a name where it is known', () => {
    const bundle = agents(BY_HAND, { partner: 'Sam Invented' });
    const confirmation = ofType(bundle, 'Provenance')[1];
    const partner = ofType(bundle, 'Practitioner').find(({ name }) => name[0]?.text === 'Sam Invented');
    expect(confirmation?.agent).toMatchObject([
      { type: { coding: [{ code: 'verifier' }] }, who: { reference: `urn:uuid:${partner?.id}` } },
    ]);
    expect(confirmation).toMatchObject({ recorded: clockTime('14:10') });
    expect(confirmation?.target).toHaveLength(1);
  });

  test('by voice is one of the two, with the words', () => {
    const bundle = agents('confirm that');
    expect(ofType(bundle, 'Provenance')[1]).toMatchObject({
      activity: { text: 'Confirmed by voice: “confirm that”' },
      agent: [{ who: { display: 'Responder or partner, by voice' } }],
    });
    expect(ofType(bundle, 'Practitioner')).toHaveLength(1);
  });

  test('is said to be unknown where the log was not handed in', () => {
    const bundle = documentOf([made('a', swelling)]);
    expect(ofType(bundle, 'Provenance')[1]?.agent[0]?.who).toEqual({ display: 'Not recorded' });
  });

  test('is read from the log', () => {
    const exam = hearAll({ swollen: [finding()] });
    const ids = exam.state.entries.map(({ id }) => id);
    const { events } = confirmEntries(exam, ids, Date.parse(clockTime('14:07')));
    expect(ids).toHaveLength(1);
    expect(confirmationsOf(events)).toEqual([{ entries: ids, by: BY_HAND, at: clockTime('14:07') }]);
  });
});

describe('identifiers', () => {
  const entries = [made('a', swelling), made('b', { kind: 'note', text: 'so' })];
  const urls = (more = {}) => documentOf(entries, more).entry.map(({ fullUrl }) => fullUrl);

  test('are the same each time, and each its own', () => {
    expect(urls()).toEqual(urls());
    expect(new Set(urls()).size).toBe(urls().length);
  });

  test('are another examination’s in none', () => {
    expect(urls({ record: 'another invented one' }).filter((url) => urls().includes(url))).toEqual([]);
  });

  test('of a document made later differ only in the document itself', () => {
    const later = { now: Date.parse(clockTime('15:00')) };
    expect(urls(later)).toEqual(urls());
    expect(documentOf(entries, later).identifier).not.toEqual(documentOf(entries).identifier);
  });
});
