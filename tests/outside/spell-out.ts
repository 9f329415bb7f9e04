// Spells whole numbers and decimals by the Unicode CLDR rule-based number format (RBNF), so far as English needs it.

/** A rule set of the CLDR's JSON: pairs of a base ("100", "100000/1000", "x.x") and the text to write. */
export type RuleSets = Readonly<Record<string, readonly (readonly [base: string, text: string])[] | string>>;

interface Rule {
  readonly base: number;
  readonly divisor: number;
  readonly text: string;
}

function ruleOf(base: string, text: string): Rule {
  const [from = '0', radixText = '10'] = base.split('/');
  const [value, radix] = [Number(from), Number(radixText)];
  // the highest power of the radix that is not above the base
  const power = value < 1 ? 0 : Math.floor(Math.log(value) / Math.log(radix) + 1e-9);
  // a leading apostrophe keeps the space after it; a semicolon ends the rule
  return { base: value, divisor: radix ** power, text: text.replace(/^'/, '').replace(/;$/, '') };
}

function rulesOf(sets: RuleSets, name: string): readonly (readonly [string, string])[] {
  const rules = sets[name];
  if (rules === undefined || typeof rules === 'string') throw new Error(`no rule set ${name}`);
  return rules;
}

/** A whole number in words, by the named rule set. */
export function spellWhole(sets: RuleSets, name: string, value: number): string {
  const rule = rulesOf(sets, name)
    .filter(([base]) => /^\d/.test(base))
    .map(([base, text]) => ruleOf(base, text))
    .findLast(({ base }) => base <= value);
  if (rule === undefined) throw new Error(`no rule for ${value} in ${name}`);
  const [above, rest] = [Math.floor(value / rule.divisor), value % rule.divisor];
  const spell = (set: string, part: number) => spellWhole(sets, set === '' ? name : set, part);
  return rule.text
    .replace(/\[([^\]]*)\]/, rest === 0 ? '' : '$1')
    .replace(/←(%*[\w-]*)←/g, (_, set: string) => spell(set, above))
    .replace(/→(%*[\w-]*)→/g, (_, set: string) => spell(set, rest))
    .replace(/=(%+[\w-]+)=/g, (_, set: string) => spell(set, value));
}

/** A decimal in words: its rule is "x.x", and the digits after the point are spelled one by one. */
export function spellDecimal(sets: RuleSets, name: string, whole: number, decimals: string): string {
  const [, text = ''] = rulesOf(sets, name).find(([base]) => base === 'x.x') ?? [];
  const digits = [...decimals].map((digit) => spellWhole(sets, name, Number(digit))).join(' ');
  return text
    .replace(/;$/, '')
    .replace('←←', spellWhole(sets, name, whole))
    .replace('→→', digits);
}
