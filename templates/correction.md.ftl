<#ftl output_format="Markdown">
<#include "comparison-words.ftl">
<#assign changed = []>
<#list products as p><#list p.claims as c><#if c.change != "same"><#assign changed = changed + [{"p": p, "c": c}]></#if></#list></#list>
**${sideBySide?then("Note", "Correction")}<#if dated != ""> of ${dated}</#if>.** <#if changed?size == 0>No verdict changed<#elseif changed?size == 1>One verdict changed<#else>${changed?size} verdicts changed</#if> between ${first} and ${second}.

<#if sameNames?has_content>
${alikeByName(sameNames)}

</#if>
<#list changed as x>
- ${x.p.second}<#if x.c.second.words != "">, ${said(x.c.second)}<#else>, ${x.c.id}</#if>: <#if sideBySide>*${x.c.first.verdict}*<#else>an earlier version of this article said *${x.c.first.verdict}*</#if><#if x.c.first.value?is_number> (${amount(x.c.first.value, x.c.first.unit)})</#if><#if sideBySide> in ${first}, *${x.c.second.verdict}*<#else>; it is *${x.c.second.verdict}*</#if><#if x.c.second.value?is_number> (${amount(x.c.second.value, x.c.unit)})</#if><#if sideBySide> in ${second}</#if>.<#if !x.c.sameWords> The maker's words, or how we read them, are not the same in both.</#if>
</#list>
<#assign figures = []>
<#list products as p><#list p.claims as c><#if c.change == "same" && c.shift?has_content && c.shift.moreThanNoise><#assign figures = figures + [{"p": p, "c": c}]></#if></#list></#list>
<#if figures?has_content>
<#if changed?has_content>

</#if>
Figures that moved by more than noise, with the verdict as before:

<#list figures as x>
- ${x.p.second}<#if x.c.second.words != "">, ${said(x.c.second)}<#else>, ${x.c.id}</#if>: <#if x.c.first.value?is_number>${amount(x.c.first.value, x.c.first.unit)}<#else>–</#if> <#if sideBySide>in ${first}<#else>before</#if>, ${amount(x.c.second.value, x.c.unit)} <#if sideBySide>in ${second}<#else>now</#if>.
</#list>
</#if>

<#if sideBySide>This<#else>As before, this</#if> is not a rating; for exposure to noise at work, local law and a hearing professional decide.
