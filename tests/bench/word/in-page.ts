// What runs inside the page while the way of a word is measured, as text: it notes levels, words and entries with their times.

/** Must run before the page's own scripts. Times are epoch ms; an entry's is the frame after the one it came in. */
export const NOTES_WORDS = `
  window.noted = { levels: [], words: [], said: [], entries: [], enters: [] };
  const Real = window.AudioWorkletNode;
  window.AudioWorkletNode = class extends Real {
    constructor(...given) {
      super(...given);
      this.port.addEventListener('message', ({ data }) => {
        noted.levels.push({ from: data.from, to: data.to, rms: data.rms });
      });
    }
  };
  const text = (selector) => document.querySelector(selector)?.textContent ?? '';
  // A list shows no more than its newest, so that a line is new where it was not seen before and not where there are more.
  const seen = { said: new Set(), entries: new Set() };
  let shown = '';
  const look = () => {
    const words = text('.hearing');
    if (words !== shown) {
      shown = words;
      noted.words.push({ at: Date.now(), words });
    }
    for (const [name, selector] of [['said', '.said-words'], ['entries', '.panel-entries .entry .entry-line']]) {
      const lines = [...document.querySelectorAll(selector)].map(({ textContent }) => textContent);
      const added = lines.filter((line) => !seen[name].has(line));
      if (added.length === 0) continue;
      for (const line of added) seen[name].add(line);
      const said = text('.said-words');
      requestAnimationFrame(() => noted[name].push({ at: Date.now(), words: said }));
    }
  };
  new MutationObserver(look).observe(document, { childList: true, subtree: true, characterData: true });
  addEventListener('keydown', ({ key }) => { if (key === 'Enter') noted.enters.push(Date.now()); }, true);
`;
