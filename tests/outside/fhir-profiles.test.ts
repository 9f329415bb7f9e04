// Holds every Observation that claims one of HL7's vital-signs profiles against that profile, as HL7 publishes it.
//
// Source: HL7 FHIR 4.0.1 vital-signs profiles (profiles-others; seen), read beside the project: fixed values, counts,
// slices and constraints. The profile is the authority here, not a table of ours.

import { describe, expect, test } from 'vitest';
import type { Bundle, Observation } from '../../src/handoff/fhir/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { documentOf, ofType } from '../handoff/fhir-input.ts';
import { made } from '../handoff/made-up.ts';
import { bundlesMade } from './fhir-bundles.ts';
import { hasFhirData, vitalSignsProfiles } from './fhir-data.ts';
import { departures } from './fhir-profile.ts';

const BUNDLES = bundlesMade();

const pulse = made('p', { kind: 'vital', vital: 'pulse', value: { rate: 92 } });
const pressure = made('b', {
  kind: 'vital',
  vital: 'blood-pressure',
  value: { systolic: 118, diastolic: 76 },
});

/** Units where the profile has a value set instead of a fixed code (HL7 ValueSets ucum-bodytemp, ucum-bodyweight; seen). */
const UNITS: Readonly<Record<string, readonly string[]>> = {
  bodytemp: ['Cel', '[degF]'],
  bodyweight: ['g', 'kg', '[lb_av]'],
};

function profileTests(): void {
  const claimed = (bundles: readonly Bundle[]): readonly (readonly [string, Observation])[] =>
    bundles
      .flatMap((bundle) => ofType(bundle, 'Observation'))
      .flatMap((one) => (one.meta?.profile ?? []).map((url) => [url, one] as const));

  test('are each met by every Observation that claims them, in 500 records', () => {
    const profiles = vitalSignsProfiles();
    const met = new Map<string, number>();
    for (const [url, observation] of claimed(BUNDLES)) {
      const profile = profiles.get(url);
      expect(profile, url).toBeDefined();
      if (profile === undefined) continue;
      expect(departures(profile, observation), url).toEqual([]);
      const units = UNITS[profile.id];
      if (units !== undefined) expect(units).toContain(observation.valueQuantity?.code);
      met.set(profile.id, (met.get(profile.id) ?? 0) + 1);
    }
    expect([...met.keys()].sort()).toEqual(
      ['bodytemp', 'bodyweight', 'bp', 'heartrate', 'oxygensat', 'resprate', 'vitalspanel'].sort(),
    );
    expect(Math.min(...met.values())).toBeGreaterThan(10);
  });

  test('are claimed by every Observation that is coded as one of them', () => {
    const codes = new Map<string, string>();
    for (const { url, snapshot } of vitalSignsProfiles().values())
      for (const { id, fixedCode } of snapshot.element)
        if (/^Observation\.code\.coding:[^.]*\.code$/.test(id) && fixedCode !== undefined)
          codes.set(fixedCode, url);
    expect(codes.size).toBeGreaterThan(6);
    for (const bundle of BUNDLES)
      for (const { code, meta } of ofType(bundle, 'Observation'))
        for (const coding of code.coding ?? []) {
          const url = codes.get(coding.code);
          if (url !== undefined && coding.system === 'http://loinc.org') expect(meta?.profile).toContain(url);
        }
  });

  const broken: readonly (readonly [what: string, entry: Entry, from: string, to: string])[] = [
    ['another code', pulse, '8867-4', '8867-5'],
    ['another unit', pulse, '"/min"', '"/s"'],
    ['no unit to show', pulse, '"unit"', '"units"'],
    ['another category', pulse, '"vital-signs"', '"exam"'],
    ['no time', pulse, '"effectiveDateTime"', '"effective"'],
    ['no value and no reason', pulse, '"valueQuantity"', '"quantity"'],
    ['no lower pressure', pressure, '8462-4', '8462-5'],
    [
      'a lower pressure in another unit',
      pressure,
      '"value":76,"unit":"mmHg","system":"http://unitsofmeasure.org","code":"mm[Hg]"',
      '"value":76,"unit":"mmHg","system":"http://unitsofmeasure.org","code":"kPa"',
    ],
  ];
  test.each(broken)('would miss what has %s', (_what, entry, from, to) => {
    const bundle = documentOf([entry]);
    const [claim] = claimed([bundle]);
    const profile = vitalSignsProfiles().get(claim?.[0] ?? '');
    const text = JSON.stringify(claim?.[1]);
    expect(text).toContain(from);
    if (profile === undefined) throw new Error('no profile');
    expect(departures(profile, JSON.parse(text.replaceAll(from, to)) as object)).not.toEqual([]);
  });
}

if (hasFhirData) {
  describe('HL7’s vital-signs profiles', profileTests);
} else {
  const title = 'NOT CHECKED: HL7’s vital-signs profiles are needed in ../shared/data/fhir';
  console.info(title);
  test(title, () => expect(hasFhirData).toBe(false));
}
