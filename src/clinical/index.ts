// Promises what a medic would work out from the entries, each rule beside its source; what was not said is unknown.

export { type CoverageRow, type CoverageState, coverage, remaining } from './coverage.ts';
