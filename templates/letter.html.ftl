<#ftl output_format="HTML">
<#import "words.ftl" as w>
<#include "letter-questions.ftl">
<#macro quoted s><#if s.verbatim>“${s.words}”<#else>${s.words}</#if> <span class="soft">(<#if !s.verbatim>in our words; </#if>${s.source}, ${s.editionDated})</span></#macro>
<#macro answers a><#list a.editions as e><@quoted e/><#sep>; </#list><#if a.reply.text != ""><#if a.editions?has_content>; </#if>“${a.reply.text}” (${a.reply.dated})</#if></#macro>
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Questions about ${product}</title>
<style>
body{margin:2rem auto;max-width:42rem;padding:0 1.25rem;background:#fff;color:#222;font:1.05rem/1.5 Charter,"Bitstream Charter","Iowan Old Style",Georgia,"DejaVu Serif",serif}
h1{font-size:1.5rem;font-weight:600;line-height:1.25;margin:1.5rem 0 1rem}
h2{font-size:1.1rem;font-weight:600;margin:1.8rem 0 .5rem}
p,li{overflow-wrap:break-word}
ul{margin:.25rem 0 .9rem;padding-left:1.2rem}
dl{display:grid;grid-template-columns:1.6rem 1fr;gap:.35rem .4rem;margin:.5rem 0}
dt{font-weight:600}
dd{margin:0;min-width:0}
.sentence{margin:1rem 0 .2rem;break-after:avoid}
.soft{color:#555}
.sign{margin-top:3rem}
@page{size:A4;margin:22mm 20mm}
@media print{body{margin:0;padding:0;max-width:none;font-size:10.5pt;line-height:1.4}h2{break-after:avoid}li{break-inside:avoid}}
</style>
</head>
<body>
<#if maker != ""><p>To ${maker}</p></#if>
<#if dated != ""><p>${dated}</p></#if>
<h1>Questions about ${product}</h1>
<p>Dear Sir or Madam,</p>
<p>we are comparing what is published about ${product} with measurements of our own, and will publish what we find. The sentences below leave open things on which the result depends. Rather than guess in silence, we ask you. Until we hear from you we assume what stands beside each question, and we print that we assumed it.</p>
<p><#if answerBy != "">We should be grateful for your answer by ${answerBy}.<#else>We should be grateful for your answer.</#if> Please answer by number and letter; “as assumed” is an answer, and so is “we do not know”.</p>
<#if reply.text != "">
<p>Thank you for your answer of ${reply.dated}: “${reply.text}” What it did not settle is asked here.</p>
<#elseif since?has_content>
<p>We first wrote to you on ${asked}. Since then we have <#list since as e>${e.source} (${e.dated})<#sep><#if e?counter == since?size - 1> and <#else>, </#if></#list>, with thanks. What that did not settle is asked here.</p>
<#elseif asked != "">
<p>We first wrote to you on ${asked} and have had no answer so far.</p>
</#if>
<#if common?has_content>
<h2>What several sentences leave open</h2>
<dl>
<#list common as q>
<dt>${q.letter}</dt><dd>${question(q.key)} Meanwhile: <#list q.meanwhile as m>${meaning(m)} <span class="soft">(<#if m.sentences?size == 1>sentence<#else>sentences</#if> ${numbers(m.sentences)})</span><#sep>; </#list>.</dd>
</#list>
</dl>
</#if>
<h2>Sentence by sentence</h2>
<#list sentences as s>
<p class="sentence"><strong>${s.number}.</strong> <@quoted s/></p>
<ul>
<#if s.asked != "">
<li>We asked about this on ${s.asked} and have had no answer so far.</li>
</#if>
<#list s.points as p>
<li><#if p.word != "">You write “${p.as}”: ${wordQuestions[p.word]}<#else>${question(p.key)}</#if><#if p.meanwhile?has_content> Meanwhile: ${meanwhile(p.meanwhile)}.</#if></li>
</#list>
<#if s.common?has_content>
<li>${s.points?has_content?then("Also", "Open")}: <#if s.common?size == 1>question<#else>questions</#if> ${numbers(s.common)}.</li>
</#if>
<#if s.rule == "">
<li>On which measurement does the sentence rest, and by which method was it made? We have no means to test it (${s.untestedBecause}).</li>
<#else>
<li class="soft">We read it as: ${s.rule}.</li>
</#if>
<#if s.result.verdict != "" && s.rule != "">
<li>What we found: <#if s.result.measured.value != "">${w.measured(s.result.measured)}<#if w.sample(s.result.sample) != "">, ${w.sample(s.result.sample)}</#if>; </#if><strong>${s.result.verdict}</strong><#if s.result.reason != "">: ${s.result.reason}</#if>.</li>
</#if>
</ul>
</#list>
<#if differing?has_content>
<h2>Sentences that differ</h2>
<ul>
<#list differing as d>
<li>Sentences ${numbers(d.sentences)} speak of the same thing (${d.topic}). Which of them holds today?</li>
</#list>
</ul>
</#if>
<#if answered?has_content>
<h2>Answered already, with thanks</h2>
<ul>
<#list answered as a>
<li><@quoted a/>: <@answers a/></li>
</#list>
</ul>
</#if>
<#if clear?has_content>
<h2>Clear as they stand</h2>
<ul>
<#list clear as c>
<li><@quoted c/></li>
</#list>
</ul>
</#if>
<h2>What becomes of your answer</h2>
<p>A figure with its conditions, published or sent to us, is treated as one more edition of the sentence and judged beside the earlier one; any other answer is printed beside the claim as it came. If you do not wish to be quoted, tell us, and we put it in our own words.</p>
<#if withResults>
<p>The results above are “pass” (our readings support the sentence as we read it), “fail” (they do not), “marginal” (they do not decide) or “untested”. They hold if the sizes of the uncertainty that we declared are right. If you see a mistake in our readings or in our understanding, please say so before we publish.</p>
<ul>
<#list cautions as caution>
<li>${w.caution(caution)}</li>
</#list>
</ul>
</#if>
<p class="sign">Yours faithfully,</p>
<p><#if from != "">${from}<#else>(name and address)</#if></p>
</body>
</html>
