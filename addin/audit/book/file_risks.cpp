#include "addin/audit/book/file_risks.hpp"

#include <algorithm>

#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t longest_name = 300;
constexpr std::size_t most_of_a_kind = 1000;

std::string_view value_of(const XmlAttributes& attributes, std::string_view name) {
    for (const auto& [key, value] : attributes)
        if (key == name) return value;
    return {};
}

void keep(std::set<std::string>& found, std::string_view what) {
    if (found.size() < most_of_a_kind) found.insert(std::string(what.substr(0, longest_name)));
}

/// What the office itself lists as links, or follows only when somebody clicks on it.
bool is_told_otherwise(std::string_view element) {
    static constexpr std::string_view elements[] = {"table:table-source", "table:cell-range-source", "text:a",
                                                    "draw:a", "manifest:file-entry"};
    return std::find(std::begin(elements), std::end(elements), element) != std::end(elements);
}

/// What an OpenDocument element that links is, in a word that a person knows.
std::string_view word_of_element(std::string_view element) {
    static constexpr std::pair<std::string_view, std::string_view> words[] = {
        {"draw:image", "picture"},
        {"draw:fill-image", "picture"},
        {"style:background-image", "picture"},
        {"draw:object", "object"},
        {"draw:object-ole", "object"},
        {"draw:floating-frame", "frame"},
        {"draw:applet", "applet"},
        {"draw:plugin", "plug-in"},
        {"svg:font-face-uri", "font"},
        {"meta:template", "template"},
        {"meta:auto-reload", "page that it turns into by itself"},
        {"chart:chart", "chart"},
        {"form:form", "form"},
        {"form:button", "button"},
        {"svg:definition-src", "font"},
        {"xforms:submission", "form"},
        {"form:connection-resource", "data base"}};
    for (const auto& [known, word] : words)
        if (known == element) return word;
    return element;
}

bool begins(std::string_view text, std::string_view with) {
    return lower_case(text.substr(0, with.size())) == with;
}

/// Elements of forms that only hold others together.
bool is_frame_of_form(std::string_view element) {
    static constexpr std::string_view elements[] = {
        "form:form",       "form:properties",          "form:property",
        "form:list-value", "form:list-property",       "form:item",
        "form:option",     "form:connection-resource", "form:column"};
    return std::find(std::begin(elements), std::end(elements), element) != std::end(elements);
}

bool is_reference_within(std::string_view link) {
    return link.empty() || link[0] == '#' || begins(link, "data:") ||
           begins(link, "vnd.sun.star.graphicobject:") || begins(link, "vnd.sun.star.package:");
}

}  // namespace

bool FileRisks::matters(std::string_view element) {
    static constexpr std::string_view common[] = {"table:table-cell",
                                                  "table:covered-table-cell",
                                                  "table:table-row",
                                                  "table:table-column",
                                                  "text:p",
                                                  "text:span",
                                                  "text:s",
                                                  "c",
                                                  "f",
                                                  "v",
                                                  "row",
                                                  "is",
                                                  "t",
                                                  "col"};
    return std::find(std::begin(common), std::end(common), element) == std::end(common);
}

bool FileRisks::starts_script(std::string_view value) {
    return begins(value, "vnd.sun.star.script:") || begins(value, "macro:") || begins(value, "javascript:") ||
           begins(value, "vnd.sun.star.expand:") || begins(value, "service:");
}

void FileRisks::take_script(const std::string& what) {
    keep(scripts_, what);
}

void FileRisks::take_parts(const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        parts_.insert(name);
        if (name.empty() || name.ends_with('/')) continue;
        if (name.starts_with("Basic/") || name.starts_with("Scripts/") || name.starts_with("Dialogs/") ||
            name.ends_with("vbaProject.bin") || name.starts_with("xl/macrosheets/") ||
            name.starts_with("xl/dialogsheets/") || name.starts_with("customUI/"))
            keep(scripts_, name);
        if (name.starts_with("xl/activeX/") || name.starts_with("xl/ctrlProps/")) keep(controls_, name);
        if (name == "xl/connections.xml" || name.starts_with("xl/queryTables/"))
            keep(links_, "data source " + name);
        if (name.starts_with("xl/embeddings/")) keep(controls_, "object " + name);
    }
}

/// An object in a package may say `..` for what it lies in; a chart says so of its sheet.
bool FileRisks::is_inside(std::string_view part, std::string_view link) const {
    for (auto depth = std::count(part.begin(), part.end(), '/'); depth > 0 && link.starts_with("..");
         --depth) {
        link.remove_prefix(2);
        if (link.starts_with('/')) link.remove_prefix(1);
    }
    if (link.starts_with("./")) link.remove_prefix(2);
    if (link.empty() || link == ".") return true;
    const std::string name = part.find('/') == std::string_view::npos || parts_.contains(std::string(link))
                                 ? std::string(link)
                                 : std::string(part.substr(0, part.rfind('/') + 1)) + std::string(link);
    const auto found = parts_.lower_bound(name);
    return found != parts_.end() && (*found == name || found->starts_with(name + "/"));
}

void FileRisks::take_element(std::string_view part, std::string_view element,
                             const XmlAttributes& attributes) {
    for (const auto& [name, value] : attributes)
        if (starts_script(value)) keep(scripts_, value);
    if (part.ends_with(".rels"))
        take_relationship(attributes);
    else
        take_open_document(part, element, attributes);
}

/// Of an Office Open XML package. Hyperlinks wait for a click; other workbooks are listed by the office.
void FileRisks::take_relationship(const XmlAttributes& attributes) {
    const std::string_view type = value_of(attributes, "Type");
    const bool told = type.ends_with("/hyperlink") || type.ends_with("/externalLinkPath");
    if (lower_case(value_of(attributes, "TargetMode")) != "external" || told) return;
    keep(links_,
         std::string(type.substr(type.rfind('/') + 1)) + " " + std::string(value_of(attributes, "Target")));
}

void FileRisks::take_open_document(std::string_view part, std::string_view element,
                                   const XmlAttributes& attributes) {
    const std::string_view link = value_of(attributes, "xlink:href");
    const bool is_own_sheet = element == "chart:chart" && (link == ".." || link == ".");
    if (!is_own_sheet && !is_told_otherwise(element) && !is_reference_within(link) &&
        !is_inside(part, link) && !starts_script(link))
        keep(links_, std::string(word_of_element(element)) + " " + std::string(link));
    if (element == "script:event-listener")
        keep(scripts_, "at " + std::string(value_of(attributes, "script:event-name")));
    if (element == "ooo:module" || element == "script:module" || element == "ooo:library-embedded" ||
        element == "script:library-embedded")
        keep(scripts_, "Basic " + std::string(value_of(
                                      attributes, element.starts_with("ooo:") ? "ooo:name" : "script:name")));
    if (element == "table:error-macro") keep(scripts_, "at a wrong entry");
    if (element.starts_with("form:") && element != "form:forms" && !is_frame_of_form(element)) {
        const std::string_view cell = value_of(attributes, "form:linked-cell");
        keep(controls_, std::string(element.substr(5)) + " " +
                            std::string(value_of(attributes, "form:name")) +
                            (cell.empty() ? "" : ", bound to " + std::string(cell)));
    }
    if (element.starts_with("xforms:")) keep(controls_, "form data");
    if (element == "table:database-source-sql" || element == "table:database-source-table" ||
        element == "table:database-source-query" || element == "table:source-service") {
        std::string_view base = value_of(attributes, "table:database-name");
        if (base.empty()) base = value_of(attributes, "table:name");
        keep(links_, "data base " + std::string(base));
    }
}

}  // namespace undercroft::audit
