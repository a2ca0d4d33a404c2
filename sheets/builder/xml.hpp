/// \file xml.hpp
/// Shorthands for writing XML by pugixml.
#pragma once

#include <pugixml.hpp>
#include <string>

namespace undercroft::sheets {

using pugi::xml_node;

inline void set(xml_node node, const char* name, const std::string& value) {
    node.append_attribute(name) = value.c_str();
}

/// A style of that name and family.
inline xml_node add_style(xml_node styles, const std::string& name, const char* family) {
    xml_node style = styles.append_child("style:style");
    set(style, "style:name", name);
    set(style, "style:family", family);
    return style;
}

}  // namespace undercroft::sheets
