// A list whose buttons can be pressed while it grows: a press that meets another button than it was aimed at is refused.

import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { trouble } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { createAim, type Spot, type Spots } from './aim.ts';

interface Props {
  readonly children: ComponentChildren;
}

const nameOf = (button: Element): string =>
  button.getAttribute('data-press') ?? button.getAttribute('aria-label') ?? button.textContent ?? '';

/** Where the buttons stand on the content that scrolls, so that scrolling is no move. */
function spotsIn(box: Element, scrolled: number): Spots {
  const spots = new Map<string, Spot>();
  const look = (part: Element): void => {
    for (const one of part.children) {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      // What is out of sight is passed over with all that is in it: a long list has hundreds of buttons.
      if (bottom <= 0 || top >= window.innerHeight || one instanceof HTMLDialogElement) continue;
      if (one instanceof HTMLButtonElement)
        spots.set(nameOf(one), { left, right, top: top + scrolled, bottom: bottom + scrolled });
      else look(one);
    }
  };
  look(box);
  return spots;
}

/** A sheet that was opened from the list lies over it and does not move with it. */
const isOnSheet = (button: Element): boolean => button.closest('dialog') !== null;

/** Does it when the frame is done that draws what has changed: asked any sooner, the browser would lay out the whole page for it. */
function afterFrame(work: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(work);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}

/** It is told where the page tells what was done last: said in the list, it would move the list itself. */
const REFUSED = trouble('The list had just moved, so that press did nothing. Press again.');

export function SteadyList({ children }: Props) {
  const { notice } = useTools().desk;
  const box = useRef<HTMLDivElement>(null);
  const [aim] = useState(createAim);
  const scrolled = (): number => box.current?.closest('.panel')?.scrollTop ?? 0;
  useLayoutEffect(() => {
    aim.changing();
    return afterFrame(() => {
      if (box.current !== null) aim.drawn(spotsIn(box.current, scrolled()), performance.now());
    });
  });
  return (
    <div
      ref={box}
      class="steady"
      onClickCapture={(event: MouseEvent) => {
        const button = event.target instanceof Element ? event.target.closest('button') : null;
        // The keyboard presses what has the focus, and that does not move.
        if (button === null || event.detail === 0 || isOnSheet(button)) return;
        const point = { x: event.clientX, y: event.clientY + scrolled() };
        const missed = aim.missed(nameOf(button), point, performance.now());
        if (missed) notice.value = REFUSED;
        else if (notice.peek() === REFUSED) notice.value = null;
        if (!missed) return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      {children}
    </div>
  );
}
