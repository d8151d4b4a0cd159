<#ftl output_format="Markdown">
<#include "comparison-words.ftl">
# ${second} against ${first}

<#if dated != "">
${dated}

</#if>
${whatAShiftIs()}

<#if sameNames?has_content>
${alikeByName(sameNames)}

</#if>
<#list products as p>
## ${p.second}<#if p.first != p.second> against ${p.first}</#if>

| No. | Claim | First | Second | Verdict | Shift | U (k = 2) | By noise alone | Shift is |
| --: | --- | --: | --: | --- | --: | --: | --: | --- |
<#list p.claims as c>
| ${c.number} | ${c.id}<#if !c.sameWords> (words or rule differ)</#if> | ${before(c)} | ${after(c)} | ${c.first.verdict} → ${c.second.verdict} (${became(c.change)}) | <#if c.shift?has_content>${shifted(c.shift, c.unit)}<#else>–</#if> | <#if c.shift?has_content && c.shift.standardUncertainty?is_number>${expanded(c.shift, c.unit)}<#else>–</#if> | <#if c.shift?has_content>${chance(c.shift.chance)}</#if> | ${judged(c.shift, c.unit)}${decidedElse(c)}${othersMoved(c)} |
</#list>

<#list p.claims?filter(c -> isDetailed(c) || !c.sameWords || (c.shift?has_content && c.shift.nothingShared)) as c>
### ${c.number}. ${c.id}

<#if !c.sameWords>
- First: ${said(c.first)} (${c.first.edition}); ${c.first.rule}
- Second: ${said(c.second)} (${c.second.edition}); ${c.second.rule}
</#if>
<#if c.shift?has_content && c.shift.nothingShared>
- Decided at different bands (first${at(c.first)}, second${at(c.second)}): the uncertainties were added as if nothing were shared.
</#if>
<#if isDetailed(c)>
<#list c.cells as s>
- ${s.conditions}<#if s.units.first gt 0><#if s.conditions != "">, </#if>mean over the units</#if>: ${amount(s.first, c.unit)} → ${amount(s.second, c.unit)}, ${shifted(s, c.unit)} (${judged(s, c.unit)})
</#list>
</#if>

</#list>
<#if p.onlyFirst?has_content>
Only in the first: <#list p.onlyFirst as c>${c.id}<#sep>, </#list>.

</#if>
<#if p.onlySecond?has_content>
Only in the second: <#list p.onlySecond as c>${c.id}<#sep>, </#list>.

</#if>
<#else>
No product is in both.

</#list>
<#list cautions() as caution>
- ${caution}
</#list>
