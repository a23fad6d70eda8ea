import { fontFace, TOKENS } from '../tokens.ts';

const CARD_STYLE = `
@page{size:A5 portrait;margin:8mm}
*{box-sizing:border-box}
html{color:#000;background:#fff;font:400 9.5pt/1.25 var(--letters);-webkit-print-color-adjust:exact;print-color-adjust:exact}
body,h1,h2,h3,p,ul,ol,dl,dd,table{margin:0;padding:0}
ul,ol{list-style:none}
.skip{position:absolute;left:-999rem}.skip:focus{left:0;top:0;background:#000;color:#fff;padding:.6rem 1rem;z-index:1}
:focus-visible{outline:3px solid #123f5c;outline-offset:2px}
main{display:block}
.side{width:132mm;break-after:page;display:flex;flex-direction:column;gap:2.2mm}
.side:last-child{break-after:auto}
.side-head{border-top:2mm solid #000;padding-top:1.2mm;display:grid;grid-template-columns:minmax(0,1fr) auto;column-gap:4mm;align-items:baseline}
.side-head h1,.side-head .tag{font-size:23pt;line-height:1.05;font-weight:800;overflow-wrap:anywhere}
.side-head .where{font-size:8pt;text-align:right;line-height:1.2}
.side-head .title{grid-column:1/-1;font-size:11pt;font-weight:600;line-height:1.15;overflow-wrap:anywhere}
.side-head .job{grid-column:1/-1;font-size:8pt}
.line{display:grid;grid-template-columns:17mm minmax(0,1fr);column-gap:2mm}
.line b{font-weight:700}
.read-first{border:.5mm solid #000;padding:1.4mm 2mm}
.read-first li+li{margin-top:.6mm}
.bolts{font-size:10pt;font-weight:700}
.bolts small{display:block;font-size:8.5pt;font-weight:400}
.steps{border-top:.5mm solid #000}
.whole{white-space:nowrap}
.step{display:grid;grid-template-columns:27mm minmax(0,1fr) 6mm;column-gap:2mm;align-items:center;border-bottom:.25mm solid #000;padding:1mm 0;break-inside:avoid}
.step .name{font-size:11pt;font-weight:700;line-height:1.1}
.step .name small{display:block;font-size:8pt;font-weight:400}
.step .set{display:flex;flex-wrap:wrap;align-items:baseline;gap:0 3mm}
.step .which{font-size:9pt;min-width:15mm}
.step .big{font-size:22pt;line-height:1.05;font-weight:800}
.step .no{font-size:12.5pt;font-weight:700;line-height:1.15}
.step .beside{font-size:8.5pt}
.step .until{flex-basis:100%;font-size:9.5pt;line-height:1.2}
.box{display:inline-block;border:.35mm solid #000;width:5.5mm;height:5.5mm}.box.small{width:3mm;height:3mm;vertical-align:-.4mm}
.rounds{font-size:9pt;line-height:1.25}.rounds ol{padding:0;margin:0;list-style-position:inside}.rounds .of-bolts{display:block;padding-left:5mm}
.drawing{break-inside:avoid}
.drawing svg{display:block;font-family:var(--letters)}
.checks{columns:2;column-gap:5mm;font-size:8.5pt;line-height:1.3;list-style:none;padding:0;margin:0}
.checks li{break-inside:avoid}
.check-box{display:inline-block;width:2.6mm;height:2.6mm;border:.25mm solid #000;vertical-align:-.3mm}
.cautions{columns:2;column-gap:5mm;font-size:8.5pt;line-height:1.2}
.cautions li{break-inside:avoid;padding-left:3mm;text-indent:-3mm;margin-bottom:.8mm}
.cautions li::before{content:'■ ';font-size:6pt;vertical-align:.3mm}
h2{font-size:9.5pt;font-weight:700}
.ticks{display:flex;flex-direction:column}
.tick-row{display:grid;grid-template-columns:repeat(10,minmax(0,1fr)) ;column-gap:.8mm;break-inside:avoid;border-top:.2mm solid #000;padding:.5mm 0 1mm}
.tick-row .turns{grid-column:1/-1;font-size:6.5pt;line-height:1.1}
.by-5 .tick-row{grid-template-columns:repeat(5,minmax(0,1fr))}.by-5 .tick{display:flex;align-items:center;gap:1mm}.by-5 .tick .n{font-size:13pt;min-width:7mm;text-align:right}.by-5 .tick .boxes{flex-wrap:nowrap}.by-5 .tick i{flex:none;width:4mm;max-width:none;height:8mm;font-size:6.5pt}
.tick .n{font-size:11pt;font-weight:700;line-height:1.1}
.tick .boxes{display:flex;flex-wrap:wrap;gap:.5mm}
.tick i{display:block;flex:1 0 2.5mm;max-width:3.6mm;height:3.6mm;border:.25mm solid #000;font-size:5.5pt;line-height:1;padding:.3mm;text-align:left;font-style:normal;color:#333}
.tick.joined{border-left:.9mm solid #000;margin-left:-.9mm;padding-left:.6mm}
.fields{display:grid;grid-template-columns:1fr 1fr;gap:0 4mm}
.fields .field{border-bottom:.25mm solid #000;height:8.5mm;font-size:8pt;padding-top:.4mm}
.fields .wide{grid-column:1/-1}.fields .tall{height:13mm}
.stop-card{gap:4mm}
.stop-word{font-size:30pt;font-weight:800;line-height:1.05;background:#000;color:#fff;padding:4mm}
.stop-card .reasons li{border-top:.3mm solid #000;padding:1.6mm 0;font-size:11pt;line-height:1.3}
.stop-card .reasons b{display:block}
@media screen{html{background:#d9d7cf}main{padding:16px 0}.side{background:#fff;width:148mm;max-width:100%;min-height:210mm;padding:8mm;margin:0 auto 16px}.drawing svg{max-width:100%;height:auto}}
@media screen and (max-width:149mm){.side{padding:4mm}.step{grid-template-columns:22mm minmax(0,1fr) 7mm}.cautions{columns:1}.tick-row,.by-5 .tick-row{grid-template-columns:repeat(auto-fill,minmax(25mm,1fr))}.stop-word{font-size:24pt}}
`;

/** The sheet of the bolting cards: black on white, A5. `font`: an address or a data URL, absent where the reader's own letters must do. */
export const cardCss = (font?: string): string => (font === undefined ? '' : fontFace(font)) + TOKENS.split('@media')[0] + CARD_STYLE;
