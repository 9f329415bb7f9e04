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
  const count = (selector) => document.querySelectorAll(selector).length;
  const before = { words: '', said: 0, entries: 0 };
  const look = () => {
    const words = text('.hearing');
    if (words !== before.words) {
      before.words = words;
      noted.words.push({ at: Date.now(), words });
    }
    for (const [name, selector] of [['said', '.said-words'], ['entries', '.panel-entries .entry']]) {
      const now = count(selector);
      if (now <= before[name]) continue;
      before[name] = now;
      const seen = text('.said-words');
      requestAnimationFrame(() => noted[name].push({ at: Date.now(), words: seen }));
    }
  };
  new MutationObserver(look).observe(document, { childList: true, subtree: true, characterData: true });
  addEventListener('keydown', ({ key }) => { if (key === 'Enter') noted.enters.push(Date.now()); }, true);
`;
