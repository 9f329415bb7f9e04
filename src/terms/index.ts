// Promises the identifiers and shapes that every stage shares: sites, findings, vitals, care, and what can be stated.

export * from './check-limits.ts';
export * from './limb-check.ts';
export * from './problem-change.ts';
export * from './sites.ts';
export * from './statement.ts';
export * from './words.ts';
