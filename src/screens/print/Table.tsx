// A table on paper: its head is repeated on each page that it reaches.

import type { PrintedTable } from '../../handoff/index.ts';

export function Table({ table: { title, columns, rows } }: { readonly table: PrintedTable }) {
  return (
    // Left and right stand in the same place in every region's table.
    <table class={columns.includes('Left') ? 'by-side' : ''}>
      <caption>{title}</caption>
      <thead>
        <tr>
          {columns.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => {
          const key = `${index}-${row[0]?.[0]?.text ?? ''}`;
          return (
            <tr key={key}>
              {row.map((cells, column) => (
                <td key={columns[column]}>
                  {cells.map(({ text, weight }, place) => {
                    const statement = `${place}-${text}`;
                    return (
                      <p key={statement} class={weight}>
                        {text}
                      </p>
                    );
                  })}
                </td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
