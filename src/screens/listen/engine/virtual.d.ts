// What the build tells the page of the recogniser's model.

declare module 'virtual:hearing-model' {
  export const hearingModel: readonly import('../../../speech/model/index.ts').ModelPart[];
}
