// One file of the recogniser's model as it is offered for fetching: compressed, and named by its content.

export interface ModelPart {
  /** the name by which the recogniser asks for it */
  readonly name: string;
  /** absolute once the page has it, relative to the page as it is built; another content has another address */
  readonly address: string;
  /** to be fetched: the compressed length */
  readonly bytes: number;
  /** of the content before it was compressed, in hexadecimal */
  readonly sha256: string;
}

/** Bytes to be fetched for all of them. */
export const bytesOf = (files: readonly ModelPart[]): number =>
  files.reduce((sum, { bytes }) => sum + bytes, 0);
