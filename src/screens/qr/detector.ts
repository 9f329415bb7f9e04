// What reads QR symbols from a picture: the browser's own detector, or else one that comes with the page.

export interface Detector {
  detect(picture: HTMLVideoElement | ImageBitmap): Promise<readonly { readonly rawValue: string }[]>;
}

interface Native {
  new (options: { readonly formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** The detector; fetched from this page's own address where the browser has none. Fails where that cannot be loaded. */
export async function createDetector(): Promise<Detector> {
  const native = (globalThis as { readonly BarcodeDetector?: Native }).BarcodeDetector;
  if (
    native !== undefined &&
    (await native.getSupportedFormats().catch((): string[] => [])).includes('qr_code')
  )
    return new native({ formats: ['qr_code'] });
  const [{ BarcodeDetector, prepareZXingModule }, { default: wasm }] = await Promise.all([
    import('barcode-detector/ponyfill'),
    import('zxing-wasm/reader/zxing_reader.wasm?url'),
  ]);
  prepareZXingModule({ overrides: { locateFile: () => wasm } });
  return new BarcodeDetector({ formats: ['qr_code'] });
}
