<#ftl output_format="Markdown">
<#list products as product>
| No. | Claim | Our rule | Condition | Measured | Ears, insertions | Verdict | Otherwise |
| --: | --- | --- | --- | --- | --- | --- | --- |
<#list product.claims as c>
| ${c.number} | <#if c.verbatim>“${c.words}”<#else>${c.words} (in our words)</#if> (${c.source}, ${c.dated}) | <#if c.rule != "">${c.rule}<#else>none</#if> | ${c.condition} | <#if c.measured.value != "">${c.measured.value}<#if c.measured.interval != ""> (${c.measured.interval})</#if><#else>n/m</#if> | ${c.sample} | **${c.verdict}**<#if c.probability != "">, ${c.probability}</#if> | <#list c.otherwise as o>${o.name}: ${o.verdict}<#sep>, </#list> |
</#list>

In brackets the 95 % interval; beside the verdict the probability that the claim, as we read it, is true; n/m: not measured. Of several ears or stimuli the least favourable is shown. Every verdict holds if the declared sizes of the uncertainty are right.

<#list product.claims as c>
${c.number}. ${c.sentence}<#list c.notes as note> Note: ${note}.</#list><#if c.reply.text != ""> The maker replied (${c.reply.dated}): ${c.reply.text}</#if>

<#list c.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
</#list>
<#if product.disclosure != "">
${product.disclosure}

</#if>
<#list product.cautions as caution>
- ${caution}
</#list>

</#list>
