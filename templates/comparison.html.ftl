<#ftl output_format="HTML">
<#include "comparison-words.ftl">
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${second} against ${first}</title>
<style>
:root{color-scheme:light dark;--ink:#222;--soft:#555;--line:#bbb;--paper:#fff}
@media (prefers-color-scheme:dark){:root{--ink:#e6e3dc;--soft:#aaa69c;--line:#55524b;--paper:#1b1a18}}
body{margin:2rem auto;max-width:78rem;padding:0 1.25rem;background:var(--paper);color:var(--ink);font:1rem/1.5 Charter,"Bitstream Charter","Iowan Old Style",Georgia,"DejaVu Serif",serif}
h1{font-size:1.5rem;font-weight:600;line-height:1.25}
h2{font-size:1.15rem;font-weight:600;margin:2rem 0 .5rem}
.soft{color:var(--soft)}
.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
th,td{padding:.35rem .6rem;text-align:left;vertical-align:top;border-bottom:1px solid var(--line)}
th{font-weight:600}
td.n,th.n{text-align:right}
.n,td.v{white-space:nowrap}
td:nth-child(2),td:last-child{min-width:12rem}
tr.worse td:first-child{border-left:.3rem solid var(--ink)}
@page{size:A4 landscape;margin:15mm}
@media print{body{margin:0;max-width:none;font-size:9.5pt}}
</style>
</head>
<body>
<h1>${second} against ${first}</h1>
<#if dated != ""><p>${dated}</p></#if>
<p>${whatAShiftIs()}</p>
<#if sameNames?has_content><p>${alikeByName(sameNames)}</p></#if>
<#list products as p>
<h2>${p.second}<#if p.first != p.second> against ${p.first}</#if></h2>
<div class="wide" tabindex="0" role="region" aria-label="Claims of ${p.second}">
<table>
<thead><tr><th class="n" scope="col">No.</th><th scope="col">Claim</th><th class="n" scope="col">First</th><th class="n" scope="col">Second</th><th scope="col">Verdict</th><th class="n" scope="col">Shift</th><th class="n" scope="col">U (k = 2)</th><th class="n" scope="col">By noise alone</th><th scope="col">Shift is</th></tr></thead>
<tbody>
<#list p.claims as c>
<tr class="${c.change}"><td class="n">${c.number}</td><td>${c.id}<#if !c.sameWords><br><span class="soft">words or rule differ: ${said(c.first)} (${c.first.edition}) / ${said(c.second)} (${c.second.edition})</span></#if></td><td class="n">${before(c)}</td><td class="n">${after(c)}</td><td class="v">${c.first.verdict} → ${c.second.verdict}<br><span class="soft">${became(c.change)}</span></td><td class="n"><#if c.shift?has_content>${shifted(c.shift, c.unit)}<#else>–</#if></td><td class="n"><#if c.shift?has_content && c.shift.standardUncertainty?is_number>${expanded(c.shift, c.unit)}<#else>–</#if></td><td class="n"><#if c.shift?has_content>${chance(c.shift.chance)}</#if></td><td>${judged(c.shift, c.unit)}${decidedElse(c)}${othersMoved(c)}<#if c.shift?has_content && c.shift.nothingShared><br><span class="soft">decided at different bands: nothing taken as shared</span></#if></td></tr>
</#list>
</tbody>
</table>
</div>
<#list p.claims?filter(c -> isDetailed(c)) as c>
<h3>${c.number}. ${c.id}</h3>
<ul>
<#list c.cells as s>
<li>${s.conditions}<#if s.units.first gt 0><#if s.conditions != "">, </#if>mean over the units</#if>: ${amount(s.first, c.unit)} → ${amount(s.second, c.unit)}, ${shifted(s, c.unit)} (${judged(s, c.unit)})</li>
</#list>
</ul>
</#list>
<#if p.onlyFirst?has_content><p>Only in the first: <#list p.onlyFirst as c>${c.id}<#sep>, </#list>.</p></#if>
<#if p.onlySecond?has_content><p>Only in the second: <#list p.onlySecond as c>${c.id}<#sep>, </#list>.</p></#if>
<#else>
<p>No product is in both.</p>
</#list>
<ul class="soft"><#list cautions() as caution><li>${caution}</li></#list></ul>
</body>
</html>
