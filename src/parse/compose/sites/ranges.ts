// "Scraped from elbow to wrist", "between the knee and the ankle": a range on one limb or the spine is both places that it names and what lies between
// them, or only that. Without the forearm nobody could reckon how much skin is burned.

import { isPaired, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { saidIn, type Token } from '../../token.ts';
import { hasRole, type Item, phraseOf, type SitePhrase, wordsOf } from './item.ts';

const CHAINS: readonly (readonly (readonly Site[])[])[] = [
  [
    ['shoulder', 'armpit'],
    ['upper-arm'],
    ['elbow'],
    ['forearm'],
    ['wrist'],
    ['hand', 'palm'],
    ['fingers', 'thumb', 'index-finger', 'middle-finger', 'ring-finger', 'little-finger'],
  ],
  [
    ['hip', 'groin', 'buttock'],
    ['thigh'],
    ['knee'],
    ['lower-leg'],
    ['ankle'],
    ['foot', 'heel'],
    ['toes', 'big-toe', 'little-toe'],
  ],
  [['neck', 'cervical-spine'], ['thoracic-spine'], ['lumbar-spine'], ['sacrum'], ['tailbone']],
];

/** The sites between two of one limb, from the first on; none where they are neighbours or not of one limb. */
function between(from: Site, to: Site): readonly Site[] {
  for (const chain of CHAINS) {
    const [a = -1, b = -1] = [from, to].map((site) => chain.findIndex((link) => link.includes(site)));
    if (a < 0 || b < 0) continue;
    const inner = chain.slice(Math.min(a, b) + 1, Math.max(a, b)).flatMap(([site]) => site ?? []);
    return a < b ? inner : inner.toReversed();
  }
  return [];
}

/** The items with each range joined into one phrase. */
export function joinRanges(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const at = out.findLastIndex((one) => one.type === 'site');
    const [before, after] = [phraseOf(out[at]), phraseOf(item)];
    const joints = out.slice(at + 1);
    const mayJoin = joints.every((one) => JOINTS.some((role) => hasRole(one, role)));
    const phrase = before !== null && after !== null && mayJoin ? joined(before, after, tokens) : null;
    if (phrase === null) out.push(item);
    else {
      // The words that lead to a range are its own.
      const first = out.findIndex((one) => wordsOf(one).from >= phrase.from);
      out.splice(first, out.length - first, { type: 'site', phrase });
    }
  }
  return out;
}

const JOINTS = ['small', 'talk', 'negation', 'part'] as const;

const OWN = '(?:the|his|her|my|your|their|this|that|left|right|just|about|around)';
const TO = new RegExp(
  `^(?:(?:right|all|the|way|straight|just|down|up|along|across|over|round|through|on|so) )*(?:to|as far as) (?:${OWN} )*`,
);
const AND = /^and /;
const FROM = new RegExp(`(?:^| )from(?: ${OWN})*$`);
const BETWEEN = new RegExp(`(?:^| )between(?: ${OWN})*$`);
// What has moved from one place to another is there no longer, and blood that runs down comes from the first alone.
const MOVED =
  /\b(mov(ed|es|ing)|went|gone|shifted|travel(s|led|ling)|spread(s|ing)?|radiat(es|ing)|carried|transferred|came?|coming)( \w+){0,3}$/;
const RUNS = /\b(blood|bleed(s|ing)?|fluid|pus|trickl\w+|dripp\w+|leak\w*)\b/;
const REACH = 5;
const ENDS = /^(end|ask|dash)$/;

function joined(a: SitePhrase, b: SitePhrase, tokens: readonly Token[]): SitePhrase | null {
  const [from, to] = [a.sites[0], b.sites[0]];
  if (from === undefined || to === undefined || a.sites.length > 1 || b.sites.length > 1) return null;
  if (tokens.slice(a.from, b.from).some(({ pause }) => ENDS.test(pause))) return null;
  const link = saidIn(tokens, a.to, b.to);
  const lead = saidIn(tokens, Math.max(0, a.from - REACH), a.from);
  const own = saidIn(tokens, a.from, a.to);
  const isOneSide = from.side === null || to.side === null || from.side === to.side;
  const side = from.side === null ? to : from;
  const ref = (one: SiteRef, stretch: SiteRef['stretch']): SiteRef => ({
    ...one,
    ...(isOneSide && isPaired(one.site) ? { side: side.side, sideKnown: side.sideKnown } : {}),
    ...(stretch === undefined ? {} : { stretch }),
  });
  const isPlain = isOneSide && from.level === null && to.level === null;
  const inner = (isPlain ? between(from.site, to.site) : []).map((site) =>
    ref({ ...from, site, parts: [], level: null }, 'between'),
  );
  const isFrom = FROM.test(lead) || /^from /.test(own);
  if (BETWEEN.test(lead) && AND.test(link) && inner.length > 0) return betweenOf(a, b, inner, tokens);
  if (!TO.test(link) || (isFrom && (RUNS.test(lead) || MOVED.test(lead.replace(FROM, ''))))) return null;
  // "Elbow to wrist": without its "from" only two joints with a part of the limb between them are a range.
  if (!isFrom && !(inner.length > 0 && JOINED.has(from.site) && JOINED.has(to.site))) return null;
  const stretch = inner.length > 0 ? ('end' as const) : undefined;
  return rangeOf(a, b, [ref(from, stretch), ...inner, ref(to, stretch ?? 'end')]);
}

// "Halfway between the knee and the ankle."
function betweenOf(
  a: SitePhrase,
  b: SitePhrase,
  inner: readonly SiteRef[],
  tokens: readonly Token[],
): SitePhrase {
  const at = tokens.findIndex(({ word }, k) => k >= a.from - REACH && k < a.from && HALFWAY.test(word));
  const isHalf = at >= 0 && inner.length === 1;
  const from = isHalf ? at - (/^(half|mid)$/.test(tokens[at - 1]?.word ?? '') ? 1 : 0) : a.from;
  const sites = isHalf ? inner.map((ref) => ({ ...ref, parts: ['mid' as const] })) : inner;
  return { ...rangeOf(a, b, sites), from };
}

const HALFWAY = /^(halfway|midway|way)$/;

const JOINED: ReadonlySet<Site> = new Set<Site>(['shoulder', 'elbow', 'wrist', 'hip', 'knee', 'ankle']);

const rangeOf = (a: SitePhrase, b: SitePhrase, sites: readonly SiteRef[]): SitePhrase => ({
  ...a,
  to: b.to,
  sites,
  led: true,
  sideLast: b.sideLast,
  doubtful: false,
  homophone: a.homophone ?? b.homophone,
});
