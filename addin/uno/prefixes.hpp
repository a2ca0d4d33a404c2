/// \file prefixes.hpp
/// The prefixes of an XML file, which it may choose as it likes, as the standards' own texts have them.
#pragma once

#include <com/sun/star/xml/sax/XAttributeList.hpp>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

class Prefixes {
public:
    /// To be called at the begin and the end of each element.
    void begin(const css::uno::Reference<css::xml::sax::XAttributeList>& attributes);
    void end();

    /// The element's name with its usual prefix.
    [[nodiscard]] std::string element(const rtl::OUString& name) const;
    [[nodiscard]] std::string attribute(const rtl::OUString& name) const;
    /// Whether all prefixes are the usual ones, as in every file that an office wrote.
    [[nodiscard]] bool are_usual() const { return unusual_ == 0; }

private:
    struct Meaning {
        std::string prefix;
        std::string usual;
        std::size_t depth;
    };
    [[nodiscard]] std::string with_usual(const std::string& name, bool has_default) const;

    std::vector<Meaning> meanings_;  ///< those inside come last
    std::size_t depth_ = 0;
    std::size_t unusual_ = 0;
};

}  // namespace undercroft::addin
