// Brings a heading into view and gives it the focus, so that eye and screen reader go to the same place.

/** Does nothing where there is no such element. */
export function sendTo(id: string): void {
  const target = document.getElementById(id);
  target?.scrollIntoView({ block: 'start' });
  target?.focus({ preventScroll: true });
}
