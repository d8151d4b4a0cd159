<#ftl output_format="HTML">
<#import "words.ftl" as w>
<#macro figures list>
<#if list?has_content>
<div class="figures">
<#list list as f>
<figure>
${f.svg?no_esc}
<figcaption>${f.title}</figcaption>
</figure>
</#list>
</div>
</#if>
</#macro>
<#macro verdict word><span class="verdict ${word}">${word}</span></#macro>
<#macro list items><ul><#list items as item><li>${item}</li></#list></ul></#macro>
<#macro row name text><#if text != ""><dt>${name}</dt><dd>${text}</dd></#if></#macro>
<#macro quote c><blockquote><p class="words"><#if c.verbatim>“${c.words}”<#else>${c.words}</#if></p><p class="soft"><#if !c.verbatim>In our words, after </#if>${w.source(c)}<#if c.editionConditions != ""> (${c.editionConditions})</#if></p></blockquote></#macro>
<#macro said c><span class="quoted"><#if c.verbatim>“${c.words}”<#else>${c.words} <span class="soft">(in our words)</span></#if></span><span class="soft from">${w.source(c)}</span></#macro>
<#macro short c><#if c.measured.value == "">not measured<#else><span class="n">${w.short(c.measured)}</span><#if w.shortDecided(c.measured) != ""><span class="soft under">${w.shortDecided(c.measured)}</span></#if></#if></#macro>
<#macro changes list><#list list as run><#if run.kind == "gone"><del>${run.text}</del><#elseif run.kind == "new"><ins>${run.text}</ins><#else>${run.text}</#if><#sep> </#list></#macro>
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src '${script.hash}'; img-src data:; base-uri 'none'; form-action 'none'">
<title>Claims and measurements: <#list products as product>${product.name}<#sep>, </#list></title>
<style>
<#include "style.css.ftl">
</style>
</head>
<body>
<a class="skip" href="#claims">To the claims</a>
<header class="page">
<p class="kicker">An audit of claims<#if dated != "">, ${dated}</#if></p>
<h1><#list products as product>${product.name}<#sep><#if product?counter == products?size - 1> and <#else>, </#if></#list></h1>
<p class="sub">What was claimed, and what was measured</p>
</header>
<main>
<section aria-labelledby="answer" class="answer">
<h2 id="answer">The short answer</h2>
<#list products as product>
<div class="product">
<#if products?size gt 1><h3>${product.name}</h3></#if>
<p class="tally"><#list ["pass", "marginal", "fail", "untested"] as word><span><b>${product.counts[word]}</b> <@verdict word/></span></#list></p>
<p class="lead">${w.inShort(product)}</p>
<dl class="brief">
<#if product.recommendation != ""><dt>For whom</dt><dd>${w.full(product.recommendation)} ${w.notForWhom()}</dd><#else><dt>For whom</dt><dd>${w.notForWhom()}</dd></#if>
<dt>How sure</dt><dd>${w.sure(product)} <a href="#decision">How it was decided</a></dd>
<dt>Not tested</dt><dd>${w.capital(w.untestedOf(product))}. <a href="#untested">What else was not</a></dd>
</dl>
</div>
</#list>
</section>
<section class="cautions" id="cautions" aria-label="Cautions">
<p><strong>Before you rely on this</strong></p>
<ul><#list cautions as c><li>${w.caution(c)}</li></#list></ul>
</section>
<nav aria-label="Contents"><ul>
<li><a href="#claims">The claims</a></li>
<#if shared?has_content><li><a href="#compared">Side by side</a></li></#if>
<#list products as product><li><a href="#${product.anchor}">${product.name}, one by one</a></li></#list>
<li><a href="#measurement">How it was measured</a></li>
<li><a href="#decision">How sure</a></li>
<li><a href="#untested">Not tested</a></li>
<li><a href="#replies">The makers</a></li>
<li><a href="#editions">Editions</a></li>
<li><a href="#inputs">Data record</a></li>
</ul></nav>

<section class="wide">
<h2 id="claims">The claims and what became of them</h2>
<form id="filter" hidden>
<fieldset><legend>Verdict</legend><#list ["pass", "marginal", "fail", "untested"] as word><label><input type="checkbox" name="verdict" value="${word}" checked> ${word}</label></#list></fieldset>
<#if products?size gt 1><label>Product <select name="product"><option value="">all</option><#list products as product><option value="${product.anchor}">${product.name}</option></#list></select></label></#if>
<label>Words <input type="search" name="text" autocomplete="off"></label>
<button type="reset">Show all</button>
<p role="status" aria-live="polite"><span id="shown"></span> claims shown</p>
</form>
<table class="stack claims" id="claim-table">
<caption>Measured with U, the expanded uncertainty (k = 2). The difference is that of the measured value from the number the sentence names. Of several ears or stimuli the least favourable is shown.</caption>
<thead><tr><th scope="col" data-sortable>No.</th><th scope="col" data-sortable>Claim</th><th scope="col">Read as</th><th scope="col" data-sortable>Measured</th><th scope="col" data-sortable>Difference</th><th scope="col" data-sortable>Verdict</th><th scope="col">Otherwise, caveats</th></tr></thead>
<tbody>
<#list products as product><#list product.claims as c>
<tr data-verdict="${c.verdict}" data-product="${product.anchor}">
<td data-sort="${product?counter}.${c.number?string["000"]}"><a href="#${c.anchor}"><span class="alone">No. </span>${c.number}</a><#if products?size gt 1> <span class="soft of">${product.name}</span></#if></td>
<td><@said c/><#if c.topic != c.id><span class="soft topic">${c.topic}</span></#if></td>
<td data-name="Read as"><#if c.rule != "">${w.rule(c)}<#else>no rule</#if></td>
<td data-name="Measured"><@short c/><#if w.sample(c.sample) != ""><span class="soft under">${w.sample(c.sample)}</span></#if></td>
<td data-name="Difference"><#if w.difference(c) != ""><span class="n">${w.difference(c)}</span><span class="soft under">${w.differenceFrom(c)}<#if w.againstU(c) != "">; ${w.againstU(c)}</#if></span></#if></td>
<td data-name="Verdict"><@verdict c.verdict/><#if c.probability != ""><span class="soft under">probability ${c.probability}</span></#if></td>
<td data-name="Otherwise, caveats"><#list c.otherwise as o><span class="line">${o.name}: ${o.verdict}</span></#list><#if c.reasons?has_content><span class="line soft">${w.reasons(c.reasons)}</span></#if><#if c.notes?has_content || c.findings?has_content><span class="line"><a href="#${c.anchor}">${w.count(c.notes?size + c.findings?size, "caveat", "caveats")}</a></span></#if></td>
</tr>
</#list></#list>
</tbody>
</table>
<p id="none-shown" hidden>No claim fits the choice above.</p>
</section>

<#if shared?has_content>
<section>
<h2 id="compared">The products side by side</h2>
<table class="stack">
<caption>Topics that more than one speaks of. Each cell gives claim, measured value with U, and verdict.</caption>
<thead><tr><th scope="col">Topic</th><#list products as product><th scope="col">${product.name}</th></#list></tr></thead>
<tbody>
<#list shared as t>
<tr><th scope="row">${t.topic}</th><#list products as product><td data-name="${product.name}"><#list t.of?filter(e -> e.product == product?counter) as entry><#list w.claimsOf(entry) as c><span class="line">${w.shownAs(c)} <@verdict c.verdict/></span></#list><#else>nothing claimed</#list></td></#list></tr>
</#list>
</tbody>
</table>
<p>${w.whatDecides()}</p>
<ul><#list w.compared(shared) as line><li>${line}</li></#list></ul>
</section>
</#if>

<#list products as product>
<section>
<h2 id="${product.anchor}" class="fresh">${product.name}, claim by claim</h2>
<dl>
<@row "Maker" product.maker/>
<@row "Product" product.about/>
<dt>Samples</dt><dd><#if product.samples?has_content><ul><#list product.samples as s><li>${s.unit}<#if s.obtained != "">: ${s.obtained}</#if></li></#list></ul><#else>not stated</#if></dd>
<dt>Disclosure</dt><dd><#if product.disclosure != "">${product.disclosure}<#else>none given</#if></dd>
<dt>${w.basis(product.sample)}</dt><dd>${w.sample(product.sample)}</dd>
</dl>
<@figures product.figures/>
<#list product.claims as c>
<article aria-labelledby="${c.anchor}">
<h3 id="${c.anchor}"><span class="number">${c.number}</span> ${c.topic}</h3>
<@quote c/>
<p><@verdict c.verdict/> ${w.verdictLine(c)}.</p>
<dl>
<#if c.rule != "">
<dt>Our rule</dt><dd>${w.rule(c)}</dd>
<#if c.stated?has_content><dt>The sentence states</dt><dd>${w.pairs(c.stated)}</dd></#if>
<dt>We assumed</dt><dd>${w.pairs(c.assumed)}</dd>
</#if>
<@row "Because" c.because/>
<@row "Condition" w.condition(c.conditions)/>
<#if c.measured.value != "">
<dt><#if c.measured.kind == "calculated">Calculated<#else>Measured</#if></dt><dd>${w.measured(c.measured)}<#if c.measured.own && w.where(c.measured.point) != "">; ${w.where(c.measured.point)}</#if><#if w.decides(c.measured) != "">; ${w.decides(c.measured)}</#if><#if w.correction(c.measured) != ""><br>${w.correction(c.measured)}</#if></dd>
<#if w.gap(c) != ""><dt>Against the claim</dt><dd>${w.gap(c)}</dd></#if>
<#if w.curve(c.measured) != ""><dt>Over the bands</dt><dd>${w.curve(c.measured)}</dd></#if>
</#if>
<@row w.basis(c.sample) w.sample(c.sample)/>
<#if c.notes?has_content><dt>Caveats</dt><dd><@list c.notes?map(note -> note.text)/></dd></#if>
<#if c.findings?has_content><dt>Findings that touch it</dt><dd><ul><#list c.findings as f><li>${w.finding(f)}</li></#list></ul></dd></#if>
<@row "Impression, not measured" c.impression/>
<@row "Maker" w.answer(product, c)/>
<#if c.reply.text != ""><dt>Maker's reply</dt><dd>${c.reply.text} <span class="soft">(${c.reply.dated})</span></dd></#if>
</dl>
<@figures c.figures/>
<#if c.otherwise?has_content>
<h4>The sentence read otherwise</h4>
<table class="stack">
<thead><tr><th scope="col">Name</th><th scope="col">Rule</th><th scope="col">Measured</th><th scope="col">Verdict</th><th scope="col">Probability</th></tr></thead>
<tbody>
<#list c.otherwise as o>
<tr><td>${o.name}</td><td data-name="Rule">${w.rule(o)}<#if o.reasons?has_content><span class="soft under">${w.reasons(o.reasons)}</span></#if><#list o.notes as note><span class="soft under">${note.text}</span></#list></td><td data-name="Measured">${w.measured(o.measured)}</td><td data-name="Verdict"><@verdict o.verdict/></td><td class="n" data-name="Probability">${w.probability(o.probability)}</td></tr>
</#list>
</tbody>
</table>
</#if>
<#if c.cells?size gt 1>
<h4><#if c.cellsInAll gt c.cells?size>The ${c.cells?size} least probable of ${c.cellsInAll} (all stand in cells.csv)<#else>One by one</#if></h4>
<table class="stack">
<#if ["lowest", "highest", "median", "spread"]?seq_contains(c.measured.statistic)><caption>U is that of the number that decides in each row, which may be another band than the value’s.</caption></#if>
<thead><tr><th scope="col">Conditions</th><th scope="col">Insertions</th><th scope="col">Value</th><th scope="col">U (k = 2)</th><th scope="col">Probability</th></tr></thead>
<tbody>
<#list c.cells as cell>
<tr><td>${cell.name}</td><td data-name="Insertions">${cell.insertions}</td><td class="n" data-name="Value">${cell.value}</td><td class="n" data-name="U (k = 2)"><#if cell.expandedUncertainty != "">${cell.expandedUncertainty}<#else>not known</#if></td><td class="n" data-name="Probability">${w.probability(cell.probability)}</td></tr>
</#list>
</tbody>
</table>
</#if>
<#if c.contributions?has_content>
<details open>
<summary>What the uncertainty is made of</summary>
<table>
<caption>Standard uncertainty (k = 1) that each cause gives the number that decides.</caption>
<thead><tr><th scope="col">Cause</th><th scope="col">Drawn</th><th scope="col">Effect</th></tr></thead>
<tbody><#list c.contributions as k><tr><td>${k.cause}</td><td>${w.times(k.instances)}</td><td class="n">${w.effect(k.effect)}</td></tr></#list></tbody>
</table>
</details>
</#if>
</article>
</#list>
</section>
</#list>

<section>
<h2 id="measurement">How it was measured</h2>
<#if !sessions?has_content><p>${w.noSessions()}</p></#if>
<#list sessions as s>
<h3 id="${s.anchor}">Session ${s.id}</h3>
<dl>
<@row "Date" s.measured/>
<@row "Rig" s.rig/>
<@row "Place" s.place/>
<@row "Measuring chain" w.chain(s.chain)/>
<#if s.resolution != "" || s.stimuli?has_content><dt>${w.basis(s.sample)}</dt><dd>${w.sample(s.sample)}</dd>
<#if s.resolution != ""><dt>Bands</dt><dd>${s.resolution}<#if s.levelsIn != "">, levels in ${s.levelsIn}</#if></dd></#if>
<dt>Open ear</dt><dd>${w.openEar(s)}</dd>
<dt>Settings</dt><dd>${w.settings(s)}</dd></#if>
<#if s.stimuli?has_content><dt>Stimuli</dt><dd><ul><#list s.stimuli as t><li>${t.id}: ${t.text}<#if t.peak != "">, peak ${t.peak}</#if></li></#list></ul></dd></#if>
<dt>Uncertainty</dt><dd>${w.uncertainty(s.uncertainty)}</dd>
<dt>Files</dt><dd><code>${s.file}</code><#list s.dataFiles as f>, <code>${f}</code></#list></dd>
</dl>
<#if s.causes?has_content>
<table class="stack">
<caption>Causes of uncertainty (standard uncertainties, k = 1)</caption>
<thead><tr><th scope="col">Cause</th><th scope="col">Size</th><th scope="col">Shared by</th><th scope="col">Across bands</th></tr></thead>
<tbody><#list s.causes as k><tr><td>${k.name}</td><td data-name="Size">${w.sizes(k.sizes)}</td><td data-name="Shared by">${k.sharedBy}</td><td data-name="Across bands">${k.acrossBands}</td></tr></#list></tbody>
</table>
</#if>
</#list>
</section>

<section>
<h2 id="decision">How sure</h2>
<p>${w.howDecided()}</p>
<dl>
<#list ["pass", "fail", "marginal", "untested"] as word>
<dt><@verdict word/></dt><dd>${w.verdictMeans(word)}</dd>
</#list>
</dl>
<p>${w.promise(products)}</p>
<p>${w.howToReadU()}</p>
<h3 id="findings">What the data say of themselves</h3>
<#if findings?has_content>
<table class="stack">
<thead><tr><th scope="col">Check</th><th scope="col">Where</th><th scope="col">Finding</th><th scope="col">How it errs</th><th scope="col">What follows</th></tr></thead>
<tbody><#list findings as f><tr><td>${f.check}</td><td data-name="Where">${w.foundWhere(f)}</td><td>${f.text}${w.more(f)}</td><td data-name="How it errs">${w.errs(f.errs)}</td><td data-name="What follows">${w.consequence(f.consequence)}</td></tr></#list></tbody>
</table>
<#else>
<p>${w.noFindings()}</p>
</#if>
</section>

<section>
<h2 id="untested">What was not tested</h2>
<#list products as product>
<#assign untested = product.claims?filter(c -> c.verdict == "untested")>
<#if products?size gt 1><h3>${product.name}</h3></#if>
<#if untested?has_content>
<ul><#list untested as c><li><a href="#${c.anchor}">${c.number}. ${w.called(c)}</a>: ${w.reasons(c.reasons)}</li></#list></ul>
<#else>
<p>${w.capital(w.untestedOf(product))}.</p>
</#if>
</#list>
<p>${w.neverTested()}</p>
</section>

<section>
<h2 id="replies">What the maker replied</h2>
<dl>
<#list products as product>
<dt>${product.name}</dt><dd><#if product.asked != "">Asked ${product.asked}. </#if><#if product.reply.text != "">“${product.reply.text}” <span class="soft">(${product.reply.dated})</span><#else>No reply is on record.</#if>
<#list product.claims?filter(c -> c.reply.text != "") as c><#if c?is_first><ul></#if><li><a href="#${c.anchor}">${c.number}. ${w.called(c)}</a>: “${c.reply.text}” <span class="soft">(${c.reply.dated})</span></li><#if c?is_last></ul></#if></#list>
<#list product.claims?filter(c -> c.answer.kind == "edition" || c.answer.kind == "none") as c><#if c?is_first><ul></#if><li><a href="#${c.anchor}">${c.number}. ${w.called(c)}</a>: ${w.answer(product, c)}</li><#if c?is_last></ul></#if></#list></dd>
</#list>
</dl>
</section>

<section>
<h2 id="editions">The editions side by side</h2>
<p>The same data, held against what each edition says. <del>Words struck out</del> are gone since the edition before, <ins>underlined words</ins> are new.</p>
<#list products as product>
<h3>${product.name}</h3>
<#list product.topics as t>
<h4>${t.topic}</h4>
<table class="stack">
<thead><tr><th scope="col">Edition</th><th scope="col">Words</th><th scope="col">Limit</th><th scope="col">Measured</th><th scope="col">Verdict</th><th scope="col">Changed</th></tr></thead>
<tbody>
<#list t.steps as step><#assign c = product.claims[step.number - 1]>
<tr><td>${w.source(c)}<span class="soft under"><a href="#${c.anchor}">No. ${c.number}</a></span></td><td><#if step.changes?has_content>“<@changes step.changes/>”<#else>${w.words(c)}</#if></td><td data-name="Limit">${w.limit(c.limit)}</td><td data-name="Measured">${w.shortWhole(c.measured)}</td><td data-name="Verdict"><@verdict c.verdict/></td><td data-name="Changed"><#if step?is_first>–<#else>${w.changed(product.claims[t.steps[step?index - 1].number - 1], c)}</#if></td></tr>
</#list>
</tbody>
</table>
</#list>
<h4>Where the words come from</h4>
<table class="stack">
<thead><tr><th scope="col">Edition</th><th scope="col">Source</th><th scope="col">Dated</th><th scope="col">Speaks of</th><th scope="col">Kept</th></tr></thead>
<tbody><#list product.editions as e><tr><td>${e.id}</td><td data-name="Source">${e.source}<#if !e.mayBeQuoted> <span class="soft">(not to be quoted; in our words)</span></#if></td><td data-name="Dated">${e.dated}</td><td data-name="Speaks of">${e.conditions}</td><td data-name="Kept">${e.kept}</td></tr></#list></tbody>
</table>
</#list>
</section>

<section>
<h2 id="inputs">Data record</h2>
<p>Everything above follows from these files; the SHA-256 of each tells whether yours are the same.</p>
<table class="stack">
<thead><tr><th scope="col">File</th><th scope="col">SHA-256</th></tr></thead>
<tbody><#list inputs as i><tr><td><code>${i.file}</code></td><td><code>${i.sha256}</code></td></tr></#list></tbody>
</table>
</section>
</main>
<script>${script.text?no_esc}</script>
</body>
</html>
