/** Colours and letters. Every pair of ink and ground keeps a contrast of 7 : 1 or more, light and dark. */
export const TOKENS = `
:root{--ground:#fbfaf6;--sheet:#f1efe8;--ink:#14191d;--soft:#40484e;--rule:#b9b8b0;--link:#123f5c;--stop:#861a10;--stop-ground:#f8e6e0;--attention:#5c3d00;--attention-ground:#f6ecd2;--ready:#0d4a3a;--letters:'Atkinson Hyperlegible Next',system-ui,sans-serif}
@media screen and (prefers-color-scheme:dark){:root{--ground:#13181b;--sheet:#1d2428;--ink:#edebe4;--soft:#c3c8c8;--rule:#4b555a;--link:#a9d3ee;--stop:#ffb3a3;--stop-ground:#3a1d19;--attention:#f2cd7e;--attention-ground:#332a14;--ready:#96dcc2}}
`;

export const fontFace = (source: string): string =>
  `@font-face{font-family:'Atkinson Hyperlegible Next';src:url('${source}') format('woff2');font-weight:200 800;font-display:swap}\n`;
