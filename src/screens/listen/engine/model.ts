// The recogniser's model with its full addresses: page and worker stand at different places, and must mean the same.

import { hearingModel } from 'virtual:hearing-model';
import type { ModelPart } from '../../../speech/model/index.ts';

/** The parts as they are offered from the page's own address. */
export const modelParts = (): readonly ModelPart[] =>
  hearingModel.map((part) => ({
    ...part,
    address: new URL(`${import.meta.env.BASE_URL}${part.address}`, document.baseURI).href,
  }));
