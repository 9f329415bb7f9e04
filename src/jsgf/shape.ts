// The shapes of a grammar that was read: plain readonly data, the same for every file.

/** What a rule lets be said. A group `( )` leaves no trace but its content; a tag belongs to the item before it. */
export type Expansion =
  | { readonly type: 'sequence'; readonly items: readonly Expansion[] }
  | { readonly type: 'alternatives'; readonly choices: readonly Choice[] }
  | { readonly type: 'optional'; readonly item: Expansion }
  | { readonly type: 'repeat'; readonly item: Expansion; readonly min: 0 | 1 }
  | { readonly type: 'token'; readonly text: string; readonly line: number }
  | { readonly type: 'rule'; readonly name: string; readonly line: number }
  | { readonly type: 'tag'; readonly text: string; readonly line: number }
  | { readonly type: 'null' }
  | { readonly type: 'void' };

/** One of several alternatives; the weight is 1 where none is written. */
export interface Choice {
  readonly weight: number;
  readonly item: Expansion;
}

export interface Rule {
  /** without its grammar's name in a grammar, with it in a linked set */
  readonly name: string;
  readonly isPublic: boolean;
  readonly expansion: Expansion;
  readonly file: string;
  readonly line: number;
}

export interface Import {
  /** fully qualified, as `sites.site`; the last part is `*` where every public rule is meant */
  readonly name: string;
  readonly line: number;
}

export interface Grammar {
  readonly name: string;
  readonly file: string;
  readonly imports: readonly Import[];
  readonly rules: ReadonlyMap<string, Rule>;
}

/** Linked rules by their fully qualified name; every reference in them is fully qualified and exists. */
export interface GrammarSet {
  readonly rules: ReadonlyMap<string, Rule>;
  readonly publicRules: readonly string[];
}

export interface GrammarSource {
  /** the name that errors give, usually the file's */
  readonly file: string;
  readonly text: string;
}

export interface GrammarError {
  readonly file: string;
  readonly line: number;
  /** the rule it was found in, without brackets, or null outside of rules */
  readonly rule: string | null;
  /** what is wrong and what to do */
  readonly message: string;
}

export interface GrammarErrors {
  readonly kind: 'errors';
  readonly errors: readonly GrammarError[];
}
