// Promises that hold for the FHIR document of every record, tried on invented ones made by chance.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { codeSystems, LOINC } from '../../src/handoff/fhir/index.ts';
import { GCS_ANSWERS } from '../../src/handoff/fhir/loinc.ts';
import { urn } from '../../src/handoff/fhir/scene.ts';
import { stands } from '../../src/record/entry.ts';
import { fhirRecord } from './fhir-arbitrary.ts';
import { documentOf, ofType, resourceFor } from './fhir-input.ts';
import { nothingExamined } from './made-up.ts';

const runs = { numRuns: 120 };

test('every entry that stands is one resource, and no other entry is any', () => {
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const bundle = documentOf(entries);
      for (const entry of entries) expect(resourceFor(bundle, entry.id) !== undefined).toBe(stands(entry));
    }),
    runs,
  );
});

test('side and yes-or-no are those of the entry, and an unconfirmed one is never final, completed or active', () => {
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const bundle = documentOf(entries);
      for (const entry of entries.filter(stands)) {
        const resource = resourceFor(bundle, entry.id);
        expect(resource?.meta?.tag?.map(({ code }) => code)).toEqual([
          entry.state === 'heard' ? 'unconfirmed' : 'confirmed',
        ]);
        if (entry.state === 'heard')
          expect(JSON.stringify(resource)).not.toMatch(/"status":"(final|completed|active)"/);
        if (resource?.resourceType !== 'Observation' || entry.kind !== 'finding') continue;
        expect(resource.valueBoolean).toBe(entry.present);
        const code = entry.side === null ? entry.site : `${entry.side}-${entry.site}`;
        expect(resource.bodySite?.coding?.map((coding) => coding.code)).toEqual([code]);
      }
    }),
    runs,
  );
});

test('every resource of an entry stands in just one section, and every reference leads to a resource', () => {
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const bundle = documentOf(entries, { coverage: nothingExamined });
      const urls = bundle.entry.map(({ fullUrl }) => fullUrl);
      const referred = [...JSON.stringify(bundle).matchAll(/"reference":"([^"]*)"/g)].map(([, url]) => url);
      expect(referred.filter((url) => !urls.includes(url ?? ''))).toEqual([]);
      const listed = (ofType(bundle, 'Composition')[0]?.section ?? []).flatMap(({ entry = [] }) =>
        entry.map(({ reference }) => reference),
      );
      expect(new Set(listed).size).toBe(listed.length);
      for (const entry of entries.filter(stands))
        expect(listed).toContain(urn(resourceFor(bundle, entry.id)?.id ?? ''));
    }),
    runs,
  );
});

test('nothing is empty, and no text holds what the standard forbids', () => {
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const empty: string[] = [];
      const look = (value: unknown, path: string): void => {
        if (value === null || value === undefined || value === '') empty.push(path);
        // FHIR R4, datatypes: a string is not empty and has no control characters but tab, CR and LF.
        if (typeof value === 'string' && (value.trim() === '' || /[\p{Cc}\p{Cs}]/u.test(value)))
          empty.push(path);
        if (typeof value !== 'object' || value === null) return;
        if (Object.keys(value).length === 0) empty.push(path);
        for (const [key, inner] of Object.entries(value)) look(inner, `${path}.${key}`);
      };
      look(documentOf(entries), 'Bundle');
      expect(empty).toEqual([]);
    }),
    runs,
  );
});

test('every code of ours is in the code system that documents it, and every LOINC code in the table', () => {
  const own = new Map(codeSystems.map(({ url, concept }) => [url, new Set(concept.map(({ code }) => code))]));
  const loinc = new Set([...Object.values(LOINC), ...Object.values(GCS_ANSWERS)].map(({ code }) => code));
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const text = JSON.stringify(documentOf(entries, { coverage: nothingExamined }));
      for (const [, system = '', code = ''] of text.matchAll(/"system":"([^"]*)","code":"([^"]*)"/g)) {
        if (system.startsWith('urn:fieldsay:'))
          expect(own.get(system)?.has(code), `${system}#${code}`).toBe(true);
        if (system === 'http://loinc.org') expect(loinc.has(code), code).toBe(true);
      }
    }),
    runs,
  );
});

test('no code system is licensed: none but LOINC, UCUM, HL7’s and our own', () => {
  fc.assert(
    fc.property(fhirRecord, (entries) => {
      const text = JSON.stringify(documentOf(entries));
      const systems = new Set([...text.matchAll(/"system":"([^"]*)"/g)].map(([, system = '']) => system));
      const known =
        /^(http:\/\/loinc\.org|http:\/\/unitsofmeasure\.org|http:\/\/terminology\.hl7\.org\/CodeSystem\/[\w-]+|urn:fieldsay:codes:[\w-]+|urn:ietf:rfc:3986)$/;
      expect([...systems].filter((system) => !known.test(system))).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
