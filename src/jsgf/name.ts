// Which names a rule and a grammar may bear.

// JSGF Note, section 2.2: what a Java identifier may hold, digits first allowed, and this punctuation. A dot separates
// the parts of a qualified name.
const RULE_NAME = /^[\p{L}\p{Nl}\p{Nd}\p{Sc}\p{Pc}\p{Mn}\p{Mc}+\-:;,=|/\\()[\]@#%!^&~]+$/u;
// A grammar is named like a Java package (section 3.2); a hyphen is allowed since grammars in use have it.
const GRAMMAR_NAME = /^[\p{L}\p{N}_$-]+(?:\.[\p{L}\p{N}_$-]+)*$/u;

/** `<NULL>` is always spoken by saying nothing, `<VOID>` can never be spoken (Note, section 2.4). */
export const isReserved = (name: string): boolean => name === 'NULL' || name === 'VOID';

/** True for a name that a rule may be given: no dots, no spaces. */
export const isRuleName = (name: string): boolean => RULE_NAME.test(name);

/** True for a name that a grammar may be given, as `com.example.sites`. */
export const isGrammarName = (name: string): boolean => GRAMMAR_NAME.test(name);

/** True for a reference: a rule's name alone or after (the last part of) its grammar's name. */
export function isReference(name: string): boolean {
  const dot = name.lastIndexOf('.');
  return isRuleName(name.slice(dot + 1)) && (dot === -1 || isGrammarName(name.slice(0, dot)));
}
