#include "addin/uno/prefixes.hpp"

#include <algorithm>
#include <iterator>

namespace undercroft::addin {

namespace {

/// The prefix that a name space usually has; itself for those that no check asks for.
std::string usual_prefix(const std::string& space, const std::string& prefix) {
    static constexpr std::pair<std::string_view, std::string_view> known[] = {
        {"urn:oasis:names:tc:opendocument:xmlns:office:1.0", "office"},
        {"urn:oasis:names:tc:opendocument:xmlns:table:1.0", "table"},
        {"urn:oasis:names:tc:opendocument:xmlns:text:1.0", "text"},
        {"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0", "draw"},
        {"urn:oasis:names:tc:opendocument:xmlns:style:1.0", "style"},
        {"urn:oasis:names:tc:opendocument:xmlns:form:1.0", "form"},
        {"urn:oasis:names:tc:opendocument:xmlns:script:1.0", "script"},
        {"urn:oasis:names:tc:opendocument:xmlns:meta:1.0", "meta"},
        {"urn:oasis:names:tc:opendocument:xmlns:chart:1.0", "chart"},
        {"urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0", "svg"},
        {"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0", "calcext"},
        {"http://openoffice.org/2004/office", "ooo"},
        {"http://www.w3.org/2002/xforms", "xforms"},
        {"http://www.w3.org/1999/xlink", "xlink"},
        {"http://schemas.openxmlformats.org/spreadsheetml/2006/main", ""},
        {"http://purl.oclc.org/ooxml/spreadsheetml/main", ""},
        {"http://schemas.openxmlformats.org/officeDocument/2006/relationships", "r"},
        {"http://purl.oclc.org/ooxml/officeDocument/relationships", "r"},
        {"http://schemas.openxmlformats.org/package/2006/relationships", ""},
    };
    for (const auto& [uri, usual] : known)
        if (uri == space) return std::string(usual);
    return prefix;
}

}  // namespace

void Prefixes::begin(const css::uno::Reference<css::xml::sax::XAttributeList>& attributes) {
    ++depth_;
    const sal_Int16 count = attributes->getLength();
    for (sal_Int16 i = 0; i < count; ++i) {
        const rtl::OUString name = attributes->getNameByIndex(i);
        if (!name.startsWith("xmlns")) continue;
        const std::string whole = to_string(name);
        if (whole.size() > 5 && whole[5] != ':') continue;
        const std::string prefix = whole.size() > 5 ? whole.substr(6) : std::string();
        const std::string usual = usual_prefix(to_string(attributes->getValueByIndex(i)), prefix);
        meanings_.push_back({prefix, usual, depth_});
        if (prefix != usual) ++unusual_;
    }
}

void Prefixes::end() {
    while (!meanings_.empty() && meanings_.back().depth == depth_) {
        if (meanings_.back().prefix != meanings_.back().usual) --unusual_;
        meanings_.pop_back();
    }
    --depth_;
}

std::string Prefixes::with_usual(const std::string& name, bool has_default) const {
    const std::size_t colon = name.find(':');
    if (colon == std::string::npos && !has_default) return name;
    const std::string prefix = colon == std::string::npos ? std::string() : name.substr(0, colon);
    const auto found = std::find_if(meanings_.rbegin(), meanings_.rend(),
                                    [&](const Meaning& meaning) { return meaning.prefix == prefix; });
    if (found == meanings_.rend()) return name;
    const std::string local = colon == std::string::npos ? name : name.substr(colon + 1);
    return found->usual.empty() ? local : found->usual + ":" + local;
}

std::string Prefixes::element(const rtl::OUString& name) const {
    return are_usual() ? to_string(name) : with_usual(to_string(name), true);
}

std::string Prefixes::attribute(const rtl::OUString& name) const {
    return are_usual() ? to_string(name) : with_usual(to_string(name), false);
}

}  // namespace undercroft::addin
