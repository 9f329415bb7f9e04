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

/** Notes when the one line of an empty page was drawn. */
export const NOTES_WHEN_DRAWN = `
  const look = () => {
    if (document.querySelector('#talk-line') === null) requestAnimationFrame(look);
    else requestAnimationFrame(() => {
      document.documentElement.dataset.usable = String(Math.round(performance.now()));
    });
  };
  requestAnimationFrame(look);
`;

/** Watches the gaps between frames, and the tasks that hold the page for 50 ms or more (W3C Long Tasks). */
export const WATCHES = `
  window.watch = { longest: 0, task: 0, tasks: 0 };
  let last = performance.now();
  const frame = (now) => {
    window.watch.longest = Math.max(window.watch.longest, now - last);
    last = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame((now) => {
    last = now;
    requestAnimationFrame(frame);
  });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) {
      window.watch.tasks += 1;
      window.watch.task = Math.max(window.watch.task, duration);
    }
  }).observe({ type: 'longtask' });
`;

export const FORGETS = 'window.watch.longest = 0';
export const LONGEST_FRAME = 'Math.round(window.watch.longest)';
export const LONGEST_TASK = 'Math.round(window.watch.task)';
export const LONG_TASKS = 'window.watch.tasks';
