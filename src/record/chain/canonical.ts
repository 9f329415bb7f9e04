// One text for one value, whatever the order of its members: the JSON Canonicalization Scheme (RFC 8785, June 2020).

/**
 * The canonical text of a JSON value. Members without a value (undefined) are left out, as JSON does.
 * RFC 8785 section 3.2.2: numbers and strings as ECMAScript writes them; section 3.2.3: members sorted by the UTF-16
 * code units of their names, which is what sorting strings does here.
 */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((one) => canonical(one ?? null)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value).filter(([, member]) => member !== undefined);
    members.sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${canonical(member)}`).join(',')}}`;
  }
  return JSON.stringify(value) ?? 'null';
}
