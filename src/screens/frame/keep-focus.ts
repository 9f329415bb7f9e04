// Where what has the focus is taken away, the focus goes to what stands nearest: a key or a screen reader is never sent to the top.

const STOPS =
  'button:not(:disabled), summary, input:not(:disabled), select, textarea, a[href], [tabindex="0"]';

/** Where something stood on the page, so that its neighbours are found when it is gone. */
export interface Place {
  /** the sheet or panel it is on */
  readonly sheet: Element;
  /** everything that could have the focus there, in order */
  readonly stops: readonly Element[];
  readonly at: number;
  /** the small part it was in: a row, a group of choices, a form */
  readonly part: Element | null;
  /** the entry that it was of */
  readonly entry: string | null;
  /** what it is called */
  readonly name: string;
}

const isGone = (one: HTMLElement): boolean =>
  !one.isConnected || one.matches(':disabled') || !one.checkVisibility();

const canStop = (one: Element | undefined): one is HTMLElement =>
  one instanceof HTMLElement && one.matches(STOPS) && !isGone(one);

const nameOf = (one: Element): string => one.getAttribute('aria-label') ?? one.textContent ?? '';

const firstIn = (part: Element | null): HTMLElement | undefined => {
  const stops = [...(part?.querySelectorAll(STOPS) ?? [])].filter(canStop);
  // Where something could be lost by one press more, the way that loses nothing comes first.
  return stops.find((one) => one.hasAttribute('data-focus-first')) ?? stops[0];
};

/** The place of an element that is on the page now. */
export function placeOf(element: Element): Place {
  const sheet = element.closest('dialog, .panel') ?? document.body;
  const stops = [...sheet.querySelectorAll(STOPS)];
  return {
    sheet,
    stops,
    at: stops.indexOf(element),
    part: element.closest('fieldset, form, li, details, .steady > section'),
    entry: element.closest('[data-entry]')?.getAttribute('data-entry') ?? null,
    name: nameOf(element),
  };
}

/** What stands nearest to the place now: the rest of its entry or its part, its like, what came after, what came before. */
function nearest({ sheet, stops, at, part, entry, name }: Place): HTMLElement | undefined {
  const own = [...sheet.querySelectorAll('[data-entry]')].find(
    (row) => row.getAttribute('data-entry') === entry,
  );
  // What was drawn anew under the same name is the same thing to whoever pressed it; an entry is not its double.
  const like = entry === null ? [...sheet.querySelectorAll(STOPS)].filter((one) => nameOf(one) === name) : [];
  return (
    firstIn(own ?? null) ??
    firstIn(part) ??
    like.find(canStop) ??
    stops.slice(at + 1).find(canStop) ??
    stops.slice(0, Math.max(0, at)).findLast(canStop) ??
    [...document.querySelectorAll('dialog[open] .sheet-body, .panel')].find(canStop)
  );
}

/** Gives the focus to what stands nearest to the place; only a keyboard's user is scrolled there. */
export function focusNear(place: Place): void {
  const target = nearest(place);
  target?.focus({ preventScroll: true });
  if (target?.matches(':focus-visible')) target.scrollIntoView({ block: 'nearest' });
}

/** Watches over the focus of a page from now on. */
export function keepFocus(page: Document): void {
  let last: { readonly element: HTMLElement; readonly place: Place } | null = null;
  page.addEventListener('focusin', ({ target }) => {
    if (target instanceof HTMLElement) last = { element: target, place: placeOf(target) };
  });
  // Who presses on nothing has left on purpose.
  page.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Element && target.closest(STOPS) === null) last = null;
  });
  const look = (changes: readonly MutationRecord[]): void => {
    const now = page.activeElement;
    if (last === null || (now !== null && now !== page.body && now !== last.element)) return;
    // While it has the focus only what was disabled or hidden can have taken it out; to look is not free.
    if (now === last.element && changes.every(({ type }) => type === 'childList')) return;
    if (isGone(last.element)) focusNear(last.place);
  };
  new MutationObserver(look).observe(page.body, {
    childList: true,
    subtree: true,
    attributeFilter: ['disabled', 'hidden'],
  });
}
