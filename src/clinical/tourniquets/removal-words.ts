// Whether the words of a note say that a tourniquet was taken off, and from where. The record knows no end of care: it
// keeps such talk in words (common practice of responders' talk, no source).

import type { Side, Site } from '../../terms/index.ts';

/** `off`: it was taken off; `whether`: it may still hold (loosened, swapped, an order to take it off). */
export type Removal = 'off' | 'whether';

const TQ = String.raw`\b(?:tourniquets?|turniquets?|t ?qs?)(?:'s)?`;
/** Words that may stand between a tourniquet and what became of it; any other parts the two. */
const FILL = String.raw`(?:(?:is|was|has|have|had|been|being|are|were|now|just|already|also|both|all|then|it|on|to|at|from|of|over|above|below|the|a|his|her|their|my|that|this|first|second|other|old|left|right|upper|lower|arms?|legs?|thighs?|calf|shin|forearms?|bicep|hands?|wrists?|elbows?|knees?|ankles?|foot|feet|shoulder|groin)\s+)*`;
const OFF = String.raw`(?:(?:came|come|comes|slipped|slid|fell|fallen|taken|cut|pulled|popped|worked|went|gone|let|brought)\s+)?(?:off|down)\b|(?:removed|released|undone|unwound|discontinued|let go|let off)\b`;
const DONE = String.raw`(?:removed|removing|released|releasing|undid|undoing|unwound|discontinued|discontinuing|(?:took|taken|taking|cut|cutting|pulled|got|let)\s+(?:off|down|go of)|got rid of)\s+`;
const TAKEN = String.raw`\b(?:took|taken|taking|got|cut|cutting|pulled|pulling|let|had)\s+`;
/** What a tourniquet is taken from that wears none: it was fetched. */
const KIT = String.raw`(?!\s+(?:the |my |his |her |our |their )?(?:belt|pack|bag|kit|vest|harness|shelf|rack|truck|rig|sled)\b)`;

const SAYS_OFF = new RegExp(
  [
    `${TQ}\\s+${FILL}(?:${OFF})${KIT}`,
    `${DONE}${FILL}${TQ}${KIT}`,
    `${TAKEN}${FILL}${TQ}\\s+${FILL}(?:off|from|down)\\b${KIT}`,
  ].join('|'),
);
const SAYS_CHANGED = new RegExp(
  [
    `\\b(?:loosened|loosening|loosen|slackened|eased|easing|converted|converting|swapped|replaced|changed|remove|release|undo|(?:take|get) off)\\s+${FILL}${TQ}`,
    `\\b(?:take|get)\\s+${FILL}${TQ}\\s+${FILL}off\\b${KIT}`,
    `${TQ}\\s+${FILL}(?:loosened|(?:came |worked |come )?loose|slack|eased|converted|swapped|replaced|changed|slipped|undo|coming off)\\b`,
  ].join('|'),
);
/** Behind these nothing was taken off: it is denied, meant for later, or asked. */
const NOT_DONE =
  /\b(?:no one|nobody|not|never|without|cannot|\w+n't|dont|wont|going to|gonna|will|\w+'ll|want|wants|about to|plan|before|if|until|till|should|could|can|may|might|shall|need|needs|ready|try|trying|would|keep|leave)\b/;
const ASKS = /^(?:is|was|are|were|has|have|had|did|does|do|should|could|can|who)\b|\?/;
/** Behind these it is told of a moment that may be still to come. */
const MAYBE = /\b(?:when|once|as soon as|tell me|let me know|take|get)\b/;
/** It was off for a while only, or is about to be. */
const FOR_NOW = /\bcoming off\b|\boff (?:for|and on)\b/;
const ON_AGAIN = /\b(?:back on|on again|re ?-?applied|re ?-?tightened|tightened again|put (?:it|one) on)\b/;

/** `off at nine twenty`, `I've removed`: what became of care that was told in the same breath. */
const REST = /^(?:and |then |but )*(?:it )?(?:was |is |came |taken |got )*(?:off|removed|released|undone)\b/;
const REST_END = /\b(?:removed|released|taken off|took off|undid)$/;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[^a-z0-9'?\s]/g, ' | ')
    .replace(/\s+/g, ' ')
    .trim();

/** What the words say of a tourniquet's end; null where they say nothing of it. */
export function removalIn(text: string): Removal | null {
  const words = plain(text);
  if (ASKS.test(words)) return null;
  const off = SAYS_OFF.exec(words);
  const found = off ?? SAYS_CHANGED.exec(words);
  if (found === null) return null;
  const before = words.slice(0, found.index).split('|').at(-1) ?? '';
  if (NOT_DONE.test(before) || NOT_DONE.test(found[0])) return null;
  return off === null || MAYBE.test(before) || FOR_NOW.test(words) || ON_AGAIN.test(words)
    ? 'whether'
    : 'off';
}

/** True where the words, kept of a breath that told of a tourniquet, say without its name that it is off. */
export const saysRestOff = (text: string): boolean => {
  const words = plain(text).replace(/[| ]+$/, '');
  return (REST.test(words) || REST_END.test(words)) && !NOT_DONE.test(words) && !words.includes('?');
};

const SITES: readonly (readonly [words: RegExp, site: Site])[] = [
  [/\bupper arms?\b|\bbiceps?\b/, 'upper-arm'],
  [/\bupper legs?\b|\bthighs?\b/, 'thigh'],
  [/\blower arms?\b|\bforearms?\b/, 'forearm'],
  [/\blower legs?\b|\bcal(?:f|ves)\b|\bshins?\b/, 'lower-leg'],
  [/\barms?\b/, 'arm'],
  [/\blegs?\b/, 'leg'],
  [/\belbows?\b/, 'elbow'],
  [/\bwrists?\b/, 'wrist'],
  [/\bhands?\b/, 'hand'],
  [/\bknees?\b/, 'knee'],
  [/\bankles?\b/, 'ankle'],
  [/\bf(?:oo|ee)t\b/, 'foot'],
];

/** Where a note says that it was taken off. */
export interface RemovedFrom {
  /** the one place named; null where none or several are */
  readonly site: Site | null;
  readonly side: Side | null;
  /** every one of them: "both tourniquets", "all tourniquets" */
  readonly all: boolean;
  /** one of several that no place tells apart: "the second tourniquet", or several places */
  readonly unclear: boolean;
}

/** The place that the words name. */
export function removedFrom(text: string): RemovedFrom {
  // "Right, tourniquet's off" names no side.
  let rest = plain(text).replace(/\ball ?right\b|^right (?=\|)|\bright now\b/g, ' ');
  const sites: Site[] = [];
  for (const [words, site] of SITES)
    if (words.test(rest)) {
      sites.push(site);
      rest = rest.replace(words, ' ');
    }
  const [left, right] = [/\bleft\b/.test(rest), /\bright\b/.test(rest)];
  const all =
    /\b(?:both|all)\b/.test(rest) || (/\btourniquets\b|\bt ?qs\b/.test(rest) && !/\bone\b/.test(rest));
  return {
    site: sites.length === 1 ? (sites[0] ?? null) : null,
    side: left === right ? null : left ? 'left' : 'right',
    all,
    unclear:
      sites.length > 1 ||
      (left && right) ||
      /\b(?:first|second|third|other|old|one of|upper|lower|higher|top)\b/.test(rest),
  };
}
