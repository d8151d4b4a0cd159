<#ftl output_format="undefined">
:root{color-scheme:light dark;--paper:#fcfbf8;--ink:#24282c;--soft:#5b6268;--rule:#d9d6cc;--tint:#f2efe6;--link:#1f4e79;--claimed:#e9e4d6;--grid:#d3d5d6;
--s0:#0072b2;--s1:#d55e00;--s2:#8a4f7d;--s3:#00736b;--s4:#3f3f3f;--s5:#a66f00}
@media (prefers-color-scheme:dark){:root{--paper:#17191c;--ink:#e2e0da;--soft:#a3a7aa;--rule:#3a3e42;--tint:#202327;--link:#9cc3e6;--claimed:#33312a;--grid:#3a3e42;
--s0:#6bb5e8;--s1:#f0995a;--s2:#cf9cc4;--s3:#62c2b4;--s4:#c9c9c9;--s5:#dcb25a}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.6 Charter,"Bitstream Charter","Iowan Old Style","Source Serif 4",Georgia,"DejaVu Serif",serif;font-variant-numeric:lining-nums}
main,header.page,footer.page{max-width:58rem;margin:0 auto;padding:0 1.5rem}
header.page{padding-top:3.5rem}
p,li,dd{overflow-wrap:break-word}
p,ul,ol,blockquote{max-width:42rem}
h1,h2,h3,h4{line-height:1.25;font-weight:600;overflow-wrap:break-word}
h1{font-size:2.1rem;margin:0 0 .5rem;letter-spacing:-.01em}
h2{font-size:1.6rem;margin:3.5rem 0 .75rem;padding-top:1rem;border-top:1px solid var(--rule)}
h3{font-size:1.2rem;margin:2.75rem 0 .5rem}
h4{font-size:1rem;margin:1.75rem 0 .4rem}
a{color:var(--link);text-decoration-thickness:1px;text-underline-offset:.18em}
.soft,figcaption{color:var(--soft)}
.lead{font-size:1.15rem}
.scroll{overflow-x:auto;margin:1rem 0}
table{border-collapse:collapse;width:100%;font-size:.93rem;line-height:1.45;font-variant-numeric:lining-nums tabular-nums}
caption{text-align:left;color:var(--soft);padding:0 0 .4rem}
th,td{text-align:left;vertical-align:top;padding:.5rem .9rem .5rem 0;border-bottom:1px solid var(--rule);overflow-wrap:anywhere;min-width:4.5rem}
td:first-child,th:first-child{min-width:1.5rem;overflow-wrap:break-word}
thead th{overflow-wrap:normal;white-space:nowrap;font-weight:600;border-bottom:1.5px solid var(--ink)}
.n{white-space:nowrap}
.verdict{display:inline-block;min-width:5.4rem;padding:.05rem .5rem;border:1.5px solid var(--ink);text-align:center;font-size:.9rem;line-height:1.5;white-space:nowrap}
.verdict.marginal{border-style:dashed}
.verdict.fail{background:var(--ink);color:var(--paper)}
.verdict.untested{border-style:dotted;color:var(--soft);border-color:var(--soft)}
blockquote{margin:1rem 0;padding:0 0 0 1.1rem;border-left:3px solid var(--rule)}
blockquote p{margin:.2rem 0}
blockquote .words{font-size:1.1rem}
dl{display:grid;grid-template-columns:minmax(8rem,11rem) 1fr;gap:.45rem 1.25rem;margin:1rem 0;max-width:50rem}
dt{color:var(--soft)}
dd{margin:0;min-width:0}
dd ul{margin:0;padding-left:1.1rem}
.plain{list-style:none;padding:0}
.cautions{border:1.5px solid var(--ink);padding:.9rem 1.25rem;margin:1.75rem 0;max-width:50rem;break-inside:avoid}
.cautions p,.cautions ul{margin:.2rem 0}
.cautions ul{padding-left:1.1rem}
figure{margin:1.5rem 0;break-inside:avoid}
figure .scroll{margin:0}
figure svg{display:block;max-width:100%;height:auto}
figcaption{font-size:.9rem;max-width:42rem;margin-top:.3rem}
code{font:.82em/1.5 ui-monospace,"DejaVu Sans Mono",Menlo,Consolas,monospace;overflow-wrap:anywhere}
nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.2rem 1.4rem;max-width:none;font-size:.95rem}
footer.page{padding-bottom:4rem}
svg rect.e-paper,svg path.e-paper{fill:var(--paper)}
svg .e-claimed{fill:var(--claimed)}
svg .e-swatch{stroke:var(--ink)}
svg .e-grid{stroke:var(--grid)}
svg text.e-ink,svg .e-ink text{fill:var(--ink)}
svg g.e-ink line,svg rect.e-ink{stroke:var(--ink)}
<#list 0..5 as i>
svg .e-series-${i} polyline,svg .e-series-${i} line,svg .e-series-${i} path[stroke],svg .e-series-${i} rect{stroke:var(--s${i})}
svg .e-series-${i} circle,svg .e-series-${i} polygon,svg .e-series-${i} path:not([stroke]){fill:var(--s${i})}
</#list>
@media (max-width:44rem){
body{font-size:1rem}
main,header.page,footer.page{padding-left:1rem;padding-right:1rem}
header.page{padding-top:1.75rem}
h1{font-size:1.6rem}h2{font-size:1.35rem}
dl{grid-template-columns:1fr;gap:0}
dd{margin:0 0 .7rem}
table.stack thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table.stack,table.stack tbody,table.stack tr,table.stack td{display:block;min-width:0}
table.stack tr{padding:.6rem 0;border-bottom:1px solid var(--rule)}
table.stack td{border:0;padding:.12rem 0}
table.stack td[data-name]:not(:empty)::before{content:attr(data-name) ": ";color:var(--soft)}
figure svg{min-width:36rem}
}
@page{size:A4;margin:18mm 16mm 20mm}
@media print{
:root{color-scheme:light;--paper:#fff;--ink:#000;--soft:#444;--rule:#bbb;--tint:#fff;--link:#000;--claimed:#e9e4d6;--grid:#d3d5d6;--s0:#0072b2;--s1:#d55e00;--s2:#8a4f7d;--s3:#00736b;--s4:#3f3f3f;--s5:#a66f00}
body{font-size:10pt;line-height:1.45}
main,header.page,footer.page{max-width:none;padding:0}
header.page{padding-top:0}
nav{display:none}
a{text-decoration:none}
h2{break-before:page;border:0;padding-top:0;margin-top:0}
h2.first,h2.flow{break-before:auto;margin-top:1.5rem}
h2,h3,h4{break-after:avoid}
tr,blockquote{break-inside:avoid}
.scroll{overflow:visible}
.verdict.fail{print-color-adjust:exact;-webkit-print-color-adjust:exact}
figure svg{max-height:110mm}
}
