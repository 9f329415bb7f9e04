// What the build tells the page: the recogniser's model, and what it listens for.

declare module 'virtual:hearing-model' {
  export const hearingModel: readonly import('../../../speech/model/index.ts').ModelPart[];
}

declare module 'virtual:hearing-words' {
  /** as it was worked out where the page was built */
  export const workedOut: string;
}
