<#ftl output_format="HTML">
<#macro verdict word><span class="verdict ${word}">${word}</span></#macro>
<#macro list items><ul><#list items as item><li>${item}</li></#list></ul></#macro>
<#macro words c><blockquote><p class="words"><#if c.verbatim>“${c.words}”<#else>${c.words}</#if></p><p class="soft"><#if !c.verbatim>In our words, after </#if>${c.source}, ${c.dated}<#if c.editionConditions != ""> (${c.editionConditions})</#if></p></blockquote></#macro>
<#macro row name text><#if text != ""><dt>${name}</dt><dd>${text}</dd></#if></#macro>
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>Audit of claims: <#list products as product>${product.name}<#sep>, </#list></title>
<style>
<#include "style.css.ftl">
</style>
</head>
<body>
<header class="page">
<h1>What was claimed, and what was measured</h1>
<p class="lead"><#list products as product>${product.name}<#if product.maker != ""> by ${product.maker}</#if><#sep>; </#list></p>
<#if dated != ""><p class="soft">${dated}</p></#if>
<nav aria-label="Contents"><ul>
<#list products as product><li><a href="#${product.anchor}">${product.name}</a></li></#list>
<li><a href="#decision">How it was decided</a></li>
<li><a href="#measurement">How it was measured</a></li>
<li><a href="#findings">What the data say of themselves</a></li>
<li><a href="#inputs">Files</a></li>
</ul></nav>
</header>
<main>
<section class="cautions" id="cautions" aria-label="Cautions">
<p><strong>Before you rely on this</strong></p>
<@list cautions/>
</section>
<#list products as product>
<section>
<h2 id="${product.anchor}"<#if product?is_first> class="first"</#if>>${product.name}</h2>
<p class="lead">${product.claims?size} <#if product.claims?size == 1>claim<#else>claims</#if>: ${product.countsText}.</p>
<#if product.recommendation != ""><p><strong>Our recommendation.</strong> ${product.recommendation}</p></#if>
<dl>
<@row "Maker" product.maker/>
<@row "Product" product.about/>
<dt>Samples</dt><dd><#if product.samples?has_content><ul><#list product.samples as s><li>${s.unit}<#if s.obtained != "">: ${s.obtained}</#if></li></#list></ul><#else>not stated</#if></dd>
<dt>Disclosure</dt><dd><#if product.disclosure != "">${product.disclosure}<#else>none given</#if></dd>
<dt>Measured on</dt><dd>${product.sample}</dd>
<@row "Maker asked" product.asked/>
<#if product.reply.text != ""><dt>Maker’s reply</dt><dd>${product.reply.text} <span class="soft">(${product.reply.dated})</span></dd></#if>
</dl>
<table class="stack">
<caption>The claims and what became of them. Probability: that the claim, as we read it, is true.</caption>
<thead><tr><th scope="col">No.</th><th scope="col">Claim</th><th scope="col">Measured</th><th scope="col">Verdict</th><th scope="col">Probability</th></tr></thead>
<tbody>
<#list product.claims as c>
<tr>
<td data-name="No."><a href="#${c.anchor}">${c.number}</a></td>
<td><#if c.verbatim>“${c.words}”<#else>${c.words} <span class="soft">(in our words)</span></#if><br><span class="soft">${c.source}, ${c.dated}</span></td>
<td data-name="Measured"><#if c.measured.value != "">${c.measured.value}<#if c.measured.interval != ""><br><span class="soft">95 % interval<br><span class="n">${c.measured.interval}</span></span></#if><#else>not measured</#if></td>
<td><@verdict c.verdict/></td>
<td class="n" data-name="Probability"><#if c.probability != "">${c.probability}<#else>not given</#if></td>
</tr>
</#list>
</tbody>
</table>
<#list product.claims as c>
<article aria-labelledby="${c.anchor}">
<h3 id="${c.anchor}">${c.number}. ${c.topic}</h3>
<@words c/>
<p><@verdict c.verdict/> <#if c.probability != "">with probability ${c.probability} that the claim, as we read it, is true<#else>no probability given</#if><#if c.reason != "">: ${c.reason}</#if>.</p>
<dl>
<#if c.rule != "">
<dt>Our rule</dt><dd>${c.rule}</dd>
<#if c.stated?has_content><dt>The sentence states</dt><dd><#list c.stated as s>${s.key}: ${s.text}<#sep>; </#list></dd></#if>
<dt>We assumed</dt><dd><#if c.assumed?has_content><#list c.assumed as s>${s.key}: ${s.text}<#sep>; </#list><#else>nothing</#if></dd>
</#if>
<@row "Because" c.because/>
<@row "Condition" c.condition/>
<#if c.measured.value != "">
<dt>Measured</dt><dd>${c.measured.text}<#if c.measured.point != "">; ${c.measured.point}</#if><#if c.measured.decides != "">; ${c.measured.decides}</#if><#if c.measured.correction != ""><br>noise alone adds ${c.measured.correction} to this on average</#if></dd>
</#if>
<@row "Ears, insertions" c.sample/>
<#if c.notes?has_content><dt>Notes</dt><dd><@list c.notes/></dd></#if>
<@row "Impression, not measured" c.impression/>
<@row "Maker asked" c.asked/>
<#if c.reply.text != ""><dt>Maker’s reply</dt><dd>${c.reply.text} <span class="soft">(${c.reply.dated})</span></dd></#if>
</dl>
<#list c.figures as f>
<figure>
<div class="scroll">
${f.svg?no_esc}
</div>
<figcaption>${f.alt}</figcaption>
</figure>
</#list>
<#if c.otherwise?has_content>
<h4>The sentence read otherwise</h4>
<table class="stack">
<thead><tr><th scope="col">Name</th><th scope="col">Rule</th><th scope="col">Measured</th><th scope="col">Verdict</th><th scope="col">Probability</th></tr></thead>
<tbody>
<#list c.otherwise as o>
<tr><td>${o.name}</td><td data-name="Rule">${o.rule}<#if o.reason != ""><br><span class="soft">${o.reason}</span></#if><#list o.notes as note><br><span class="soft">${note}</span></#list></td><td data-name="Measured"><#if o.measured.value != "">${o.measured.value}<#else>not measured</#if></td><td><@verdict o.verdict/></td><td class="n" data-name="Probability"><#if o.probability != "">${o.probability}<#else>not given</#if></td></tr>
</#list>
</tbody>
</table>
</#if>
<#if c.cells?size gt 1>
<h4>One by one</h4>
<table class="stack">
<thead><tr><th scope="col">Conditions</th><th scope="col">Insertions</th><th scope="col">Value</th><th scope="col">U (k = 2)</th><th scope="col">Probability</th></tr></thead>
<tbody>
<#list c.cells as cell>
<tr><td>${cell.name}</td><td data-name="Insertions">${cell.insertions}</td><td class="n" data-name="Value">${cell.value}</td><td class="n" data-name="U (k = 2)"><#if cell.expandedUncertainty != "">${cell.expandedUncertainty}<#else>not known</#if></td><td class="n" data-name="Probability"><#if cell.probability != "">${cell.probability}<#else>not given</#if></td></tr>
</#list>
</tbody>
</table>
</#if>
<#if c.contributions?has_content>
<h4>What the uncertainty is made of</h4>
<table>
<caption>Standard uncertainty (k = 1) that each cause gives the measured value.</caption>
<thead><tr><th scope="col">Cause</th><th scope="col">Drawn</th><th scope="col">Effect</th></tr></thead>
<tbody><#list c.contributions as k><tr><td>${k.cause}</td><td><#if k.instances == 1>once<#else>${k.instances} times</#if></td><td class="n">${k.effect}</td></tr></#list></tbody>
</table>
</#if>
<#if c.findings?has_content>
<h4>Findings that touch this claim</h4>
<ul><#list c.findings as f><li>${f.text} (${f.errs}; ${f.consequence})</li></#list></ul>
</#if>
</article>
</#list>
<#assign untested = product.claims?filter(c -> c.verdict == "untested")>
<h3>What was not tested</h3>
<#if untested?has_content>
<ul><#list untested as c><li><a href="#${c.anchor}">${c.number}. ${c.topic}</a>: ${c.reason}</li></#list></ul>
<#else>
<p>Every claim listed here was tested.</p>
</#if>
<p>Comfort, wearing time, hearing warning signals, speech and music through the product, and other units than the samples were not judged unless a claim above says so.</p>
<h3>Where the words come from</h3>
<table class="stack">
<thead><tr><th scope="col">Edition</th><th scope="col">Source</th><th scope="col">Dated</th><th scope="col">Speaks of</th><th scope="col">Kept</th></tr></thead>
<tbody><#list product.editions as e><tr><td>${e.id}</td><td data-name="Source">${e.source}<#if !e.mayBeQuoted> <span class="soft">(not to be quoted; in our words)</span></#if></td><td data-name="Dated">${e.dated}</td><td data-name="Speaks of">${e.conditions}</td><td data-name="Kept">${e.kept}</td></tr></#list></tbody>
</table>
</section>
</#list>

<section>
<h2 id="decision">How it was decided</h2>
<p>Each sentence was turned into a rule: what it states, and what we had to assume to make it testable. The rule is held against the readings together with their uncertainty.</p>
<dl>
<dt><@verdict "pass"/></dt><dd>The probability that the limit holds reaches the confidence at every point that the claim speaks of.</dd>
<dt><@verdict "fail"/></dt><dd>Some point lies beyond its limit by more than errors of this size would bring about by chance. A measured value inside the limit never fails.</dd>
<dt><@verdict "marginal"/></dt><dd>The readings do not decide; the reason stands beside the verdict.</dd>
<dt><@verdict "untested"/></dt><dd>No reading can say anything about it.</dd>
</dl>
<p>This is a promise about how often it is wrong, if the declared sizes of the uncertainty are right: <#list products as product>for ${product.name}, decided at ${product.confidence}, a claim that is not true passes, and a claim that is true fails, at most ${product.doubt} of the time<#sep>; </#list>.</p>
<p>A claim of the kind “up to” is met where one point meets it, and a claim about the median where half of the points do; the promise is the same. U is the expanded uncertainty, twice the standard uncertainty (k = 2). The 95 % interval is the central one; the two differ where few repeats were made.</p>
</section>

<section>
<h2 id="measurement" class="flow">How it was measured</h2>
<#list sessions as s>
<h3 id="${s.anchor}">Session ${s.id}</h3>
<dl>
<@row "Date" s.measured/>
<@row "Rig" s.rig/>
<@row "Place" s.place/>
<#if s.resolution != "" || s.stimuli?has_content><dt>Measured on</dt><dd>${s.sample}</dd>
<#if s.resolution != ""><dt>Bands</dt><dd>${s.resolution}<#if s.levelsIn != "">, levels in ${s.levelsIn}</#if></dd></#if>
<dt>Open ear</dt><dd>${s.openEar}</dd>
<dt>Settings</dt><dd>${s.settings}</dd></#if>
<#if s.stimuli?has_content><dt>Stimuli</dt><dd><ul><#list s.stimuli as t><li>${t.id}: ${t.text}<#if t.peak != "">, peak ${t.peak}</#if></li></#list></ul></dd></#if>
<dt>Uncertainty</dt><dd>${s.uncertainty}</dd>
<dt>Files</dt><dd><code>${s.file}</code><#list s.dataFiles as f>, <code>${f}</code></#list></dd>
</dl>
<#if s.causes?has_content>
<table class="stack">
<caption>Causes of uncertainty (standard uncertainties, k = 1)</caption>
<thead><tr><th scope="col">Cause</th><th scope="col">Size</th><th scope="col">Shared by</th><th scope="col">Across bands</th></tr></thead>
<tbody><#list s.causes as k><tr><td>${k.name}</td><td data-name="Size">${k.size}</td><td data-name="Shared by">${k.sharedBy}</td><td data-name="Across bands">${k.acrossBands}</td></tr></#list></tbody>
</table>
</#if>
</#list>
</section>

<section>
<h2 id="findings" class="flow">What the data say of themselves</h2>
<#if findings?has_content>
<table class="stack">
<thead><tr><th scope="col">Check</th><th scope="col">Where</th><th scope="col">Finding</th><th scope="col">How it errs</th><th scope="col">What follows</th></tr></thead>
<tbody><#list findings as f><tr><td>${f.check}</td><td data-name="Where">${f.session}<#if f.reading != "">: ${f.reading}</#if><#if f.bands != "">; ${f.bands}</#if></td><td>${f.text}</td><td data-name="How it errs">${f.errs}</td><td data-name="What follows">${f.consequence}</td></tr></#list></tbody>
</table>
<#else>
<p>There are no findings. Ellwand does not yet check the data for leaks, tube placement, background noise or drift; their absence here says nothing about them.</p>
</#if>
</section>

<section>
<h2 id="inputs" class="flow">Files</h2>
<p>Everything above follows from these files; the SHA-256 of each tells whether yours are the same.</p>
<div class="scroll"><table class="stack">
<thead><tr><th scope="col">File</th><th scope="col">SHA-256</th></tr></thead>
<tbody><#list inputs as i><tr><td><code>${i.file}</code></td><td><code>${i.sha256}</code></td></tr></#list></tbody>
</table></div>
</section>
</main>
</body>
</html>
