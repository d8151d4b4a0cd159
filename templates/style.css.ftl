<#ftl output_format="undefined">
<#import "figure-style.ftl" as look>
:root{color-scheme:light dark;--paper:#fcfbf8;--ink:#24282c;--soft:#5b6268;--rule:#d9d6cc;--tint:#f2efe6;--link:#1f4e79;}
@media (prefers-color-scheme:dark){:root{--paper:#17191c;--ink:#e2e0da;--soft:#a3a7aa;--rule:#3a3e42;--tint:#202327;--link:#9cc3e6;}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.6 Charter,"Bitstream Charter","Iowan Old Style","Source Serif 4",Georgia,"DejaVu Serif",serif;font-variant-numeric:lining-nums}
main,header.page{max-width:64rem;margin:0 auto;padding:0 1.5rem}
main{padding-bottom:4rem}
.n,.verdict{white-space:nowrap}
header.page{padding-top:3.25rem}
.skip{position:absolute;left:-99rem}
.skip:focus{left:1rem;top:.5rem}
.kicker{margin:0;color:var(--soft);font-size:.95rem;letter-spacing:.02em}
.sub{margin:0;font-size:1.25rem;font-style:italic;color:var(--soft)}
:focus-visible{outline:2px solid var(--link);outline-offset:2px}
p,li,dd{overflow-wrap:break-word}
p,ul,ol,blockquote{max-width:42rem}
h1,h2,h3,h4{line-height:1.25;font-weight:600;overflow-wrap:break-word}
h1{font-size:2.1rem;margin:0 0 .5rem;letter-spacing:-.01em}
h2{font-size:1.6rem;margin:3.5rem 0 .75rem;padding-top:1rem;border-top:1px solid var(--rule)}
h3{font-size:1.2rem;margin:2.75rem 0 .5rem}
h4{font-size:1rem;margin:1.75rem 0 .4rem}
a{color:var(--link);text-decoration-thickness:1px;text-underline-offset:.18em}
.soft,figcaption{color:var(--soft)}
.lead{font-size:1.12rem}
.answer .product{border-top:1px solid var(--rule);padding-top:.2rem;margin-top:1.4rem}
.answer .product h3{margin:.8rem 0 .3rem;font-size:1.3rem}
.answer .lead{max-width:46rem}
h2+.product{border-top:0;margin-top:0}
.tally{display:flex;flex-wrap:wrap;gap:.4rem 1.4rem;margin:.5rem 0;max-width:none}
.tally span{white-space:nowrap}
.tally b{font-size:1.35rem;font-weight:600;margin-right:.2rem}
dl.brief{max-width:46rem;grid-template-columns:minmax(6rem,7rem) 1fr}
.under,.from,.topic,.line,.of{display:block}
.under,.from,.topic,.of{font-size:.9em}
.topic{font-style:italic}
.line+.line{margin-top:.25rem}
.alone,.paper{display:none}
.number{display:inline-block;min-width:1.6rem;color:var(--soft)}
del{color:var(--soft);text-decoration:line-through}
ins{text-decoration:underline;text-decoration-thickness:2px;text-underline-offset:.15em}
details{margin:1rem 0}
summary{cursor:pointer;font-weight:600}
form{display:flex;flex-wrap:wrap;gap:.6rem 1.4rem;align-items:center;border:1px solid var(--rule);border-width:1px 0;padding:.7rem 0;margin:1rem 0;font-size:.95rem}
form[hidden],[hidden]{display:none}
fieldset{border:0;margin:0;padding:0;display:flex;flex-wrap:wrap;gap:.2rem 1rem}
legend{float:left;padding:0 1rem 0 0;color:var(--soft)}
form label{white-space:nowrap}
form p{margin:0;color:var(--soft)}
input,select,form button{font:inherit;color:inherit;background:var(--paper);border:1px solid var(--soft);padding:.15rem .45rem;border-radius:0}
input[type=checkbox]{width:1.05rem;height:1.05rem;vertical-align:-.12rem;accent-color:var(--ink)}
input[type=search]{width:11rem}
thead button{font:inherit;font-weight:600;color:inherit;background:none;border:0;padding:0;cursor:pointer;text-decoration:underline dotted;text-underline-offset:.25em}
th[aria-sort=ascending] button::after{content:" ↑"}
th[aria-sort=descending] button::after{content:" ↓"}
.claims td:nth-child(1){width:4.5rem}
.claims td:nth-child(2){width:22%}
.claims td:nth-child(3){width:22%;font-size:.95em}
.claims td:nth-child(4){width:13%}
.claims td:nth-child(5){width:10rem}
.claims td:nth-child(6){width:7.5rem}
tbody th{font-weight:600}
table{border-collapse:collapse;width:100%;font-size:.93rem;line-height:1.45;font-variant-numeric:lining-nums tabular-nums}
caption{text-align:left;color:var(--soft);padding:0 0 .4rem}
th,td{text-align:left;vertical-align:top;padding:.5rem .9rem .5rem 0;border-bottom:1px solid var(--rule);overflow-wrap:anywhere;min-width:4.5rem}
td:first-child,th:first-child{min-width:1.5rem;overflow-wrap:break-word}
th[scope=row]{max-width:14rem}
thead th{overflow-wrap:normal;white-space:nowrap;font-weight:600;border-bottom:1.5px solid var(--ink)}
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
.cautions{border:1.5px solid var(--ink);padding:.9rem 1.25rem;margin:1.75rem 0;max-width:50rem;break-inside:avoid}
.cautions p,.cautions ul{margin:.2rem 0}
.cautions ul{padding-left:1.1rem}
.figures{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,26rem),1fr));gap:1.75rem 2rem;align-items:start;margin:1.5rem 0}
figure{margin:0;min-width:0;break-inside:avoid}
figure svg{display:block;width:100%;max-width:34rem;height:auto}
figcaption{font-size:.85rem;line-height:1.45;max-width:34rem;margin-top:.3rem}
code{font:.82em/1.5 ui-monospace,"DejaVu Sans Mono",Menlo,Consolas,monospace;overflow-wrap:anywhere}
nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.2rem 1.4rem;max-width:none;font-size:.95rem}
<@look.darkRules/>
svg .e-paper{fill:var(--paper)}
svg text{font-variant-numeric:tabular-nums}
@media screen and (max-width:60rem){
.claims td{min-width:0}
}
@media screen and (max-width:48rem){
body{font-size:1rem}
main,header.page{padding-left:1rem;padding-right:1rem}
header.page{padding-top:1.75rem}
.alone{display:inline}
.of{display:inline}
form{gap:.7rem}
input[type=search]{width:100%}
form label{white-space:normal}
dl.brief{grid-template-columns:1fr}
h1{font-size:1.6rem}h2{font-size:1.35rem}
dl{grid-template-columns:1fr;gap:0}
dd{margin:0 0 .7rem}
table.stack thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table.stack,table.stack caption,table.stack tbody,table.stack tr,table.stack td,table.stack tbody th{display:block;min-width:0;width:auto!important;max-width:none}
table.stack tbody tr[hidden]{display:none}
table.stack tr{padding:.6rem 0;border-bottom:1px solid var(--rule)}
table.stack td,table.stack tbody th{border:0;padding:.12rem 0}
table.stack td[data-name]:not(:empty)::before{content:attr(data-name) ": ";color:var(--soft)}
}
@page{size:A4;margin:18mm 16mm 20mm}
@media print{
:root{color-scheme:light;--paper:#fff;--ink:#000;--soft:#444;--rule:#bbb;--tint:#fff;--link:#000;}
body{font-size:9.5pt;line-height:1.38}
main,header.page{max-width:none;padding:0}
header.page{padding-top:0}
nav,form,.skip,.brief a{display:none!important}
tr[hidden]{display:table-row!important}
#none-shown{display:none}
table{font-size:8.5pt}
.claims{table-layout:fixed}
.claims td,.claims th{padding-right:.4rem;min-width:0}
.claims th:nth-child(1){width:8%}.claims th:nth-child(2){width:22%}.claims th:nth-child(3){width:20%}.claims th:nth-child(4){width:14%}.claims th:nth-child(5){width:12%}.claims th:nth-child(6){width:10%}.claims th:nth-child(7){width:14%}
.claims .n{white-space:normal}
thead button{display:none}
thead th{white-space:normal}
.paper{display:inline}
.verdict{min-width:0;padding:0 .3rem;font-size:8.5pt}
.tally b{font-size:12pt}
.lead{font-size:11pt}
a{text-decoration:none}
h2{border:0;padding-top:0;margin:1.2rem 0 .4rem}
p,li{orphans:3;widows:3}
h2.fresh{break-before:page;margin-top:0}
h2,h3,h4{break-after:avoid}
tr,blockquote{break-inside:avoid}
.verdict.fail{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.figures{display:block}
figure{display:inline-block;width:86mm;margin:0 2mm 3mm 0;vertical-align:top}
figure:only-child{width:120mm}
figure svg{max-height:215mm}
dl{grid-template-columns:minmax(6rem,8rem) 1fr;gap:.15rem 1rem;margin:.4rem 0}
figcaption{font-size:8pt;line-height:1.3;margin-top:.15rem}
h3{margin:1rem 0 .3rem}
h4{margin:.6rem 0 .15rem}
p{margin:.3rem 0}
blockquote,table,details{margin:.3rem 0}
th,td{padding:.1rem .6rem .1rem 0;line-height:1.3}
details table{max-width:28rem}
}
