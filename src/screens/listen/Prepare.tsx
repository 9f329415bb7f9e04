// The recogniser's model, fetched once: offered with its size, shown as it comes, and said to be there.

import { useTools } from '../frame/tools.ts';

/** `5.1 MB` */
export const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

export function Prepare() {
  const { ear } = useTools();
  const model = ear.model.value;
  switch (model.state) {
    case 'unknown':
      return <p class="small-print">Looking for the recogniser on this device …</p>;
    case 'stored':
      return null;
    case 'impossible':
      return <p role="status">{model.why}</p>;
    case 'missing':
      return (
        <div class="fetching">
          <button type="button" class="button primary wide" onClick={() => void ear.prepare()}>
            Fetch the recogniser ({megabytes(model.bytes)})
          </button>
          <p class="small-print">
            Needed once, from this page’s own address. After that the device hears without a network, and no
            sound leaves it. Until then: type.
          </p>
          {model.why !== '' && <p role="alert">{model.why}</p>}
        </div>
      );
    case 'fetching':
      return (
        <div class="fetching">
          <p>
            <label for="fetching">
              Fetching the recogniser: {megabytes(model.done)} of {megabytes(model.of)}
            </label>
          </p>
          <progress id="fetching" max={model.of} value={model.done} />
          <button type="button" class="button" onClick={ear.cancel}>
            Stop fetching
          </button>
        </div>
      );
  }
}
