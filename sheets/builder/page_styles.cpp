#include "sheets/builder/page_styles.hpp"

namespace undercroft::sheets {

void add_page_styles(xml_node automatic, xml_node master, bool letter) {
    const std::pair<const char*, bool> pages[] = {{"Upright", false}, {"Wide", true}};
    for (const auto& [name, wide] : pages) {
        const std::string layout = std::string("Layout") + name;
        xml_node page = automatic.append_child("style:page-layout");
        set(page, "style:name", layout);
        xml_node properties = page.append_child("style:page-layout-properties");
        const char* shorter = letter ? "21.59cm" : "21cm";
        const char* longer = letter ? "27.94cm" : "29.7cm";
        set(properties, "fo:page-width", wide ? longer : shorter);
        set(properties, "fo:page-height", wide ? shorter : longer);
        set(properties, "style:print-orientation", wide ? "landscape" : "portrait");
        set(properties, "fo:margin-top", "1cm");
        set(properties, "fo:margin-bottom", "1cm");
        set(properties, "fo:margin-left", "1.5cm");
        set(properties, "fo:margin-right", "0.8cm");
        set(properties, "style:first-page-number", "continue");
        set(properties, "style:scale-to-X", "1");
        set(properties, "style:scale-to-Y", "0");
        set(properties, "style:table-centering", "none");
        set(properties, "style:print", "objects charts drawings zero-values");
        for (const char* part : {"style:header-style", "style:footer-style"}) {
            xml_node band = page.append_child(part).append_child("style:header-footer-properties");
            set(band, "fo:min-height", "0.6cm");
            set(band, "fo:margin-left", "0cm");
            set(band, "fo:margin-right", "0cm");
            set(band, part == std::string("style:header-style") ? "fo:margin-bottom" : "fo:margin-top",
                "0.2cm");
        }
        xml_node made = master.append_child("style:master-page");
        set(made, "style:name", name);
        set(made, "style:page-layout-name", layout);
        const auto paragraph = [](xml_node region) { return region.append_child("text:p"); };
        xml_node header = made.append_child("style:header");
        xml_node file = paragraph(header.append_child("style:region-left")).append_child("text:file-name");
        set(file, "text:display", "name-and-extension");
        file.text().set("file");
        xml_node right = paragraph(header.append_child("style:region-right"));
        right.append_child("text:sheet-name").text().set("sheet");
        xml_node footer = made.append_child("style:footer");
        xml_node left = paragraph(footer.append_child("style:region-left"));
        left.append_child(pugi::node_pcdata).set_value("Local codes and a licensed engineer govern.");
        xml_node pages_of = paragraph(footer.append_child("style:region-right"));
        pages_of.append_child(pugi::node_pcdata).set_value("page ");
        pages_of.append_child("text:page-number").text().set("1");
        pages_of.append_child(pugi::node_pcdata).set_value(" of ");
        pages_of.append_child("text:page-count").text().set("1");
    }
}

}  // namespace undercroft::sheets
