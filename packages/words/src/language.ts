/** Languages by their own names. */
export const LANGUAGES = { en: 'English', de: 'Deutsch', pl: 'Polski', es: 'Español', pt: 'Português' } as const;
export type Language = keyof typeof LANGUAGES;

/** Portuguese as in Portugal: of the two, zero takes the plural there. */
const LOCALES: Readonly<Partial<Record<Language, string>>> = { pt: 'pt-PT' };

/** How numbers and plurals of a language are written. */
export const localeOf = (language: Language): string => LOCALES[language] ?? language;
