// A long list as large buttons: a few first, and the rest of them once they are asked for.

import { useState } from 'preact/hooks';

interface Props<T extends string> {
  /** what is chosen: "Place", "Finding" */
  readonly legend: string;
  readonly now: T;
  readonly name: (one: T) => string;
  /** first those near at hand */
  readonly near: readonly T[];
  readonly groups: readonly (readonly [title: string, all: readonly T[]])[];
  readonly choose: (one: T) => void;
}

export function Picker<T extends string>({ legend, now, name, near, groups, choose }: Props<T>) {
  const [open, setOpen] = useState(false);
  const [all, setAll] = useState(false);
  const pick = (one: T) => {
    setOpen(false);
    setAll(false);
    choose(one);
  };
  const buttons = (some: readonly T[]) => (
    <div class="choices grid">
      {some.map((one) => (
        <button
          key={one}
          type="button"
          class="button big"
          aria-pressed={one === now}
          onClick={() => pick(one)}
        >
          {name(one)}
        </button>
      ))}
    </div>
  );
  return (
    <fieldset>
      <legend>{legend}</legend>
      {!open ? (
        <button type="button" class="button big wide" aria-expanded={false} onClick={() => setOpen(true)}>
          Not {name(now)}: choose another
        </button>
      ) : (
        <div class="picker">
          {!all && buttons(near)}
          {all &&
            groups.map(([title, some]) => (
              <section key={title} aria-label={title}>
                {title !== '' && <h4>{title}</h4>}
                {buttons(some)}
              </section>
            ))}
          {!all && (
            <button type="button" class="button wide" onClick={() => setAll(true)}>
              Show all of them
            </button>
          )}
          <button
            type="button"
            class="button wide"
            onClick={() => {
              setOpen(false);
              setAll(false);
            }}
          >
            Leave it as {name(now)}
          </button>
        </div>
      )}
    </fieldset>
  );
}
