<#ftl output_format="Markdown">
<#function verdictNow c><#return c.verdict + (c.value != "")?then(", " + c.value, "") + (c.uncertainty != "")?then("; u = " + c.uncertainty, "")></#function>
<#function share dose><#return dose?replace("<", "less than")></#function>
<#function inWords limit><#return limit?replace("≥", "at least")?replace("≤", "at most")></#function>
<#function many c what where><#return (c.chance != "")?then("", "At least ") + c.wearers + " " + what + " in all, " + c.insertions + " insertions " + where + (c.chance != "")?then("; decides in " + c.chance + " of cases if mean and scatter stay.", ": how many more decide, their scatter tells.")></#function>
<#function needs c><#return needed(c) + (c.sessions?has_content && (c.insertions gt 0 || c.advice == "other"))?then(" The claim names its sessions (" + c.sessions?join(", ") + "): name the new ones there.", "")></#function>
<#function firstOf c what one others><#return c.insertions + " insertions in each ear. One " + one + " tells nothing of other " + others + ": " + (c.shareNeeds > 0)?then("at least " + c.shareNeeds + " " + what + ", none outside the limit", "at least " + c.wearers + " " + what + ", and how many more, their scatter tells") + "; a sitting like this for each, under names of its own."></#function>
<#function needed c>
<#local share = (c.shareNeeds > 0)?then(" A share: at least " + c.shareNeeds + " of them, none outside.", "")>
<#switch c.advice>
<#case "insertions"><#return c.insertions + " insertions in each ear; decides in " + c.chance + " of sittings if the value stays." + share>
<#case "heads"><#return many(c, "heads", "in an ear of each")>
<#case "samples"><#return many(c, "samples", "of each")>
<#case "first"><#return c.insertions + " insertions in each ear; decides in " + c.chance + " of sittings if the value is the middle of the limit." + share>
<#case "first margin"><#return c.insertions + " insertions in each ear" + (c.figure != "")?then("; tells a value that lies " + c.figure + " or more from its limit in " + wanted + " of sittings", "") + "." + share>
<#case "first heads"><#return firstOf(c, "heads", "ear", "ears")>
<#case "first samples"><#return firstOf(c, "samples", "sample", "samples")>
<#case "complete"><#return c.insertions + " insertions in each ear, every band and two open-ear takes: " + c.reason?remove_ending(".") + "." + share>
<#case "smaller"><#return (c.chance != "")?then(most + " insertions would decide in " + c.chance + " of sittings only; a", "A") + " standard uncertainty of at most " + c.figure + " would decide, if the value stays.">
<#case "traces"><#return c.insertions + " traces with the product in place, put in anew for each" + (c.chance != "")?then("; decides in " + c.chance + " of cases if value and scatter stay", "") + ".">
<#case "fixture"><#return "Louder than anybody’s ear is to be exposed to: on a fixture, not on people.">
<#case "state"><#return "No further reading: state the uncertainty of the one there is.">
<#case "other"><#return "A figure, trace or other reading that no curve sheet holds: " + c.reason?remove_ending(".") + ".">
<#default><#return "Out of reach: " + c.reason?remove_ending(".") + ".">
</#switch>
</#function>
# What is left to measure

<#list products as p>
## ${p.name}

<#if p.decided == 0>No claim is decided. <#elseif p.decided == 1>1 claim is decided and needs nothing more. <#else>${p.decided} claims are decided and need nothing more. </#if><#if p.claims?has_content>These are open, at a confidence of ${p.confidence}:

| No. | Claim | Today | Would pass today | What it needs |
| --: | --- | --- | --- | --- |
<#list p.claims as c>
| ${c.number} | <#if c.verbatim>“${c.words}”<#else>${c.words}</#if> | ${verdictNow(c)} | ${inWords(c.wouldPass)} | ${needs(c)} |
</#list>
<#else>
Nothing is open.
</#if>

<#list p.unsaid as u>
**Before the audit:** readings of ${u.condition} ${u.values?join(", ")} will be there, and <#if u.claims?size == 1>claim ${u.claims[0]} says<#else>claims ${u.claims?join(", ")} say</#if> nothing of it. An audit refuses to guess which is meant. The plan reads <#if u.claims?size == 1>it<#else>them</#if> with ${u.value}: write `${u.condition}: "${u.value}"` under `assumed` of <#if u.claims?size == 1>that claim<#else>each</#if>.

</#list>
<#list p.sittings as s>
**In this order** (<#if s.ids?size gt 12>${s.ids?first} to ${s.ids?last}, ${s.ids?size} sittings<#else>${s.ids?join(", ")}</#if><#if s.another>; once for each further head or sample, under names of their own</#if>):

<#list s.steps as t>
${t?counter}. <#if t.what == "open">Open ear: <#else><#if t.fit != "">${t.fit}, </#if><#if t.first == t.last>insertion ${t.first}<#else>insertions ${t.first} to ${t.last}, each</#if>: </#if>${t.readings}
</#list>

${s.readings} readings<#if s.ids?size gt 1> in each sitting</#if>, ${s.minutes} min at ${seconds} s each. Open ear: ${s.open.readings} readings, ${s.open.minutes} min, at most ${s.open.loudest} dB(A) in the field: ${share(s.open.niosh)} of a day’s dose (NIOSH 98-126), ${share(s.open.upperAction)} of the upper action value (2003/10/EC). <#if s.openAtEveryLevel.loudest != s.open.loudest>Read at every level, up to ${s.openAtEveryLevel.loudest} dB(A), it would be ${share(s.openAtEveryLevel.niosh)} and ${share(s.openAtEveryLevel.upperAction)}: hence “open ear: scaled”. </#if>The other ear hears all: ${share(s.otherEar.niosh)} and ${share(s.otherEar.upperAction)} unless it is plugged.

<#if s.floor.claimed != "">
To see ${s.floor.claimed} of attenuation <#if s.floor.level != "">15 dB above the background of ${s.like}, ${s.floor.kind} must be ${s.floor.level} dB or louder<#else>15 dB above a typical background of 25 dB a third octave (common practice, no source: it was not read here), pink noise must be ${s.floor.typical} dB SPL or louder; read the open ear in quiet first</#if>.

</#if>
<#if s.sizes == "typical">
The uncertainty in the session file is the typical one of probe-tube work (common practice, no source): put your own in its place.

</#if>
</#list>
</#list>
<#list products as p>
<#if p.bench?has_content>
**Figures, traces and harmonics of ${p.name}:** ${p.bench?join(", ")}. Replace every FILL by what was read. <#if p.programmes.readings gt 0>The open ear hears each programme once, at up to ${p.programmes.loudest} dB(A): ${p.programmes.niosh} of a day’s dose (NIOSH 98-126), ${p.programmes.upperAction} of the upper action value (2003/10/EC) for ${seconds} s each; take the quietest that the claim allows.</#if>

</#if>
<#if p.panel?has_content>
**A panel for the rating of ${p.name}:** ${p.panel?join(", ")}. Hearing thresholds by the standard procedure in a qualified laboratory; readings with a probe tube are no substitute.

</#if>
</#list>
<#assign sittings = products?map(p -> p.sittings?size + p.bench?size + p.panel?size)?filter(n -> n gt 0)>
<#if sittings?has_content>
<#assign more = products?map(p -> p.claims?filter(c -> c.wearers gt 0)?size)?filter(n -> n gt 0)?has_content>
<#assign sessions = products?map(p -> p.claims?filter(c -> c.comparesSessions)?size)?filter(n -> n gt 0)?has_content>
## Then

Copy each `plan-….yaml` with its sheets (`.csv`) into `measurements/` and fill in the levels, in the order of the sheet; a band left empty counts as missing. Decide on the number of insertions now and keep to it. A new sitting is judged by itself and not averaged with earlier ones: `ellwand audit --session` with the names of the new sessions; judged together, a claim stays open as long as it is open in one of them. <#if sessions>A claim that compares sessions is judged from both: name both. </#if><#if more>Further heads and samples are judged with those measured so far, by an audit of all sessions. Claims that say nothing of ears or units are refused beside several of them: write `ears: each`, or `units: each`, under `assumed` of these. </#if>The chances hold for the deciding ear and band, if the declared sizes are right.

</#if>
## Cautions

- Probe tubes are placed by trained people, after a look into the ear; never alone, never in an ear with a complaint.
- Loud open-ear readings are an exposure: quiet sounds first, the loud last; stop at the first ringing or dullness. Start with the source turned down and the product in place. Levels are those in the field; at the eardrum they read 5 to 10 dB(A) higher, which the rules allow for. Levels in dB SPL are counted as dB(A).
- Impulses, and anything above 100 dB, are measured on a fixture, not on people.
- What comes of it is no rating: a rating needs the standard procedure and a qualified laboratory. For exposure at work, local law and a hearing professional decide.
