// Which panels stand beside each other at each width, and which the buttons at the foot choose between.

export const PANELS = ['talk', 'entries', 'body', 'signs', 'report'] as const;
export type Panel = (typeof PANELS)[number];

/** One on a phone, two on a tablet, three on a desk. */
export type Columns = 1 | 2 | 3;

export const PANEL_NAMES: Readonly<Record<Panel, string>> = {
  talk: 'Exam',
  entries: 'Entries',
  body: 'Body',
  signs: 'Signs',
  report: 'Report',
};

/** The panels shown where `chosen` was chosen last, in the order they stand. */
export function shown(chosen: Panel, columns: Columns): readonly Panel[] {
  if (columns === 1) return [chosen];
  if (columns === 2) return ['talk', chosen === 'talk' ? 'entries' : chosen];
  return ['talk', 'entries', chosen === 'talk' || chosen === 'entries' ? 'report' : chosen];
}

/** The panels that can be chosen: those that are always there need no button. */
export const choices = (columns: Columns): readonly Panel[] => PANELS.slice(columns - 1);

/** The choice that is marked as the present one. */
export const marked = (chosen: Panel, columns: Columns): Panel => shown(chosen, columns).at(-1) ?? 'talk';
