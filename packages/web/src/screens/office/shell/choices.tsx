/** What may be typed into an input whose `list` is `id`. */
export const Choices = ({ id, choices }: { readonly id: string; readonly choices: readonly string[] | undefined }) =>
  choices ? (
    <datalist id={id}>
      {choices.map((one) => (
        <option key={one} value={one} />
      ))}
    </datalist>
  ) : null;
