/// \file stored_values.hpp
/// The results that an OpenDocument spreadsheet holds beside its formulas, read from its XML: Calc computes
/// some of them anew when it opens the file, so what a file holds is not what a person then sees.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

struct StoredValue {
    CellValue value;
    bool is_error = false;
};

/// Stored results by sheet, row and column.
class StoredValues {
public:
    void add(const std::string& sheet, std::int32_t row, std::int32_t column, StoredValue value);
    /// nullptr when the file holds none.
    [[nodiscard]] const StoredValue* find(const std::string& sheet, std::int32_t row,
                                          std::int32_t column) const;
    [[nodiscard]] std::size_t size() const { return values_.size(); }

private:
    std::unordered_map<std::string, std::uint64_t> sheets_;
    std::unordered_map<std::uint64_t, StoredValue> values_;  ///< by sheet, row and column in one number
};

/// Attributes of the element that is being read.
class Attributes {
public:
    Attributes() = default;
    Attributes(const Attributes&) = delete;
    Attributes& operator=(const Attributes&) = delete;
    virtual ~Attributes() = default;
    /// Empty where there is none of that name.
    [[nodiscard]] virtual std::string get(std::string_view name) const = 0;
};

/// Takes the events of an XML parser over content.xml or a flat .fods.
class StoredReader {
public:
    explicit StoredReader(StoredValues& values) : values_(values) {}

    void start(std::string_view element, const Attributes& attributes);
    void text(std::string_view part);
    void end(std::string_view element);
    /// Whether the text between the elements is wanted now; else it need not be handed over.
    [[nodiscard]] bool wants_text() const { return in_cell_ && cell_takes_text_ && in_paragraph_; }

private:
    void start_cell(const Attributes& attributes);
    [[nodiscard]] bool begins_array(const Attributes& attributes);
    void read_value(const Attributes& attributes);
    void end_cell();

    StoredValues& values_;
    int passed_over_ = 0;  ///< depth inside what holds no cells of the sheet: charts, notes, changes
    std::string sheet_;
    std::int32_t row_ = 0;
    std::int32_t rows_ = 1;
    std::int32_t column_ = 0;
    std::int32_t columns_ = 1;
    bool in_cell_ = false;
    bool is_result_ = false;    ///< of a formula of its own, or inside an array formula
    std::vector<Area> arrays_;  ///< array formulas of this sheet that reach this row or a later one
    bool cell_takes_text_ = false;
    bool in_paragraph_ = false;
    int paragraphs_ = 0;
    std::string shown_;
    StoredValue value_;
};

}  // namespace undercroft::audit
