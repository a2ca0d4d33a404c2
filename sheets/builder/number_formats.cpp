#include "sheets/builder/number_formats.hpp"

namespace undercroft::sheets {

namespace {

/// A number format with that many decimals.
xml_node number_format(xml_node styles, const char* name, int decimals, bool part) {
    xml_node style = styles.append_child("number:number-style");
    set(style, "style:name", name);
    if (part) set(style, "style:volatile", "true");
    xml_node number = style.append_child("number:number");
    set(number, "number:decimal-places", std::to_string(decimals));
    set(number, "number:min-decimal-places", std::to_string(decimals));
    set(number, "number:min-integer-digits", "1");
    return style;
}

/// A space before the last three digits: no comma, which could be read as a decimal sign.
void space_thousands(xml_node style) {
    xml_node gap = style.child("number:number").append_child("number:embedded-text");
    set(gap, "number:position", "3");
    gap.text().set(" ");
}

void map_format(xml_node style, const std::string& condition, const char* to) {
    xml_node map = style.append_child("style:map");
    set(map, "style:condition", condition);
    set(map, "style:apply-style-name", to);
}

void word_format(xml_node styles, const char* name, const char* word) {
    xml_node style = styles.append_child("number:number-style");
    set(style, "style:name", name);
    set(style, "style:volatile", "true");
    style.append_child("number:text").text().set(word);
}

/// 2026-11-25, the same in every country.
void day_format(xml_node styles) {
    xml_node style = styles.append_child("number:date-style");
    set(style, "style:name", "Day");
    set(style.append_child("number:year"), "number:style", "long");
    style.append_child("number:text").text().set("-");
    set(style.append_child("number:month"), "number:style", "long");
    style.append_child("number:text").text().set("-");
    set(style.append_child("number:day"), "number:style", "long");
}

}  // namespace

void add_number_formats(xml_node styles) {
    // Four or five digits whatever the size: 12 345, 123.45, 1.234. Of a format in parts Calc shows the sign
    // in the first only, so the first is the one that all numbers below 0 fall into.
    number_format(styles, "SensibleP0", 3, true);
    number_format(styles, "SensibleP1", 2, true);
    xml_node sensible = number_format(styles, "Sensible", 0, false);
    space_thousands(sensible);
    map_format(sensible, "value()<10", "SensibleP0");
    map_format(sensible, "value()<10000", "SensibleP1");
    number_format(styles, "OneDecimal", 1, false);
    number_format(styles, "Whole", 0, false);
    // Another code than that of SensibleP0: Calc drops a volatile format, and with it one that is the same.
    space_thousands(number_format(styles, "Thousandths", 3, false));
    day_format(styles);
    xml_node percent = styles.append_child("number:percentage-style");
    set(percent, "style:name", "Percent");
    xml_node number = percent.append_child("number:number");
    set(number, "number:decimal-places", "1");
    set(number, "number:min-integer-digits", "1");
    percent.append_child("number:text").text().set(" %");
    word_format(styles, "VerdictP0", "PASS");
    word_format(styles, "VerdictP1", "FAIL");
    xml_node verdict = number_format(styles, "VerdictFormat", 0, false);
    map_format(verdict, "value()=1", "VerdictP0");
    map_format(verdict, "value()=0", "VerdictP1");
}

}  // namespace undercroft::sheets
