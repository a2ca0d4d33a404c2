/// \file file_risks.hpp
/// What a file brings along besides its cells: links, scripts, and controls. Read from its parts, so that
/// nothing of it needs to be opened, run or followed.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace undercroft::audit {

/// Names with the prefixes that the standard's own texts use, and values, of one XML element.
using XmlAttributes = std::vector<std::pair<std::string, std::string>>;

class FileRisks {
public:
    /// The parts of a package by their names; a flat file has none.
    void take_parts(const std::vector<std::string>& names);
    /// An element of one of them.
    void take_element(std::string_view part, std::string_view element, const XmlAttributes& attributes);
    /// Anything else by its name: a stream of a binary file.
    void take_script(const std::string& what);

    [[nodiscard]] const std::set<std::string>& links() const { return links_; }
    /// Macros, scripts, and what starts them.
    [[nodiscard]] const std::set<std::string>& scripts() const { return scripts_; }
    /// Forms, buttons and what they are bound to.
    [[nodiscard]] const std::set<std::string>& controls() const { return controls_; }

    /// Whether an element needs to be looked at; nearly all of a large file need not.
    [[nodiscard]] static bool matters(std::string_view element);
    /// Whether an attribute's value starts a script, whatever its element.
    [[nodiscard]] static bool starts_script(std::string_view value);

private:
    void take_open_document(std::string_view part, std::string_view element, const XmlAttributes& attributes);
    void take_relationship(const XmlAttributes& attributes);
    [[nodiscard]] bool is_inside(std::string_view part, std::string_view link) const;

    std::set<std::string> links_;
    std::set<std::string> scripts_;
    std::set<std::string> controls_;
    std::set<std::string> parts_;
};

}  // namespace undercroft::audit
