#include "core/paper/html_style.hpp"

namespace evenclaw {

namespace {

// Lengths in mm and pt: the same sheet is looked at on a phone and printed on A4. The one grey is
// dark enough to be read with poor eyes and after a bad copier (contrast 9.7 to 1 on white).
constexpr std::string_view style = R"css(
*{box-sizing:border-box}
html{background:#fff;color:#000;-webkit-text-size-adjust:100%}
body{margin:0 auto;padding:8mm 5mm;max-width:190mm;overflow-wrap:break-word;
font:11pt/1.35 B612,"Helvetica Neue",Helvetica,Arial,"Liberation Sans",sans-serif}
h1,h2,h3,h4,h5,p,ul,figure{margin:0;padding:0}
ul{list-style:none}
.quiet,.aside{color:#444;font-weight:normal}
header{display:grid;grid-template-columns:1fr auto;gap:0 6mm;align-items:end;
border-bottom:1mm solid #000;padding-bottom:3mm;margin-bottom:5mm}
.kind{font-size:12pt;grid-column:1}
h1{font-size:24pt;line-height:1.15;grid-column:1}
header figure{grid-column:2;grid-row:1/4}
dl{display:flex;flex-wrap:wrap;gap:0 7mm;margin:2mm 0 0;grid-column:1}
dl div{display:flex;gap:1.5mm}
dt{color:#444;flex:none}
dd{margin:0;font-weight:bold}
h2{font-size:16pt;line-height:1.2;border-top:.8mm solid #000;padding-top:2mm;margin:5.5mm 0 1.5mm}
header+h2,header+main>h2:first-child{border-top:0;padding-top:0;margin-top:0}
h3{font-size:14pt;line-height:1.2;margin:4mm 0 1mm}
.aside{font-size:12pt;margin-left:2mm}
p{margin:1.5mm 0}
.bullets li{position:relative;padding-left:6mm;margin:1.2mm 0}
.bullets li::before{content:"";position:absolute;left:.5mm;top:1.1mm;width:1.3mm;height:2.8mm;
background:#000;border-radius:50%;box-shadow:1.8mm 0 0 #000}
.notice{border:1.3mm solid #000;padding:3mm 4mm;margin:0 0 4mm}
.notice h2{border:0;padding:0;margin:0 0 1mm;font-size:20pt;letter-spacing:.04em}
.notice li{display:grid;grid-template-columns:auto 1fr;gap:0 5mm;align-items:baseline;
padding:1.5mm 0;border-top:.3mm solid #000;font-size:13pt}
.notice .label{font-size:22pt;line-height:1.1;font-weight:bold;min-width:17mm;max-width:60mm}
.notice .label.long{font-size:13pt}
.notice .only{grid-column:1/3}
.notice p{margin:0}
.notice .foot{font-size:12pt;border-top:.3mm solid #000;padding-top:1.5mm;margin-top:1mm}
.tasks li{display:grid;grid-template-columns:20mm 1fr;gap:0 2mm;padding:1.2mm 0;
border-bottom:.3mm solid #999;font-size:16pt;line-height:1.2}
.tasks .label{font-weight:bold;padding:.5mm 0}
.tasks .label.long{font-size:11pt}
.tasks p{margin:0}
.tasks div div{display:grid;grid-template-columns:6mm 1fr 36mm;gap:0 3mm;align-items:start;
padding:.5mm 0}
.tasks .box{width:6mm;height:6mm;border:.5mm solid #000}
.tasks .about{font-size:13pt}
.tasks .quiet{font-size:13pt}
.done{display:flex;align-items:flex-end;gap:1.5mm;height:6.5mm;font-size:10pt;color:#444}
.done i{flex:1;border-bottom:.3mm solid #000}
table{border-collapse:collapse;width:100%;margin:2mm 0}
caption{text-align:left;font-weight:bold;padding-bottom:1mm}
th,td{text-align:left;vertical-align:middle;padding:.9mm 4mm .9mm 0}
thead th{font-weight:normal;color:#444;border-bottom:.5mm solid #000}
tbody tr{border-bottom:.3mm solid #999}
tbody th{font-size:14pt;white-space:nowrap}
tbody th.long{font-size:11pt;white-space:normal;min-width:30mm;max-width:45mm}
.label{overflow-wrap:anywhere}
.words tbody th{font-size:11pt;white-space:normal;min-width:42mm}
.words td,.words th{vertical-align:baseline}
.end{text-align:right}
td.end{white-space:nowrap}
figcaption{color:#444;font-size:10pt}
figure svg{display:block;max-width:100%;height:auto}
figure.plain{margin:2mm 0}
.card{display:grid;grid-template-columns:32mm 1fr 27mm;gap:0 3mm;align-items:start;
border-top:.3mm solid #000;padding:1mm 0 1.2mm;margin:0;line-height:1.25}
.card.bare{grid-template-columns:32mm 1fr}
.card .label{font-size:18pt;line-height:1.1;font-weight:bold;margin:0}
.card .label.long{font-size:11pt}
.card .head{margin:0}
.card dl{display:block;grid-column:2;margin:0;padding-top:.8mm}
.card dl div{display:block;margin:0 0 .3mm}
.card dt,.card dd{display:inline;font-weight:normal;color:#000}
.card dt:not(:empty)::after{content:". "}
.writing article{border:.5mm solid #000;padding:1.5mm 2.5mm 2mm;margin:0 0 3mm}
.writing .top{display:grid;grid-template-columns:auto 1fr;gap:0 5mm;align-items:end}
.writing .label{font-size:24pt;line-height:1.1;min-width:24mm;max-width:60mm;margin:0}
.writing .label.long{font-size:14pt}
.writing .label.blank{font-size:11pt;min-width:62mm;height:11mm}
.writing .about{font-size:12pt;line-height:1.2;margin:0}
.writing .about+.blanks{grid-column:1/3}
.blanks{display:flex;gap:4mm}
.blank{display:flex;flex:1;align-items:flex-end;gap:1.5mm;height:9mm;font-size:11pt}
.blank i{flex:1;border-bottom:.4mm solid #000}
.writing table{table-layout:fixed;margin:1mm 0 0}
.writing thead th{font-size:9pt;line-height:1.1;color:#000;padding:0 1mm .3mm;
vertical-align:bottom}
.writing tbody th{font-size:15pt;padding:0 1mm}
.writing tbody tr{height:10mm}
.writing tbody td{border-left:.3mm solid #999;padding:0 1mm}
.writing .row{width:11mm}
.writing .tick{width:17mm}
.writing .box{display:block;width:6mm;height:6mm;border:.5mm solid #000;margin:0 auto}
.note{font-size:10pt;color:#444}
footer{margin-top:8mm;border-top:.3mm solid #999;padding-top:1.5mm;font-size:9pt;color:#444}
@media screen and (max-width:600px){
body{padding:4mm}
h1{font-size:20pt}
.tasks div div{grid-template-columns:6mm 1fr}
.done{grid-column:2}
.card,.card.bare{grid-template-columns:1fr 27mm}
.card dl{grid-column:1/3;grid-row:2}
.tasks li{grid-template-columns:1fr}
tbody th{font-size:12pt}
tbody th.long,.words tbody th{font-size:12pt;white-space:normal;min-width:0}
th,td{padding-right:2mm}
.notice li{grid-template-columns:1fr}
.notice .only{grid-column:1}
}
@media print{
body{padding:0;max-width:none}
.page{break-before:page;margin-top:0}
h2,h3,thead,.by{break-after:avoid}
.note{break-before:avoid;break-inside:avoid}
thead,.by{break-inside:avoid}
.todo{display:table;width:100%}
.by{display:table-header-group}
.tasks{display:table-row-group}
tbody tr:first-child,tbody tr:nth-last-child(2){break-after:avoid}
.notice.short,.notice li,.tasks li,.card,.writing article,tr,figure,.bullets li{break-inside:avoid}
p,li{orphans:2;widows:2}
footer{display:none}
}
)css";

}  // namespace

std::string_view html_style() {
  return style;
}

}  // namespace evenclaw
