/** The head of a table: one cell a column, each with its name from `content/words.yaml`. */
import { usePages } from '../context';

export const ColumnHeads = ({ of }: { readonly of: readonly string[] }) => {
  const { say } = usePages();
  return (
    <thead>
      <tr>
        {of.map((key) => (
          <th key={key} scope="col">
            {say(key)}
          </th>
        ))}
      </tr>
    </thead>
  );
};
