// One sentence of the page about itself: what was done, or what could not be.

export interface Notice {
  readonly tone: 'done' | 'trouble';
  readonly text: string;
}

export const done = (text: string): Notice => ({ tone: 'done', text });
export const trouble = (text: string): Notice => ({ tone: 'trouble', text });
