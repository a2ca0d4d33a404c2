/// \file listed_attributes.hpp
/// The attributes of an element that a test writes down.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "addin/audit/book/stored_values.hpp"

namespace undercroft::tests {

/// What is not in the list is empty.
class Listed final : public audit::Attributes {
public:
    explicit Listed(std::map<std::string, std::string> values) : values_(std::move(values)) {}
    [[nodiscard]] std::string get(std::string_view name) const override {
        const auto found = values_.find(std::string(name));
        return found == values_.end() ? "" : found->second;
    }

private:
    std::map<std::string, std::string> values_;
};

}  // namespace undercroft::tests
