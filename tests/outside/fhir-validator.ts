// The base validator of the npm package `fhir` with every reference resolved, so that it also sees what each points to.

import { createRequire } from 'node:module';
import type { Bundle } from '../../src/handoff/fhir/index.ts';

interface Message {
  readonly severity: 'fatal' | 'error' | 'warning' | 'info';
  readonly location: string;
  readonly message: string;
}

interface Validator {
  validate(
    resource: object,
    options: { readonly errorOnUnexpected: boolean },
  ): { readonly valid: boolean; readonly messages: readonly Message[] };
}

const { Fhir } = createRequire(import.meta.url)('fhir') as { readonly Fhir: new () => Validator };
const validator = new Fhir();

/** What the package calls an error, an unknown property included; warnings are of bindings that are not required. */
export const faultsOf = (resource: object): readonly string[] =>
  validator
    .validate(resource, { errorOnUnexpected: true })
    .messages.filter(({ severity }) => severity === 'fatal' || severity === 'error')
    .map(({ location, message }) => `${location}: ${message}`);

/** The bundle with `urn:uuid:…` references written as `Type/id`: the package checks the type of those only. */
export function typed(bundle: Bundle): object {
  const types = new Map(bundle.entry.map(({ fullUrl, resource }) => [fullUrl, resource]));
  return JSON.parse(JSON.stringify(bundle), (key, value: unknown) => {
    const target = key === 'reference' && typeof value === 'string' ? types.get(value) : undefined;
    return target === undefined ? value : `${target.resourceType}/${target.id}`;
  }) as object;
}
