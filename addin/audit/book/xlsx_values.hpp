/// \file xlsx_values.hpp
/// The results that an Office Open XML workbook holds beside its formulas.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/stored_values.hpp"

namespace undercroft::audit {

/// Which part holds which sheet: takes the events of a parser over xl/workbook.xml and
/// xl/_rels/workbook.xml.rels.
class XlsxSheets {
public:
    void take_element(std::string_view element, const Attributes& attributes);
    /// Sheets and their parts, such as `xl/worksheets/sheet1.xml`.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> parts() const;

private:
    std::vector<std::pair<std::string, std::string>> sheets_;  ///< name and relationship
    std::map<std::string, std::string> targets_;
};

/// Takes the events of a parser over the part of one sheet.
class XlsxReader {
public:
    XlsxReader(StoredValues& values, std::string sheet) : values_(values), sheet_(std::move(sheet)) {}
    void start(std::string_view element, const Attributes& attributes);
    void text(std::string_view part);
    void end(std::string_view element);
    [[nodiscard]] bool wants_text() const { return in_value_; }

private:
    void keep();

    StoredValues& values_;
    std::string sheet_;
    std::string type_;
    std::string shown_;
    std::vector<Area> arrays_;
    std::int32_t row_ = -1;
    std::int32_t column_ = -1;
    bool is_result_ = false;
    bool has_value_ = false;
    bool in_value_ = false;
};

}  // namespace undercroft::audit
