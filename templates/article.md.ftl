<#ftl output_format="Markdown">
<#import "words.ftl" as w>
<#list products as product>
## ${product.name}

${w.inShort(product)} ${w.sure(product)}

<#if product.recommendation != "">
For whom: ${w.full(product.recommendation)} ${w.notForWhom()}

</#if>
Not tested: ${w.untestedOf(product)}. ${w.neverTested()}

| No. | Claim | Our rule | Condition | Measured | Basis | Difference | Verdict | Otherwise |
| --: | --- | --- | --- | --- | --- | --- | --- | --- |
<#list product.claims as c>
| ${c.number} | ${w.words(c)} (${w.source(c)}) | <#if c.rule != "">${w.rule(c)}<#else>none</#if> | ${w.condition(c.conditions)} | <#if c.measured.value != "">${w.shortWhole(c.measured)}<#else>n/m</#if> | ${w.sample(c.sample)} | ${w.difference(c)}<#if w.againstU(c) != ""> (${w.againstU(c)})</#if> | **${c.verdict}**<#if c.probability != "">, ${c.probability}</#if> | <#list c.otherwise as o>${o.name}: ${o.verdict}<#sep>, </#list> |
</#list>

± is U, the expanded uncertainty (k = 2); the difference is that from the number the sentence names; beside the verdict stands the probability that the claim, as we read it, is true; n/m: not measured. Of several ears or stimuli the least favourable is shown. Every verdict holds if the declared sizes of the uncertainty are right.

<#list product.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
<#list product.claims as c>
${c.number}. ${w.sentence(product, c)}<#list w.caveats(c) as note> Note: ${w.full(note)}</#list><#if c.reply.text != ""> The maker replied (${c.reply.dated}): ${c.reply.text}</#if>

<#list c.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
</#list>
<#if product.reply.text != "">
The maker replied (${product.reply.dated}): ${product.reply.text}

</#if>
<#if product.disclosure != "">
${product.disclosure}

</#if>
<#list product.cautions as caution>
- ${w.caution(caution)}
</#list>

</#list>
<#if shared?has_content>
## Side by side

| Topic |<#list products as product> ${product.name} |</#list>
| --- |<#list products as product> --- |</#list>
<#list shared as t>
| ${t.topic} |<#list products as product> <#list t.of?filter(e -> e.product == product?counter) as entry><#list w.claimsOf(entry) as c>${w.shownAs(c)}: **${c.verdict}**<#sep>;<br></#list><#else>nothing claimed</#list> |</#list>
</#list>

${w.whatDecides()}

<#list w.compared(shared) as line>
- ${line}
</#list>
</#if>
