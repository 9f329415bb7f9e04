// What a time is as it was spoken, before anyone knows which day is meant.

export type SpokenTime =
  | {
      readonly kind: 'clock';
      readonly hour: number;
      readonly minute: number;
      readonly half?: 'am' | 'pm';
      /** true where the hour alone tells morning from evening ("fourteen thirty", "oh six fifteen", "noon") */
      readonly twentyFour: boolean;
      /** present where "about" or the like was said */
      readonly about?: true;
    }
  /** "ten past", "quarter to": which hour is meant nobody said */
  | { readonly kind: 'minute'; readonly minute: number; readonly about?: true }
  | { readonly kind: 'ago'; readonly seconds: number; readonly about: boolean }
  | { readonly kind: 'now' };

export interface TimeReading {
  /** index past the last word of the reading */
  readonly end: number;
  readonly time: SpokenTime;
}

export type Clock = Extract<SpokenTime, { kind: 'clock' }>;

export type MinuteOfHour = Extract<SpokenTime, { kind: 'minute' }>;

export interface ClockReading {
  readonly end: number;
  readonly time: Clock;
}
