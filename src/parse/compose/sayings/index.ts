// The parts of one breath that each say something whole.

export { sayingsIn } from './cut.ts';
export { isJoin } from './ends.ts';
export { namesAtPlace, openingOf } from './opens.ts';
export { isReading, namesIt } from './said.ts';
