<#function signed x digits><#local s = x?string["0." + ""?left_pad(digits, "0")]><#return s?replace("-", "−")></#function>
<#function decimals x unit><#if unit?starts_with("dB")><#return 1></#if><#local a = x?abs><#return (a >= 100)?then(0, (a >= 10)?then(1, (a >= 1)?then(2, 3)))></#function>
<#function amount x unit><#if !(x?is_number)><#return "–"></#if><#local d = decimals(x, unit)><#local t = (d == 0)?then(x?string["0"]?replace("-", "−"), signed(x, d))><#return (unit == "")?then(t, t + " " + unit)></#function>
<#-- As many decimals as the uncertainty calls for. -->
<#function fine x u unit><#if !unit?starts_with("dB") || !(u?is_number) || 2 * u lt 0.0005 || 2 * u gte 0.2><#return amount(x, unit)></#if><#return signed(x, (2 * u gte 0.02)?then(2, 3)) + " " + unit></#function>
<#-- Two levels differ by decibels, whatever they refer to. -->
<#function difference unit><#return unit?starts_with("dB")?then("dB", unit)></#function>
<#function shifted s unit><#local t = fine(s.value, s.standardUncertainty, difference(unit))><#return (s.value > 0)?then("+" + t, t)></#function>
<#function expanded s unit><#return fine(2 * s.standardUncertainty, s.standardUncertainty, difference(unit))></#function>
<#function chance p><#if !(p?is_number)><#return ""></#if><#if p < 0.001><#return "less than 0.001"></#if><#return p?string["0.000"]></#function>
<#function hertz hz><#return (hz gte 1000)?then((hz / 1000)?c + " kHz", hz?c + " Hz")></#function>
<#function at side><#if side.hz?is_number><#return " at " + hertz(side.hz)></#if><#return ""></#function>
<#function became change><#return {"same": "as before", "better": "better", "worse": "worse"}[change]></#function>
<#function unitsOf u><#if u.same><#return "the same " + u.first + " units"></#if><#local t = u.first + " and " + u.second><#return (u.shared == 0)?then(t + " other units", t + " units, " + u.shared + " of them in both")></#function>
<#function judged s unit>
  <#if !(s?has_content)><#return "no cell is in both"></#if>
  <#if !(s.standardUncertainty?is_number)><#return "nothing tells the spread"></#if>
  <#local words = s.moreThanNoise?then("more than noise", "not more than noise")>
  <#if s.within?is_number><#local words = words + (s.equivalent?then("; the same within the margin", "; not shown to be the same within the margin"))></#if>
  <#if s.units.first gt 0>
    <#local words = words + "; mean over " + unitsOf(s.units) + ", " + fine(s.first, s.standardUncertainty, unit) + " → " + fine(s.second, s.standardUncertainty, unit)>
  </#if>
  <#return words>
</#function>
<#function isOne c><#return c.shift?has_content && c.shift.units.first == 0></#function>
<#-- The values of the cell that decides the second, so that the shift is their difference. -->
<#function before c><#return isOne(c)?then(amount(c.shift.first, c.unit), amount(c.first.value, c.first.unit))></#function>
<#function decidedElse c><#if !isOne(c)><#return ""></#if><#local decided = amount(c.first.value, c.first.unit)><#return (decided == before(c))?then("", "; the first was decided by another, " + decided)></#function>
<#function after c><#return isOne(c)?then(amount(c.shift.second, c.unit), amount(c.second.value, c.unit))></#function>
<#function movedCells c><#return c.cells?filter(s -> s.moreThanNoise)></#function>
<#function othersMoved c><#return (c.shift?has_content && !c.shift.moreThanNoise && movedCells(c)?size gt 0)?then("; elsewhere more than noise, see below", "")></#function>
<#function isDetailed c><#return c.cells?size gt 1 && (movedCells(c)?size gt 0 || margin != "")></#function>
<#function said side><#return side.verbatim?then("“" + side.words + "”", side.words)></#function>
<#function alikeByName names><#return "A sitting of the same name is in both audits (" + names?join(", ") + "), and no sheet of measurements. By its name it is taken for one sitting: what it shares, its calibration and its open ear, is left out of the uncertainty. If those were two sittings, give one of them another name; the uncertainty then grows."></#function>
<#function whatAShiftIs><#return "A shift is the second value less the first. Its uncertainty is that of the difference: what both audits share (the sitting's calibration, an insertion, the open ear) moves both alike and is left out." + (margin == "")?then("", " Two values count as the same within " + margin + " where both one-sided tests say so.")></#function>
<#-- What must be said wherever protection is spoken of; the counts stand in the audits. -->
<#function cautions><#return [
  "The numbers describe the ears and the samples that were measured; how many ears and insertions, and what of impulse noise, each of the two audits says. Other ears will differ.",
  "This is not a rating. A rating needs the standard procedure and a qualified laboratory.",
  "For exposure to noise at work, local law and a hearing professional decide. Do not choose protective equipment by this comparison."]></#function>
