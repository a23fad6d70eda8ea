/** A setting as the tool shows it; a line never ends between a word and its number. */
export const SettingText = ({ text }: { readonly text: string }) => <>{text.replace(/ (?=\d)|(?<=\d) /g, '\u00a0')}</>;
