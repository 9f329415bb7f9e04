// Work that may wait until what was said is drawn: one piece after each frame, so that no frame waits for two of them.

export interface Queue {
  /** does the work after a frame; asked again before it was done, it is done once, and as it was asked last */
  readonly ask: (name: object, work: () => void) => void;
  readonly forget: (name: object) => void;
}

/** `frame` calls back when the next frame is being drawn, `later` when that is done. */
export function createQueue(frame: (run: () => void) => void, later: (run: () => void) => void): Queue {
  const waiting = new Map<object, () => void>();
  let isComing = false;
  const come = (): void => {
    if (isComing || waiting.size === 0) return;
    isComing = true;
    frame(() =>
      later(() => {
        isComing = false;
        const [next] = waiting;
        if (next === undefined) return;
        const [name, work] = next;
        waiting.delete(name);
        try {
          work();
        } finally {
          come();
        }
      }),
    );
  };
  return {
    ask: (name, work) => {
      waiting.set(name, work);
      come();
    },
    forget: (name) => waiting.delete(name),
  };
}

/** A page that is not seen draws no frames; its work is done all the same, after this many ms. */
const UNSEEN = 200;

/** The queue of this page. */
export const queueOf = (page: Window): Queue =>
  createQueue(
    (run) => {
      let isDone = false;
      const once = (): void => {
        if (!isDone) run();
        isDone = true;
      };
      page.requestAnimationFrame(once);
      setTimeout(once, UNSEEN);
    },
    (run) => setTimeout(run),
  );
