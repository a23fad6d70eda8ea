import { type At, around, type Paint, type Role, type Scene, type Shape } from './scene.ts';

/** Colours where no style sheet speaks; the classes let one speak. */
const COLOUR: Readonly<Record<Role, string>> = { ink: 'currentColor', quiet: '#5b6166', paper: '#fff', mark: 'currentColor' };

const round = (value: number) => String(Math.round(value * 1000) / 1000);

export const escapeXml = (text: string): string =>
  text
    // characters XML does not have, not even escaped
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
    .replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

function painted({ stroke, fill, width, dashed }: Paint): string {
  const classes = [fill && `f-${fill}`, stroke && `s-${stroke}`].filter(Boolean).join(' ');
  const line = stroke
    ? ` stroke="${COLOUR[stroke]}" stroke-width="${round(width ?? 0.25)}"${dashed ? ' stroke-dasharray="1.2 0.9"' : ''}`
    : '';
  return ` class="${classes}" fill="${fill ? COLOUR[fill] : 'none'}"${line}`;
}

const pair = ({ x, y }: At) => `${round(x)} ${round(y)}`;

type Draw = { readonly [K in Shape['kind']]: (shape: Extract<Shape, { kind: K }>) => string };
const DRAW: Draw = {
  circle: ({ centre, radius, paint }) => `<circle cx="${round(centre.x)}" cy="${round(centre.y)}" r="${round(radius)}"${painted(paint)}/>`,
  line: ({ from, to, paint }) => `<path d="M${pair(from)}L${pair(to)}"${painted(paint)}/>`,
  polyline: ({ points, closed, paint }) =>
    `<path d="M${points.map(pair).join('L')}${closed ? 'Z' : ''}" stroke-linejoin="round"${painted(paint)}/>`,
  arc: ({ centre, radius, from, to, paint }) =>
    `<path d="M${pair(around(centre, radius, from))}A${round(radius)} ${round(radius)} 0 ${Math.abs(to - from) > Math.PI ? 1 : 0} ${to > from ? 1 : 0} ${pair(around(centre, radius, to))}"${painted(paint)}/>`,
  text: ({ at, text, size, anchor, bold, fill }) =>
    `<text x="${round(at.x)}" y="${round(at.y)}" font-size="${round(size)}" text-anchor="${anchor}"${bold ? ' font-weight="700"' : ''}${painted({ fill })}>${escapeXml(text)}</text>`,
  group: ({ shapes }) => `<g>${shapes.map(drawn).join('')}</g>`,
};

const drawn = (shape: Shape): string => (DRAW[shape.kind] as (one: Shape) => string)(shape);

/** The scene as an SVG element. `millimetres`: give it its size on paper; without, it fills the width it is put in. */
export function toSvg(scene: Scene, { millimetres = false }: { readonly millimetres?: boolean } = {}): string {
  const size = millimetres ? ` width="${round(scene.width)}mm" height="${round(scene.height)}mm"` : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escapeXml(scene.title)}" viewBox="0 0 ${round(scene.width)} ${round(scene.height)}"${size}>${scene.shapes.map(drawn).join('')}</svg>`;
}
