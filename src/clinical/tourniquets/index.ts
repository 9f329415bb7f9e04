// Promises each tourniquet with its time, and with what was said of its being taken off.

export {
  offOf,
  quotedWords,
  type SaidOff,
  saidOffWords,
  type Tourniquet,
  tourniquetsOf,
} from './tourniquets.ts';
