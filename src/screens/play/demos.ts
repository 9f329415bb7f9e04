// The invented examinations that come with the page.

export interface Demo {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  /** path under the page's own address */
  readonly path: string;
}

export const DEMOS: readonly Demo[] = [
  {
    id: 'ridge-fall',
    title: 'Fall on wet rock',
    about: 'A scrambler, hurt in several places. Twenty minutes of talk; British usage.',
    path: 'demo/ridge-fall.talk',
  },
  {
    id: 'ski-evening',
    title: 'Last ski run',
    about: 'A sore thumb and knee, the rest negative. Eighteen minutes of talk; American usage.',
    path: 'demo/ski-evening.talk',
  },
];
