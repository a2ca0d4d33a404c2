/// \file example_call.hpp
/// A call of a function as the reference shows it, in which arguments can be changed one by one.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/formula/formula.hpp"

namespace undercroft::addin {

/// A table written into a formula: the text of each of its cells.
using WrittenRows = std::vector<std::vector<std::string>>;

/// `{1;2|3;4}`
[[nodiscard]] std::string written_array(const WrittenRows& rows);

/// Whether its first row holds the units of its columns.
[[nodiscard]] bool has_unit_row(const WrittenRows& rows);

class ExampleCall {
public:
    explicit ExampleCall(const Function& function);

    /// False where no formula of the reference is a call of the function by itself.
    [[nodiscard]] bool exists() const { return !formula_.empty(); }
    [[nodiscard]] bool stands(std::size_t argument) const {
        return exists() && argument < call_.children.size() &&
               call_.children[argument].kind != NodeKind::missing;
    }
    /// The table that stands there, written out or by its name; nothing where another thing does.
    [[nodiscard]] WrittenRows table(std::size_t argument) const;
    /// The call with other arguments.
    [[nodiscard]] std::string with(const std::map<std::size_t, std::string>& changed) const;
    [[nodiscard]] std::string with(std::size_t argument, const std::string& text) const {
        return with(std::map<std::size_t, std::string>{{argument, text}});
    }

private:
    std::string formula_;
    Node call_;
};

}  // namespace undercroft::addin
