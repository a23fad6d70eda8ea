import { CREW_SCREENS } from './crew/screens.ts';
import { walk } from './crew/walk.ts';
import { shots } from './shots.ts';

const SIZES = { phone: { width: 360, height: 740 }, tablet: { width: 820, height: 1180 } } as const;

/** Pictures of the crew's screens, on an invented yard; `wanted`: only those whose name has this in it. */
export async function crewPictures(wanted = ''): Promise<void> {
  for (const language of ['en', 'de'] as const)
    for (const [size, viewport] of Object.entries(SIZES))
      await walk(CREW_SCREENS, { language, viewport }, async ({ page }, name) => {
        const picture = `app-${name}${language === 'en' ? '' : `-${language}`}-${size}`;
        if (picture.includes(wanted)) await shots(page, picture);
      });
}
