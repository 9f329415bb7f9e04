// Reads the line that every grammar file begins with: `#JSGF V1.0 encoding locale;` (Note, section 3.1).

export interface Header {
  /** where the rest of the file begins, and on which line */
  readonly end: number;
  readonly line: number;
  /** what is wrong and what to do, or null */
  readonly problem: string | null;
}

const HEADER = /^\uFEFF?#JSGF[ \t]+V(\S+?)(?:[ \t]+[^\s;]+)?(?:[ \t]+[^\s;]+)?[ \t]*;/;

/** Encoding and locale are read over: the text was decoded before it came here, and words are not bound to a locale. */
export function readHeader(text: string): Header {
  const header = HEADER.exec(text);
  if (header === null) {
    const begun = /^\uFEFF?#[^\n]*/.exec(text)?.[0].length ?? 0;
    return {
      end: begun,
      line: 1,
      problem: 'The file must begin with its header: write #JSGF V1.0 utf-8 en;',
    };
  }
  const version = header[1] ?? '';
  const problem =
    version === '1.0' ? null : `Version ${version} is not known here: only #JSGF V1.0; can be read.`;
  return { end: header[0].length, line: 1, problem };
}
