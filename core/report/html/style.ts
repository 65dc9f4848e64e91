import { DARK, LIGHT, paletteCss } from './palette.ts';

const PAGE = `
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);font:16px/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;font-variant-numeric:tabular-nums;-webkit-text-size-adjust:100%}
body{margin:0 auto;padding:2rem 1.5rem 3rem;max-width:64rem;overflow-wrap:break-word}
h1{overflow-wrap:anywhere;font-size:1rem;font-weight:600;margin:0;unicode-bidi:isolate}
h2{font-size:1rem;font-weight:600;margin:0 0 .6rem;padding-top:.9rem;border-top:1px solid var(--rule)}
h3{font-size:1rem;font-weight:600;margin:.9rem 0 .3rem}
.finding h3{margin:0}
p,ul,ol,dl{margin:0 0 .6rem}
ul,ol{padding-left:1.25rem}
section{margin-top:1.8rem}
a{color:inherit;text-decoration:underline;text-decoration-color:var(--rule);text-underline-offset:.18em}
a:hover{text-decoration-color:var(--accent)}
a:focus-visible{outline:2px solid var(--accent);outline-offset:2px}
.muted,.facts{color:var(--muted);font-size:.875rem}
.facts{margin:.1rem 0 0}
.verdict{margin-top:1.2rem}
.verdict p{font-size:1.125rem;line-height:1.6;margin:0 0 .35rem;max-width:60rem}
.verdict a{text-decoration:none}
.verdict a:hover{text-decoration:underline;text-decoration-color:var(--accent)}
.large{font-size:1.35em;font-weight:600;white-space:nowrap;line-height:1.2}
.load{margin-top:.8rem;padding-left:.9rem;border-left:3px solid var(--accent);max-width:60rem}
.load p{margin:0 0 .2rem}
.caution{font-size:.875rem;border:1px solid var(--rule);background:var(--wash);padding:.45rem .7rem;margin:.5rem 0 0}
.caution::before{content:"Caution. ";font-weight:600}
figure{margin:1.4rem 0 0}
.scroll{overflow-x:auto}
svg{display:block;width:100%;height:auto}
svg.overlay{min-width:38rem}
table{border-collapse:collapse;width:100%;font-size:.875rem}
th,td{text-align:left;padding:.28rem .8rem .28rem 0;border-bottom:1px solid var(--rule);vertical-align:top}
th{font-weight:600}
tbody th{white-space:nowrap}
thead th{color:var(--muted);white-space:nowrap}
td.number,th.number{text-align:right;white-space:nowrap}
.legs th,.legs td{padding-right:.55rem;font-size:.8125rem}
.verdict-cell{white-space:nowrap}
.legs td.number{padding-left:.3rem}
td.group,th.group{border-left:1px solid var(--rule);padding-left:.8rem}
.plain{margin-top:.5rem}
.plain th,.plain td{border:0;padding:.08rem 1rem .08rem 0;font-size:.8125rem;line-height:1.4}
.plain td:first-child{width:38%}
.plain td{color:var(--muted)}
.departs{font-weight:600;color:var(--accent)}
.finding{padding:.8rem 0;border-top:1px solid var(--rule)}
.finding:first-of-type{border-top:0;padding-top:0}
.finding header{display:flex;gap:.6rem;align-items:baseline}
.finding .letter-mark{flex:none;font-weight:600;white-space:nowrap}
.act .letter-mark{color:var(--hot)}
.finding dl{display:grid;grid-template-columns:max-content 1fr;gap:.15rem 1rem;font-size:.875rem;margin:.5rem 0 0}
.finding dt{color:var(--muted)}
.finding dd{margin:0}
.mono{font-family:ui-monospace,SFMono-Regular,Menlo,Consolas,monospace;font-size:.8125rem;white-space:pre-wrap;overflow-wrap:anywhere;unicode-bidi:isolate}
.heat-figures svg{max-width:30rem}
.heat-figures{display:grid;gap:1rem 2rem;align-items:end;margin:.4rem 0 1rem}
`;

const DRAWINGS = `
.frame{fill:none;stroke:var(--rule)}
.grid{stroke:var(--rule);stroke-width:.5}
.axis,.lane-name,.phase-name{fill:var(--muted)}
.lane-name,.phase-name,.letter text{paint-order:stroke;stroke:var(--paper);stroke-width:3px;stroke-linejoin:round}
.phase{fill:var(--muted);opacity:.09}
.phase-name{font-size:10px}
.curve-planned{fill:none;stroke:var(--muted);stroke-width:1.2;stroke-dasharray:5 4}
.curve-actual{fill:none;stroke:var(--ink);stroke-width:1.8;stroke-linejoin:round}
.hot{fill:var(--hot);opacity:.3}
.cold{fill:var(--cold);opacity:.3}
.lane .hot,.lane .cold{opacity:.35}
.slope .hot,.slope .cold{fill:var(--muted);opacity:.12}
.lane-line{fill:none;stroke:var(--ink);stroke-width:1.1;stroke-linejoin:round}
.zero{stroke:var(--muted);stroke-width:.8}
.hole{fill:var(--accent);opacity:.12}
.leg rect{fill:var(--wash);stroke:var(--muted);stroke-width:.8}
.leg.hold rect{fill:var(--rule)}
.leg.planned rect{stroke-dasharray:3 2}
.leg.cooling rect{fill:none;stroke-dasharray:3 2}
.leg.departs rect{stroke:var(--accent);stroke-width:2}
.leg text{fill:var(--ink)}
.letter text{fill:var(--ink);font-weight:600;stroke:none}
.letter polygon,.letter circle{fill:var(--paper);stroke:var(--ink);stroke-width:1.4}
svg a{text-decoration:none}
.letter .stem{stroke:var(--ink);stroke-width:.8}
.letter.act polygon{fill:var(--hot);stroke:var(--hot)}
.letter.act text{fill:var(--paper)}
.cone{fill:var(--wash);stroke:var(--ink);stroke-width:1.4;stroke-linejoin:round}
.plaque{fill:var(--rule);stroke:var(--muted);stroke-width:.8}
.shelf{stroke:var(--ink);stroke-width:1.4}
.cone-name{fill:var(--ink);font-weight:600}
.down{stroke:var(--accent);stroke-width:1.2;stroke-dasharray:6 3}
`;

const WIDE = `
@media (min-width:40rem){.heat-figures{grid-template-columns:minmax(0,22rem) minmax(0,1fr)}}
@media screen and (min-width:90rem){body{max-width:92rem}.sheet{display:grid;grid-template-columns:minmax(0,60rem) minmax(0,1fr);gap:0 3rem;align-items:start}.margin section:first-child{margin-top:1.4rem}}
`;

const PRINT = `
@page{margin:14mm 13mm}
@media print{
html{font-size:10.5pt;background:none}
body{padding:0;max-width:none}
section{margin-top:1.1rem}
h2,h3,.finding header{break-after:avoid}
figure,.load,.caution,tr,svg{break-inside:avoid}
.caution,.plain thead{break-before:avoid}
p,li{orphans:3;widows:3}
a{text-decoration:none}
thead{display:table-header-group}
svg.overlay{min-width:0}
.scroll{overflow:visible}
}
`;

/** The page's whole style. Dark is for screens only: paper is printed on as it is. */
export const styleSheet = (): string =>
  [
    `:root{color-scheme:light dark;${paletteCss(LIGHT)}}`,
    `@media screen and (prefers-color-scheme:dark){:root{${paletteCss(DARK)}}}`,
    '@media print{:root{color-scheme:light}}',
    PAGE,
    DRAWINGS,
    WIDE,
    PRINT,
  ].join('\n');
