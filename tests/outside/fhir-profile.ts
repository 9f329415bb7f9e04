// Reads a FHIR profile's snapshot and says in what a resource departs from it: counts, fixed values and slices.

/** An element of a StructureDefinition's snapshot, as far as this check reads it. */
interface Element {
  readonly id: string;
  readonly min: number;
  readonly max: string;
  readonly fixedUri?: string;
  readonly fixedCode?: string;
  readonly slicing?: { readonly discriminator: readonly { readonly type: string; readonly path: string }[] };
}

export interface Profile {
  readonly id: string;
  readonly url: string;
  readonly snapshot: { readonly element: readonly Element[] };
}

type Json = Readonly<Record<string, unknown>>;

const listed = (value: unknown): readonly unknown[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value];

/** What stands at an element's name; `value[x]` is any key that begins with `value` and a type. */
function valuesAt(value: unknown, name: string): readonly unknown[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!name.endsWith('[x]')) return listed((value as Json)[name]);
  const stem = new RegExp(`^${name.slice(0, -3)}[A-Z]`);
  return Object.entries(value)
    .filter(([key]) => stem.test(key))
    .flatMap(([, inner]) => listed(inner));
}

const deepValues = (value: unknown, path: string): readonly unknown[] =>
  path
    .split('.')
    .reduce<readonly unknown[]>((found, name) => found.flatMap((one) => valuesAt(one, name)), [value]);

const lastName = (id: string): string => id.split('.').at(-1) ?? '';
const parentOf = (id: string): string => id.split('.').slice(0, -1).join('.');

/** The value that a slice fixes at a discriminator's path, through slices within it. */
function fixedAt(elements: readonly Element[], slice: string, path: string): string | undefined {
  const plain = (id: string): string => id.replace(/:[^.]*/g, '');
  const target = `${plain(slice)}.${path}`;
  const found = elements.find(
    ({ id, fixedCode, fixedUri }) =>
      id.startsWith(`${slice}.`) && plain(id) === target && (fixedCode ?? fixedUri) !== undefined,
  );
  return found?.fixedCode ?? found?.fixedUri;
}

/** True for a value that belongs to the slice by its discriminators; of type slices, by the key it stood under. */
function inSlice(profile: Profile, sliced: Element | undefined, slice: string, value: unknown): boolean {
  return (sliced?.slicing?.discriminator ?? []).every(({ type, path }) => {
    if (type !== 'value') return true;
    const fixed = fixedAt(profile.snapshot.element, slice, path);
    return fixed !== undefined && deepValues(value, path).includes(fixed);
  });
}

function within(profile: Profile, parent: string, value: unknown): readonly string[] {
  const elements = profile.snapshot.element;
  return elements
    .filter(({ id }) => parentOf(id) === parent)
    .flatMap((element): readonly string[] => {
      const [name = '', slice] = lastName(element.id).split(':');
      const all = valuesAt(value, slice?.startsWith('value') === true ? slice : name);
      const sliced = elements.find(({ id }) => id === `${parent}.${name}`);
      const mine = slice === undefined ? all : all.filter((one) => inSlice(profile, sliced, element.id, one));
      const fixed = element.fixedCode ?? element.fixedUri;
      return [
        ...(mine.length < element.min ? [`${element.id}: ${mine.length} of at least ${element.min}`] : []),
        ...(element.max !== '*' && mine.length > Number(element.max)
          ? [`${element.id}: ${mine.length} of at most ${element.max}`]
          : []),
        ...mine.flatMap((one) => [
          ...(fixed !== undefined && one !== fixed ? [`${element.id}: ${String(one)} is not ${fixed}`] : []),
          ...within(profile, element.id, one),
        ]),
      ];
    });
}

/** HL7's constraints vs-1, vs-2, vs-3 and obs-6 of the vital-signs profile, in words of code (its FHIRPath, seen). */
function constraints(resource: Json): readonly string[] {
  const components = listed(resource.component) as readonly Json[];
  const bare = components.length === 0 && resource.hasMember === undefined;
  const has = (one: Json): boolean =>
    valuesAt(one, 'value[x]').length > 0 || one.dataAbsentReason !== undefined;
  const both = (one: Json): boolean =>
    valuesAt(one, 'value[x]').length > 0 && one.dataAbsentReason !== undefined;
  return [
    ...(valuesAt(resource, 'effective[x]').some((one) => typeof one === 'string' && one.length < 8)
      ? ['vs-1']
      : []),
    ...(bare && !has(resource) ? ['vs-2'] : []),
    ...(components.every(has) ? [] : ['vs-3']),
    ...(both(resource) ? ['obs-6'] : []),
  ];
}

/** What is wrong with the resource by the profile; empty where it conforms. */
export const departures = (profile: Profile, resource: object): readonly string[] => [
  ...within(profile, 'Observation', resource),
  ...constraints(resource as Json),
];
