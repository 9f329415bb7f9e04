// What runs inside the page while it is measured, as text: the runner's own compiling would add names the page does not know.

/** Notes on the root when the line to type in was drawn (`data-usable`) and when talk is read (`data-read`), ms since the visit began. */
export const NOTES_WHEN_USABLE = `
  const root = () => document.documentElement;
  const look = () => {
    if (document.querySelector('#talk-line') === null) requestAnimationFrame(look);
    // The frame after the one in which it is there: it has been drawn.
    else requestAnimationFrame(() => { root().dataset.usable = String(Math.round(performance.now())); });
  };
  requestAnimationFrame(look);
  new MutationObserver((_, observer) => {
    if (root().dataset.reader !== 'there') return;
    root().dataset.read = String(Math.round(performance.now()));
    observer.disconnect();
  }).observe(document, { attributes: true, subtree: true, attributeFilter: ['data-reader'] });
`;

/** Watches the gaps between frames. */
export const WATCHES_FRAMES = `
  window.watch = { longest: 0 };
  let last = performance.now();
  const frame = (now) => {
    window.watch.longest = Math.max(window.watch.longest, now - last);
    last = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
`;

export const FORGETS_FRAMES = 'window.watch.longest = 0';
export const LONGEST_FRAME = 'Math.round(window.watch.longest)';
