#include "addin/audit/book/xlsx_values.hpp"

#include <algorithm>
#include <charconv>

namespace undercroft::audit {

namespace {

constexpr std::size_t longest_shown_text = 100000;
constexpr std::int32_t most_rows = 1048576;
constexpr std::int32_t most_columns = 16384;

/// `B7`, from 0; negative where it is none.
Spot spot_at(std::string_view text) {
    Spot spot{0, 0, 0};
    std::size_t at = 0;
    for (; at < text.size() && text[at] >= 'A' && text[at] <= 'Z' && spot.column <= most_columns; ++at)
        spot.column = spot.column * 26 + (text[at] - 'A' + 1);
    std::from_chars(text.data() + at, text.data() + text.size(), spot.row);
    --spot.column;
    --spot.row;
    const bool inside =
        spot.row >= 0 && spot.row < most_rows && spot.column >= 0 && spot.column < most_columns;
    return inside ? spot : Spot{0, -1, -1};
}

}  // namespace

void XlsxSheets::take_element(std::string_view element, const Attributes& attributes) {
    if (element == "sheet") sheets_.emplace_back(attributes.get("name"), attributes.get("r:id"));
    if (element == "Relationship") targets_[attributes.get("Id")] = attributes.get("Target");
}

std::vector<std::pair<std::string, std::string>> XlsxSheets::parts() const {
    std::vector<std::pair<std::string, std::string>> parts;
    for (const auto& [name, relationship] : sheets_) {
        const auto target = targets_.find(relationship);
        if (target == targets_.end() || target->second.empty()) continue;
        const bool absolute = target->second.front() == '/';
        parts.emplace_back(name, absolute ? target->second.substr(1) : "xl/" + target->second);
    }
    return parts;
}

void XlsxReader::start(std::string_view element, const Attributes& attributes) {
    if (element == "c") {
        const Spot spot = spot_at(attributes.get("r"));
        row_ = spot.row;
        column_ = spot.column;
        type_ = attributes.get("t");
        shown_.clear();
        has_value_ = false;
        is_result_ = std::any_of(arrays_.begin(), arrays_.end(), [&](const Area& area) {
            return area.holds({0, row_, column_});
        });
    } else if (element == "f") {
        is_result_ = true;
        const std::string area = attributes.get("t") == "array" ? attributes.get("ref") : std::string();
        const std::size_t colon = area.find(':');
        if (colon == std::string::npos) return;
        const Spot first = spot_at(std::string_view(area).substr(0, colon));
        const Spot last = spot_at(std::string_view(area).substr(colon + 1));
        std::erase_if(arrays_, [&](const Area& one) { return one.last_row < row_; });
        arrays_.push_back({0, first.row, first.column, last.row, last.column});
    } else if (element == "v") {
        in_value_ = has_value_ = true;
    }
}

void XlsxReader::text(std::string_view part) {
    if (in_value_ && shown_.size() < longest_shown_text) shown_ += part;
}

void XlsxReader::end(std::string_view element) {
    if (element == "v") in_value_ = false;
    if (element == "c" && is_result_ && has_value_ && row_ >= 0) keep();
}

void XlsxReader::keep() {
    StoredValue value;
    if (type_ == "e") {
        value.is_error = true;
    } else if (type_ == "str") {
        value.value = shown_;
    } else if (type_ == "s" || type_ == "inlineStr" || type_ == "d") {
        return;  // no result of a formula is kept so
    } else {
        double number = 0;
        const auto [end, error] = std::from_chars(shown_.data(), shown_.data() + shown_.size(), number);
        if (error != std::errc{} || end != shown_.data() + shown_.size() || shown_.empty()) return;
        value.value = number;
    }
    values_.add(sheet_, row_, column_, std::move(value));
}

}  // namespace undercroft::audit
