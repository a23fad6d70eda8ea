import { TABLE_STYLE } from './table-style.ts';
import { fontFace, TOKENS } from './tokens.ts';

const PAGE_STYLE = `
*{box-sizing:border-box}
html{background:var(--ground);color:var(--ink);font:400 17px/1.5 var(--letters);-webkit-text-size-adjust:100%}
body{margin:0 auto;max-width:90rem;padding:0 clamp(1rem,4vw,3.5rem) 3rem;overflow-wrap:break-word}
.skip{position:absolute;left:-999rem;background:var(--ink);color:var(--ground);padding:.6rem 1rem;z-index:1}
.skip:focus{left:0;top:0}
a{color:var(--link);text-decoration-thickness:1px;text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:3px solid var(--link);outline-offset:2px;border-radius:1px}
h1,h2,h3,p,ul,ol,dl,dd{margin:0;padding:0}
ul,ol{list-style:none}
.sheet-head{border-top:.5rem solid var(--ink);padding:1.1rem 0 1.4rem}
.kicker{font-size:1rem;color:var(--soft)}
h1{font-size:clamp(1.7rem,1.2rem + 2.2vw,2.7rem);line-height:1.12;font-weight:750;letter-spacing:-.01em;margin:.1rem 0 .6rem;text-wrap:balance}
h1 .title{display:block;font-size:.55em;font-weight:500;letter-spacing:0;line-height:1.3;margin-top:.25em}
h2{font-size:1.22rem;line-height:1.25;font-weight:700}
h3{font-size:1rem;font-weight:700;margin:1.6rem 0 .5rem}
.method,.lead{color:var(--soft);max-width:64ch}
.minor,td .title,th .title{display:block;font-size:.86rem;font-weight:400;color:var(--soft);line-height:1.35}
.ways{display:flex;flex-wrap:wrap;gap:.6rem 1.6rem;margin-top:1rem}
.ways a{padding:.5rem 0;font-weight:600}
section{border-top:1px solid var(--ink);padding:1.1rem 0 2.2rem}
section>h2{margin-bottom:.8rem}
.facts>div{display:grid;grid-template-columns:minmax(6rem,2fr) minmax(0,5fr);gap:.2rem 1.2rem;padding:.38rem 0;border-top:1px solid var(--rule)}
.facts>div:first-child{border-top:0}
.facts{max-width:72ch}.facts dt{color:var(--soft)}
.figure{font-size:1.35rem;line-height:1}
.facts dd{overflow-wrap:anywhere}
.verdict{display:inline-flex;align-items:center;gap:.45em;font-weight:750;white-space:nowrap}
.verdict svg{width:.95em;height:.95em;fill:currentColor;flex:none}
.verdict.stop{color:var(--stop)}.verdict.attention{color:var(--attention)}.verdict.ready{color:var(--ready)}
.sums .total{font-size:1.05rem;margin-bottom:.6rem}
.sums ul{display:grid;grid-template-columns:repeat(auto-fit,minmax(15rem,1fr));gap:0 2rem}
.sums li{display:grid;grid-template-columns:auto 1fr;column-gap:.8rem;align-items:center;padding:.5rem 0}
.sums .count{font-size:3.2rem;line-height:1;font-weight:700;grid-row:span 2;min-width:1.2ch;font-variant-numeric:tabular-nums}
.sums .verdict{font-size:1.15rem;align-self:end}.sums .meaning{font-size:.92rem;color:var(--soft);align-self:start;line-height:1.3}
.sums .zero .count{font-weight:300}
.judgement h2{display:flex;flex-wrap:wrap;gap:.2rem .8rem;align-items:baseline;font-size:1.5rem}
.judgement .meaning{font-size:1rem;font-weight:400;color:var(--soft)}
.reasons>li{padding:.8rem 0 .9rem 1.1rem;border-left:.35rem solid var(--rule);margin-top:.8rem;max-width:72ch}
.reasons>.stop,.reasons>.hold,.reasons>.fault{border-color:var(--stop)}.reasons>.attention{border-left-style:double;border-color:var(--attention)}
.level{font-size:.9rem;font-weight:700;color:var(--stop)}.attention>.level{color:var(--attention)}
.remedy span{font-weight:700}
.action{font-size:1.12rem;font-weight:650;line-height:1.35}
.mend>li{padding:.7rem 0 .8rem;border-top:1px solid var(--rule)}
.mend{margin-top:.8rem}
.why{color:var(--soft);margin:.3rem 0 .4rem}
.why li+li{margin-top:.2rem}
.tags{display:flex;flex-wrap:wrap;gap:.2rem 1rem;font-size:.95rem}
.tags a{padding:.2rem 0}
.drawing svg{display:block;width:100%;max-width:34rem;height:auto;font-family:var(--letters)}
.drawing .f-ink,.drawing .f-mark{fill:var(--ink)}.drawing .f-quiet{fill:var(--soft)}.drawing .f-paper{fill:var(--ground)}
.drawing .s-ink{stroke:var(--ink)}.drawing .s-quiet{stroke:var(--soft)}
.datum{font-weight:600;max-width:60ch;margin-bottom:1rem}
.turns li{display:grid;grid-template-columns:7.5rem minmax(0,1fr);align-items:baseline;padding:.25rem 0;border-top:1px solid var(--rule)}
.order{white-space:pre-wrap;word-spacing:.25em;font-variant-numeric:tabular-nums;font-weight:600}
details{margin-top:1.4rem}summary{cursor:pointer;font-weight:600;padding:.5rem 0}
.painted{display:grid;grid-template-columns:repeat(auto-fill,minmax(7.2rem,1fr));gap:.1rem 1rem;font-variant-numeric:tabular-nums;margin-top:.5rem}
.painted li{display:flex;justify-content:space-between;border-top:1px solid var(--rule)}
.of-bolts{display:block}.interaction figure{margin:0;max-width:26rem}.interaction>p{margin-top:.8rem;max-width:72ch}.subgroup .pair .drawing{max-width:30rem;margin-top:.8rem}
.cautions,.kit{max-width:72ch}
.cautions li{padding:.4rem 0;border-top:1px solid var(--rule)}.cautions li:first-of-type{border-top:0}
.kit li{display:grid;grid-template-columns:3.4rem 1fr;gap:.8rem;padding:.35rem 0;border-top:1px solid var(--rule)}.kit li:first-child{border-top:0}
.kit .count{text-align:right;font-weight:700;font-variant-numeric:tabular-nums}
footer{border-top:1px solid var(--ink);padding-top:1rem;font-size:.92rem;color:var(--soft);max-width:72ch}
@media (min-width:48rem){.mend>li{display:grid;grid-template-columns:11.5rem minmax(0,1fr) minmax(7rem,11rem);column-gap:1.4rem;align-items:baseline}.mend .tags{display:block}.mend .tags a{display:inline-block;margin-left:.8rem}}
@media (min-width:68rem){
.pair{display:grid;grid-template-columns:minmax(0,31rem) minmax(0,1fr);column-gap:3rem;align-items:start}.pair .lists h3{margin-top:0}
.wide>*{grid-column:1/-1}.wide>h2{grid-row:auto;margin-bottom:.8rem}
section{display:grid;grid-template-columns:13rem minmax(0,1fr);column-gap:2.5rem}
section>*{grid-column:2}section>h2{grid-column:1;grid-row:1/span 40}
section>:nth-child(2){margin-top:0}
.judgement>h2{display:block}.judgement .meaning{display:block;margin-top:.3rem}
}
@media print{html{font-size:11pt}.ways,.skip{display:none}section{break-inside:auto}tr,.reasons>li{break-inside:avoid}}
`;

/** The sheet of the plan's pages; `fontHref`: where the letters are served. */
export const pageCss = (fontHref: string): string => fontFace(fontHref) + TOKENS + PAGE_STYLE + TABLE_STYLE;
