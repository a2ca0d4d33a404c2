#include "addin/generate/html_style.hpp"

namespace undercroft::addin {

// clang-format off
const char* const page_style = R"style(
:root { --paper: #ffffff; --text: #1c2b30; --head: #22424a; --rule: #c3d0d3; --tint: #f1f5f5; --bar: #e6eef0; --bad: #7d1410; --badtint: #fdf6f4; --link: #135c80; }
@media (prefers-color-scheme: dark) {
:root { --paper: #16191a; --text: #d9e0e2; --head: #9fc6d0; --rule: #3b4649; --tint: #20272a; --bar: #273236; --bad: #ef9a90; --badtint: #2c1f1d; --link: #7fc0e3; }
}
body { font: 15px/1.45 "Liberation Sans", Arial, sans-serif; color: var(--text); background: var(--paper); max-width: 64em; margin: 0 auto 4em; padding: 0 1em; }
h1, h2, h3, h4 { color: var(--head); } h2 { border-bottom: 2px solid var(--head); margin-top: 2.2em; }
h3 { margin: 2em 0 .3em; font-size: 1.15em; } h4 { margin: 1em 0 .2em; font-size: .95em; }
a { color: var(--link); }
code, pre { background: var(--tint); font: 13px/1.4 "Liberation Mono", monospace; }
code { padding: .1em .3em; overflow-wrap: anywhere; } td code, .try code { user-select: all; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; margin: .4em 0; font-size: .92em; }
td, th { border: 1px solid var(--rule); padding: .2em .5em; text-align: left; vertical-align: top; }
th { background: var(--bar); }
table.cells td { text-align: right; font: 13px "Liberation Mono", monospace; }
.caution { border-left: 4px solid var(--bad); padding: .2em .8em; background: var(--badtint); }
.try { list-style: none; padding: 0; margin: .3em 0; } .try li { margin: .35em 0; } .gives { white-space: nowrap; font-weight: bold; }
.sketch { max-width: 100%; height: auto; display: block; margin: .5em 0; }
.search { position: sticky; top: 0; background: var(--paper); padding: .7em 0; border-bottom: 1px solid var(--rule); z-index: 1; }
.search input { font: inherit; width: 24em; max-width: 70%; padding: .3em .5em; color: var(--text); background: var(--tint); border: 1px solid var(--rule); }
.names { columns: 3; font-size: .93em; } .tasks dt { font-weight: bold; margin-top: .5em; } .tasks dd { margin: 0 0 0 1.2em; }
.other { font-size: .92em; } section.function { scroll-margin-top: 4em; } [hidden] { display: none; }
@media print { .search { display: none; } }
@media (max-width: 45em) { .names { columns: 1; } }
)style";

const char* const page_script = R"script(
(function () {
  var box = document.getElementById("search"), told = document.getElementById("found");
  var all = Array.prototype.slice.call(document.querySelectorAll("section.function"));
  var others = Array.prototype.slice.call(document.querySelectorAll(".group, .front"));
  function search() {
    var words = box.value.toLowerCase().split(/[\s,;]+/).filter(Boolean);
    var found = 0;
    all.forEach(function (part) {
      var text = part.getAttribute("data-words");
      part.hidden = !words.every(function (word) { return text.indexOf(word) >= 0; });
      if (!part.hidden) ++found;
    });
    others.forEach(function (part) {
      part.hidden = words.length > 0 &&
        (part.className === "front" || !part.querySelector("section.function:not([hidden])"));
    });
    told.textContent = words.length === 0 ? "" : found === 1 ? "1 function" : found + " functions";
  }
  box.addEventListener("input", search);
  window.addEventListener("hashchange", function () {
    var wanted = document.getElementById(location.hash.slice(1));
    if (wanted && wanted.offsetParent === null) { box.value = ""; search(); wanted.scrollIntoView(); }
  });
})();
)script";
// clang-format on

}  // namespace undercroft::addin
