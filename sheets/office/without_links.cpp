#include "sheets/office/without_links.hpp"

#include <pugixml.hpp>
#include <stdexcept>
#include <string_view>

namespace undercroft::sheets {

namespace {

class Walker final : public pugi::xml_tree_walker {
    bool for_each(pugi::xml_node& node) override {
        const std::string_view name = node.name();
        const pugi::xml_attribute link = node.attribute("xlink:href");
        const bool waits =
            name == "text:a" || name == "draw:a" || std::string_view(link.value()).starts_with("#");
        if (!waits) node.remove_attribute(link);
        return true;
    }
};

}  // namespace

void take_links_out(const std::filesystem::path& flat) {
    pugi::xml_document document;
    // Blanks between texts are part of them.
    if (!document.load_file(flat.c_str(), pugi::parse_default | pugi::parse_ws_pcdata))
        throw std::runtime_error("cannot read the pages of the workbook");
    Walker walker;
    document.traverse(walker);
    if (!document.save_file(flat.c_str(), "", pugi::format_raw))
        throw std::runtime_error("cannot write the pages of the workbook; the disk may be full");
}

}  // namespace undercroft::sheets
