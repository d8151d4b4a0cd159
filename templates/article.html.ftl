<#ftl output_format="HTML">
<#list products as product>
<table>
<thead><tr><th scope="col">No.</th><th scope="col">Claim</th><th scope="col">Our rule</th><th scope="col">Condition</th><th scope="col">Measured</th><th scope="col">Ears, insertions</th><th scope="col">Verdict</th><th scope="col">Otherwise</th></tr></thead>
<tbody>
<#list product.claims as c>
<tr><td>${c.number}</td><td><#if c.verbatim>“${c.words}”<#else>${c.words} (in our words)</#if> (${c.source}, ${c.dated})</td><td><#if c.rule != "">${c.rule}<#else>none</#if></td><td>${c.condition}</td><td><#if c.measured.value != "">${c.measured.value}<#if c.measured.interval != ""> (${c.measured.interval})</#if><#else>n/m</#if></td><td>${c.sample}</td><td><strong>${c.verdict}</strong><#if c.probability != "">, ${c.probability}</#if></td><td><#list c.otherwise as o>${o.name}: ${o.verdict}<#sep>, </#list></td></tr>
</#list>
</tbody>
</table>
<p>In brackets the 95 % interval; beside the verdict the probability that the claim, as we read it, is true; n/m: not measured. Of several ears or stimuli the least favourable is shown. Every verdict holds if the declared sizes of the uncertainty are right.</p>
<#list product.claims as c>
<p>${c.number}. ${c.sentence}<#list c.notes as note> Note: ${note}.</#list><#if c.reply.text != ""> The maker replied (${c.reply.dated}): ${c.reply.text}</#if></p>
<#list c.figures as f>
<figure><img src="${f.path}" alt="${f.alt}"></figure>
</#list>
</#list>
<#if product.disclosure != "">
<p>${product.disclosure}</p>
</#if>
<ul>
<#list product.cautions as caution>
<li>${caution}</li>
</#list>
</ul>
</#list>
