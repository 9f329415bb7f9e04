// One line of a talk file, told apart by how it begins.

export type TalkLine =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'directive'; readonly name: string; readonly value: string }
  /** `after` milliseconds since the start; words may be empty */
  | { readonly kind: 'stamped'; readonly after: number; readonly words: string }
  | { readonly kind: 'words'; readonly words: string }
  | { readonly kind: 'wrong'; readonly why: string };

const STAMP = /^\[(\d{1,3}):([0-5]\d):([0-5]\d)\]\s*(.*)$/;
// Brackets with figures in them are meant as a time; "[coughs]" is a writer's remark and stays among the words.
const MEANT_AS_STAMP = /^\[[\d:.,\s]*\d/;

/** Reads one line, without its line end. */
export function readLine(line: string): TalkLine {
  const text = line.trim();
  if (text === '' || text.startsWith('#')) return { kind: 'nothing' };
  if (text.startsWith('@')) {
    const [, name = '', value = ''] = /^@(\S*)\s*(.*)$/.exec(text) ?? [];
    return { kind: 'directive', name, value };
  }
  const [, hours, minutes, seconds, words = ''] = STAMP.exec(text) ?? [];
  if (hours !== undefined) {
    const after = ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000;
    return { kind: 'stamped', after, words };
  }
  if (MEANT_AS_STAMP.test(text)) {
    return { kind: 'wrong', why: 'is not a time since the start; write it as [hh:mm:ss]' };
  }
  return { kind: 'words', words: text };
}
