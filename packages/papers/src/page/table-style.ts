/** Tables: ruled rows; below 60rem every row is a block, each cell with its heading beside it. */
export const TABLE_STYLE = `
.data{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
.data thead th{font-size:.86rem;font-weight:500;color:var(--soft);text-align:left;vertical-align:bottom;padding:0 1rem .35rem 0;border-bottom:1px solid var(--ink)}
.data tbody th,.data td{text-align:left;vertical-align:top;padding:.6rem 1rem .6rem 0;border-bottom:1px solid var(--rule);font-weight:400}
.data tbody th{font-weight:700}
.data .figures{text-align:right}
.joints tbody th{min-width:11rem;max-width:20rem}
.joints .setting{font-weight:700}
.joints td:nth-child(6),.joints td:nth-child(8){white-space:nowrap}
.whole{white-space:nowrap}
.data tbody th{min-width:9rem}
.note{display:block}.note+.note{margin-top:.4rem}
.steps .big{display:block;font-size:1.75rem;line-height:1.1;font-weight:750}
.steps .no-setting{font-weight:600}
@media (max-width:59.99rem){
.data,.data tbody,.data tr,.data th,.data td{display:block}
.data tbody{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,19rem),1fr));column-gap:2.5rem}
.data thead{position:absolute;left:-999rem}
.data tr{padding:.7rem 0;border-bottom:1px solid var(--ink)}
.data tbody th{border:0;padding:.1rem 0 .3rem;font-size:1.15rem;max-width:none}
.data td{display:grid;grid-template-columns:7.5rem minmax(0,1fr);gap:0 .8rem;border:0;padding:.18rem 0}
.data td>*{grid-column:2}
.data td::before{content:attr(data-head);grid-column:1;grid-row:1/span 9;color:var(--soft)}
.data td:empty{display:none}
.data .figures{text-align:left}
.joints td:nth-child(n){white-space:normal}
.steps td:nth-child(2){display:block;padding:.1rem 0 .4rem}.steps td:nth-child(2)::before{content:none}
}
@media (min-width:60rem) and (max-width:79.99rem){.joints{font-size:.92rem}.joints th,.joints td{padding-right:.7rem}}
`;
