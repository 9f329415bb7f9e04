// The browser's small storage for settings, or null where it is refused; no patient's words go in it.

/** Null where the browser refuses storage, such as in a locked-down private window. */
export function settingsStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
