<#ftl output_format="XML">
<#-- One figure. Colours and shapes are presentation attributes, so that a page may restyle them by class. -->
<#assign colours = ["#0072B2", "#D55E00", "#8A4F7D", "#00736B", "#3F3F3F", "#A66F00"]>
<#assign dashes = ["", "9 4", "2 4", "12 4 2 4", "5 3"]>
<#assign sans = "Helvetica, Arial, DejaVu Sans, sans-serif">
<#macro mark shape x y colour>
<#switch shape % 4>
<#case 0><circle cx="${x}" cy="${y}" r="3.4" fill="${colour}"/><#break>
<#case 1><rect x="-3.1" y="-3.1" width="6.2" height="6.2" transform="translate(${x} ${y})" class="e-paper" fill="#ffffff" stroke="${colour}" stroke-width="1.6"/><#break>
<#case 2><path d="M0 -4.4 L4.2 3.2 L-4.2 3.2 Z" transform="translate(${x} ${y})" fill="${colour}"/><#break>
<#default><path d="M0 -4.4 L4.4 0 L0 4.4 L-4.4 0 Z" transform="translate(${x} ${y})" class="e-paper" fill="#ffffff" stroke="${colour}" stroke-width="1.6"/>
</#switch>
</#macro>
<#macro claimedLabel c>
<rect class="e-claimed e-swatch" x="${figure.plot.left}" y="${c.labelAt?number - 10}" width="18" height="11" fill="#e9e4d6" stroke="#2b2f33" stroke-width="0.8" stroke-dasharray="1.5 2"/>
<text class="e-ink" x="${figure.plot.left?number + 25}" y="${c.labelAt}" fill="#2b2f33">${c.label}</text>
</#macro>
<svg xmlns="http://www.w3.org/2000/svg" width="${figure.width}" height="${figure.height}" viewBox="0 0 ${figure.width} ${figure.height}" role="img" aria-labelledby="${figure.id}-title ${figure.id}-desc" font-family="${sans}" font-size="12.5">
<title id="${figure.id}-title">${figure.title}</title>
<desc id="${figure.id}-desc">${figure.alt}</desc>
<#assign p = figure.plot>
<defs><clipPath id="${figure.id}-plot"><rect x="${p.left}" y="${p.top}" width="${p.width}" height="${p.height}"/></clipPath></defs>
<rect class="e-paper" width="${figure.width}" height="${figure.height}" fill="#ffffff"/>
<#if figure.kind == "curve">
<#list figure.claimed as c>
<rect class="e-claimed" x="${p.left}" y="${c.from}" width="${p.width}" height="${c.size}" fill="#e9e4d6" clip-path="url(#${figure.id}-plot)"/>
</#list>
<g class="e-grid" stroke="#d3d5d6" stroke-width="0.7">
<#list figure.xTicks as t><line x1="${t.at}" y1="${p.top}" x2="${t.at}" y2="${p.bottom}"/></#list>
<#list figure.yTicks as t><line x1="${p.left}" y1="${t.at}" x2="${p.right}" y2="${t.at}"/></#list>
</g>
<g clip-path="url(#${figure.id}-plot)">
<#list figure.claimed as c>
<g class="e-ink" stroke="#2b2f33" stroke-width="1.1" stroke-dasharray="1.5 3"><#if c.hasFrom><line x1="${p.left}" y1="${c.from}" x2="${p.right}" y2="${c.from}"/></#if><#if c.hasTo><line x1="${p.left}" y1="${c.to}" x2="${p.right}" y2="${c.to}"/></#if></g>
</#list>
<#list figure.series as s>
<#assign colour = colours[s.number % colours?size]>
<g class="e-series-${s.number % colours?size}">
<#list s.areas as area><polygon points="${area}" fill="${colour}" fill-opacity="0.15"/></#list>
<#list s.thin as line><polyline points="${line}" fill="none" stroke="${colour}" stroke-width="0.8" stroke-opacity="0.6"/></#list>
<#list s.lines as line><polyline points="${line}" fill="none" stroke="${colour}" stroke-width="2.1" stroke-linejoin="round"<#if dashes[s.number % dashes?size] != ""> stroke-dasharray="${dashes[s.number % dashes?size]}"</#if>/></#list>
<#list s.arrows as a><path d="M${a.x} ${a.y} L${a.x} ${a.tip}" fill="none" stroke="${colour}" stroke-width="1.6"/><polyline points="-3.5,0 0,0 3.5,0" transform="translate(${a.x} ${a.barb})" fill="none" stroke="${colour}" stroke-width="1.6"/></#list>
<#list s.markers as m><@mark shape=s.number x=m.x y=m.y colour=colour/></#list>
</g>
</#list>
</g>
<#list figure.claimed as c>
<@claimedLabel c/>
</#list>
<#list figure.series as s>
<#assign colour = colours[s.number % colours?size]>
<g class="e-series-${s.number % colours?size}"><@mark shape=s.number x=(s.nameX?number - 10) y=s.nameY colour=colour/><text class="e-ink" x="${s.nameX}" y="${s.nameY}" dy="4" fill="#2b2f33">${s.name}</text></g>
</#list>
<#else>
<#list figure.claimed as c>
<rect class="e-claimed" x="${c.from}" y="${p.top}" width="${c.size}" height="${p.height}" fill="#e9e4d6"/>
</#list>
<g class="e-grid" stroke="#d3d5d6" stroke-width="0.7">
<#list figure.xTicks as t><line x1="${t.at}" y1="${p.top}" x2="${t.at}" y2="${p.bottom}"/></#list>
</g>
<#list figure.claimed as c>
<g class="e-ink" stroke="#2b2f33" stroke-width="1.1" stroke-dasharray="1.5 3"><#if c.hasFrom><line x1="${c.from}" y1="${p.top}" x2="${c.from}" y2="${p.bottom}"/></#if><#if c.hasTo><line x1="${c.to}" y1="${p.top}" x2="${c.to}" y2="${p.bottom}"/></#if></g>
<@claimedLabel c/>
</#list>
<#list figure.rows as r>
<#assign colour = colours[r.number % colours?size]>
<text class="e-ink" x="${p.left?number - 12}" y="${r.y}" dy="4" text-anchor="end" fill="#2b2f33">${r.name}</text>
<g class="e-series-${r.number % colours?size}"><#if r.hasBar><line x1="${r.from}" y1="${r.y}" x2="${r.to}" y2="${r.y}" stroke="${colour}" stroke-width="2"/><line x1="${r.from}" y1="-5" x2="${r.from}" y2="5" transform="translate(0 ${r.y})" stroke="${colour}" stroke-width="2"/><line x1="${r.to}" y1="-5" x2="${r.to}" y2="5" transform="translate(0 ${r.y})" stroke="${colour}" stroke-width="2"/></#if><@mark shape=r.number x=r.x y=r.y colour=colour/></g>
</#list>
</#if>
<rect class="e-ink" x="${p.left}" y="${p.top}" width="${p.width}" height="${p.height}" fill="none" stroke="#2b2f33" stroke-width="1"/>
<g class="e-ink" fill="#2b2f33">
<#list figure.xTicks as t><text x="${t.at}" y="${p.bottom}" dy="18" text-anchor="middle">${t.label}</text></#list>
<#list figure.yTicks as t><text x="${p.left?number - 8}" y="${t.at}" dy="4" text-anchor="end">${t.label}</text></#list>
<text x="${p.left?number + p.width?number / 2}" y="${p.bottom}" dy="39" text-anchor="middle">${figure.xLabel}</text>
<#if figure.yLabel != ""><text transform="translate(18 ${p.top?number + p.height?number / 2}) rotate(-90)" text-anchor="middle">${figure.yLabel}</text></#if>
<#list figure.legend as line><text x="<#if figure.kind == "curve">${p.left}<#else>12</#if>" y="${p.bottom?number + 60 + 16 * line?index}" font-size="11.5">${line}</text></#list>
</g>
</svg>
