// A piece in lines short enough that a device's voice gets through each of them: voices have been known to stop mid-way.

/** Words in a line at most; at 80 words a minute that is six seconds. */
const MOST = 8;

/** Cut after full stops, colons and commas where a line would grow too long, else between words; no word is lost. */
export function shortLines(text: string): readonly string[] {
  const lines: string[] = [];
  for (const sentence of text.split(/(?<=[.:?])\s+/)) {
    let open: string[] = [];
    for (const part of sentence.split(/(?<=,)\s+/)) {
      const words = part.split(/\s+/).filter((word) => word !== '');
      if (open.length > 0 && open.length + words.length > MOST) {
        lines.push(open.join(' '));
        open = [];
      }
      open.push(...words);
      while (open.length > MOST) lines.push(open.splice(0, MOST).join(' '));
    }
    if (open.length > 0) lines.push(open.join(' '));
  }
  return lines;
}
