<#ftl output_format="Markdown">
<#import "words.ftl" as w>
<#include "letter-questions.ftl">
<#macro quoted s><#if s.verbatim>“${s.words}” (<#else>${s.words} (in our words; </#if>${s.source}, ${s.editionDated})</#macro>
<#macro answers a><#list a.editions as e><@quoted e/><#sep>; </#list><#if a.reply.text != ""><#if a.editions?has_content>; </#if>“${a.reply.text}” (${a.reply.dated})</#if></#macro>
<#if maker != "">
To ${maker}

</#if>
<#if dated != "">
${dated}

</#if>
# Questions about ${product}

Dear Sir or Madam,

we are comparing what is published about ${product} with measurements of our own, and will publish what we find. The sentences below leave open things on which the result depends. Rather than guess in silence, we ask you. Until we hear from you we assume what stands beside each question, and we print that we assumed it.

<#if answerBy != "">
We should be grateful for your answer by ${answerBy}. <#else>We should be grateful for your answer. </#if>Please answer by number and letter; “as assumed” is an answer, and so is “we do not know”.

<#if reply.text != "">
Thank you for your answer of ${reply.dated}: “${reply.text}” What it did not settle is asked here.

<#elseif since?has_content>
We first wrote to you on ${asked}. Since then we have <#list since as e>${e.source} (${e.dated})<#sep><#if e?counter == since?size - 1> and <#else>, </#if></#list>, with thanks. What that did not settle is asked here.

<#elseif asked != "">
We first wrote to you on ${asked} and have had no answer so far.

</#if>
<#if common?has_content>
## What several sentences leave open

<#list common as q>
**${q.letter}.** ${question(q.key)} Meanwhile: <#list q.meanwhile as m>${meaning(m)} (<#if m.sentences?size == 1>sentence<#else>sentences</#if> ${numbers(m.sentences)})<#sep>; </#list>.

</#list>
</#if>
## Sentence by sentence

<#list sentences as s>
**${s.number}.** <@quoted s/>

<#if s.asked != "">
- We asked about this on ${s.asked} and have had no answer so far.
</#if>
<#list s.points as p>
- <#if p.word != "">You write “${p.as}”: ${wordQuestions[p.word]}<#else>${question(p.key)}</#if><#if p.meanwhile?has_content> Meanwhile: ${meanwhile(p.meanwhile)}.</#if>
</#list>
<#if s.common?has_content>
- ${s.points?has_content?then("Also", "Open")}: <#if s.common?size == 1>question<#else>questions</#if> ${numbers(s.common)}.
</#if>
<#if s.rule == "">
- On which measurement does the sentence rest, and by which method was it made? We have no means to test it (${s.untestedBecause}).
<#else>
- We read it as: ${s.rule}.
</#if>
<#if s.result.verdict != "" && s.rule != "">
- What we found: <#if s.result.measured.value != "">${w.measured(s.result.measured)}<#if w.sample(s.result.sample) != "">, ${w.sample(s.result.sample)}</#if>; </#if>**${s.result.verdict}**<#if s.result.reason != "">: ${s.result.reason}</#if>.
</#if>

</#list>
<#if differing?has_content>
## Sentences that differ

<#list differing as d>
- Sentences ${numbers(d.sentences)} speak of the same thing (${d.topic}). Which of them holds today?
</#list>

</#if>
<#if answered?has_content>
## Answered already, with thanks

<#list answered as a>
- <@quoted a/>: <@answers a/>
</#list>

</#if>
<#if clear?has_content>
## Clear as they stand

<#list clear as c>
- <@quoted c/>
</#list>

</#if>
## What becomes of your answer

A figure with its conditions, published or sent to us, is treated as one more edition of the sentence and judged beside the earlier one; any other answer is printed beside the claim as it came. If you do not wish to be quoted, tell us, and we put it in our own words.

<#if withResults>
The results above are “pass” (our readings support the sentence as we read it), “fail” (they do not), “marginal” (they do not decide) or “untested”. They hold if the sizes of the uncertainty that we declared are right. If you see a mistake in our readings or in our understanding, please say so before we publish.

<#list cautions as caution>
- ${w.caution(caution)}
</#list>

</#if>
Yours faithfully,

<#if from != "">${from}<#else>(name and address)</#if>
