#include "addin/audit/book/stored_values.hpp"

#include <algorithm>
#include <charconv>

namespace undercroft::audit {

namespace {

constexpr std::size_t longest_stored_text = 100000;

/// What stands inside cells and sheets without being cells of the sheet.
bool is_passed_over(std::string_view element) {
    static constexpr std::string_view elements[] = {"draw:frame",
                                                    "draw:object",
                                                    "table:shapes",
                                                    "office:annotation",
                                                    "table:tracked-changes",
                                                    "table:dde-links",
                                                    "office:forms",
                                                    "table:content-validations"};
    return std::find(std::begin(elements), std::end(elements), element) != std::end(elements);
}

bool is_cell(std::string_view element) {
    return element == "table:table-cell" || element == "table:covered-table-cell";
}

/// How often an element is repeated; never beyond the largest sheet.
std::int32_t repeated(const std::string& text) {
    std::int32_t count = 1;
    std::from_chars(text.data(), text.data() + text.size(), count);
    return std::clamp(count, 1, 1048576);
}

std::uint64_t place_of(std::uint64_t sheet, std::int32_t row, std::int32_t column) {
    return (sheet << 40U) | (static_cast<std::uint64_t>(row) << 16U) | static_cast<std::uint64_t>(column);
}

}  // namespace

void StoredValues::add(const std::string& sheet, std::int32_t row, std::int32_t column, StoredValue value) {
    const std::uint64_t number = sheets_.try_emplace(sheet, sheets_.size()).first->second;
    values_.insert_or_assign(place_of(number, row, column), std::move(value));
}

const StoredValue* StoredValues::find(const std::string& sheet, std::int32_t row, std::int32_t column) const {
    const auto number = sheets_.find(sheet);
    if (number == sheets_.end()) return nullptr;
    const auto found = values_.find(place_of(number->second, row, column));
    return found == values_.end() ? nullptr : &found->second;
}

void StoredReader::start(std::string_view element, const Attributes& attributes) {
    if (passed_over_ > 0 || is_passed_over(element)) {
        ++passed_over_;
        return;
    }
    if (element == "table:table") {
        sheet_ = attributes.get("table:name");
        row_ = 0;
        arrays_.clear();
    } else if (element == "table:table-row") {
        rows_ = repeated(attributes.get("table:number-rows-repeated"));
        column_ = 0;
    } else if (is_cell(element)) {
        start_cell(attributes);
    } else if (element == "text:p" && in_cell_) {
        in_paragraph_ = true;
        if (paragraphs_++ > 0 && cell_takes_text_) shown_ += '\n';
    } else if (element == "text:s" && wants_text()) {
        shown_.append(static_cast<std::size_t>(std::min(repeated(attributes.get("text:c")), 1000)), ' ');
    }
}

/// Whether an array formula begins here; then its cells to come hold results without a formula of their own.
bool StoredReader::begins_array(const Attributes& attributes) {
    const std::string rows = attributes.get("table:number-matrix-rows-spanned");
    const std::string columns = attributes.get("table:number-matrix-columns-spanned");
    if (rows.empty() && columns.empty()) return false;
    std::erase_if(arrays_, [&](const Area& area) { return area.last_row < row_; });
    arrays_.push_back({0, row_, column_, row_ + repeated(rows) - 1, column_ + repeated(columns) - 1});
    return true;
}

void StoredReader::start_cell(const Attributes& attributes) {
    columns_ = repeated(attributes.get("table:number-columns-repeated"));
    in_cell_ = true;
    cell_takes_text_ = false;
    value_ = {};
    shown_.clear();
    paragraphs_ = 0;
    const bool begins = begins_array(attributes);
    const bool inside = !begins && std::any_of(arrays_.begin(), arrays_.end(), [&](const Area& area) {
        return area.holds({0, row_, column_});
    });
    is_result_ = begins || inside || !attributes.get("table:formula").empty();
    if (is_result_) read_value(attributes);
}

void StoredReader::read_value(const Attributes& attributes) {
    const std::string type = attributes.get("office:value-type");
    const std::string number = attributes.get("office:value");
    if (type.empty()) {
        is_result_ = false;  // the file was made without results
    } else if (attributes.get("calcext:value-type") == "error") {
        value_.is_error = true;
    } else if (type == "string") {
        const std::string text = attributes.get("office:string-value");
        cell_takes_text_ = text.empty();
        value_.value = text;
    } else if (type == "boolean") {
        value_.value = attributes.get("office:boolean-value") == "true" ? 1.0 : 0.0;
    } else {
        double value = 0;
        const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
        const bool whole = error == std::errc{} && end == number.data() + number.size() && !number.empty();
        if (whole) value_.value = value;
        is_result_ = whole;  // else a date or time, which Calc keeps as a number that the file does not say
    }
}

void StoredReader::text(std::string_view part) {
    if (wants_text() && shown_.size() < longest_stored_text) shown_ += part;
}

void StoredReader::end(std::string_view element) {
    if (passed_over_ > 0) {
        --passed_over_;
        return;
    }
    if (element == "text:p") in_paragraph_ = false;
    if (is_cell(element)) end_cell();
    if (element == "table:table-row") row_ = std::min(row_ + rows_, 1048576);
}

void StoredReader::end_cell() {
    if (is_result_) {
        if (cell_takes_text_) value_.value = shown_;
        values_.add(sheet_, row_, column_, value_);
    }
    in_cell_ = false;
    column_ = std::min(column_ + columns_, 16384);
}

}  // namespace undercroft::audit
