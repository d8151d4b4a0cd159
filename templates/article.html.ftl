<#ftl output_format="HTML">
<#import "words.ftl" as w>
<#list products as product>
<section>
<h2>${product.name}</h2>
<p>${w.inShort(product)} ${w.sure(product)}</p>
<#if product.recommendation != "">
<p>For whom: ${w.full(product.recommendation)} ${w.notForWhom()}</p>
</#if>
<p>Not tested: ${w.untestedOf(product)}. ${w.neverTested()}</p>
<table>
<thead><tr><th scope="col">No.</th><th scope="col">Claim</th><th scope="col">Our rule</th><th scope="col">Condition</th><th scope="col">Measured</th><th scope="col">Basis</th><th scope="col">Difference</th><th scope="col">Verdict</th><th scope="col">Otherwise</th></tr></thead>
<tbody>
<#list product.claims as c>
<tr><td>${c.number}</td><td>${w.words(c)} (${w.source(c)})</td><td><#if c.rule != "">${w.rule(c)}<#else>none</#if></td><td>${w.condition(c.conditions)}</td><td><#if c.measured.value != "">${w.shortWhole(c.measured)}<#else>n/m</#if></td><td>${w.sample(c.sample)}</td><td>${w.difference(c)}<#if w.againstU(c) != ""> (${w.againstU(c)})</#if></td><td><strong>${c.verdict}</strong><#if c.probability != "">, ${c.probability}</#if></td><td><#list c.otherwise as o>${o.name}: ${o.verdict}<#sep>, </#list></td></tr>
</#list>
</tbody>
</table>
<p>± is U, the expanded uncertainty (k = 2); the difference is that from the number the sentence names; beside the verdict stands the probability that the claim, as we read it, is true; n/m: not measured. Of several ears or stimuli the least favourable is shown. Every verdict holds if the declared sizes of the uncertainty are right.</p>
<#list product.figures as f>
<figure><img src="${f.path}" alt="${f.alt}"></figure>
</#list>
<#list product.claims as c>
<p>${c.number}. ${w.sentence(product, c)}<#list w.caveats(c) as note> Note: ${w.full(note)}</#list><#if c.reply.text != ""> The maker replied (${c.reply.dated}): ${c.reply.text}</#if></p>
<#list c.figures as f>
<figure><img src="${f.path}" alt="${f.alt}"></figure>
</#list>
</#list>
<#if product.reply.text != "">
<p>The maker replied (${product.reply.dated}): ${product.reply.text}</p>
</#if>
<#if product.disclosure != "">
<p>${product.disclosure}</p>
</#if>
<ul>
<#list product.cautions as caution>
<li>${w.caution(caution)}</li>
</#list>
</ul>
</section>
</#list>
<#if shared?has_content>
<section>
<h2>Side by side</h2>
<table>
<thead><tr><th scope="col">Topic</th><#list products as product><th scope="col">${product.name}</th></#list></tr></thead>
<tbody>
<#list shared as t>
<tr><th scope="row">${t.topic}</th><#list products as product><td><#list t.of?filter(e -> e.product == product?counter) as entry><#list w.claimsOf(entry) as c>${w.shownAs(c)}: <strong>${c.verdict}</strong><#sep><br></#list><#else>nothing claimed</#list></td></#list></tr>
</#list>
</tbody>
</table>
<p>${w.whatDecides()}</p>
<ul><#list w.compared(shared) as line><li>${line}</li></#list></ul>
</section>
</#if>
