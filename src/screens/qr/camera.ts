// The back camera as a stream, and in words why there is none.

export type Camera =
  | { readonly kind: 'camera'; readonly stream: MediaStream }
  | { readonly kind: 'none'; readonly why: string };

const WHY: Readonly<Record<string, string>> = {
  NotAllowedError:
    'The camera is not allowed: allow it for this page in the browser’s settings, or choose a file.',
  NotFoundError: 'This device has no camera: choose a file.',
  NotReadableError: 'Another program uses the camera: close it and try again.',
};

/** Asks for the camera that looks away from the face. */
export async function openCamera(): Promise<Camera> {
  const media = navigator.mediaDevices;
  if (media?.getUserMedia === undefined)
    return { kind: 'none', why: 'This browser gives no camera to a page: choose a file.' };
  try {
    const video = { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } };
    return { kind: 'camera', stream: await media.getUserMedia({ video, audio: false }) };
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    return { kind: 'none', why: WHY[name] ?? 'The camera could not be opened: choose a file.' };
  }
}
