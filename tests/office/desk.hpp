/// \file desk.hpp
/// One headless Calc for all office tests, and a blank sheet to write formulas on.
#pragma once

#include <filesystem>

#include "sheets/office/errors.hpp"
#include "sheets/office/office.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

/// The filled whole job of the demo.
inline const std::string filled_job = std::string(JOBS_FOLDER) + "/car-park/whole-job.ods";

/// A place for a file of the test's own.
[[nodiscard]] std::filesystem::path scratch(const std::string& name);

/// Started by the first test that asks for it.
const sheets::Office& the_office();

/// Sets the locale that numbers are read and shown in, such as `de-DE`.
void set_locale(const sheets::Office& office, const std::string& locale);

/// Resident memory of the processes of an office, in MiB.
[[nodiscard]] double memory_of(const sheets::Office& office);

/// Processor time that an office has spent, in seconds: what others do on the machine does not count.
[[nodiscard]] double processor_time_of(const sheets::Office& office);

/// A blank sheet.
class Desk {
public:
    Desk() : document_(the_office().blank()), sheet_(document_.sheet_names().front()) {}

    /// Puts a formula, number or text into a cell, as a person would type it in an English Calc.
    Desk& put(const std::string& address, const std::string& content) {
        document_.cell(sheet_, address)->setFormula(sheets::to_ustring(content));
        return *this;
    }
    Desk& put(const std::string& address, double number) {
        document_.cell(sheet_, address)->setValue(number);
        return *this;
    }
    /// An array formula over a range.
    Desk& put_array(const std::string& range, const std::string& formula);

    [[nodiscard]] double number(const std::string& address) const {
        return document_.cell(sheet_, address)->getValue();
    }
    [[nodiscard]] std::string text(const std::string& address) const {
        return sheets::shown(document_.cell(sheet_, address));
    }
    [[nodiscard]] int error(const std::string& address) const {
        return document_.cell(sheet_, address)->getError();
    }
    [[nodiscard]] std::string formula(const std::string& address) const {
        return sheets::to_utf8(document_.cell(sheet_, address)->getFormula());
    }
    /// What UC.WHY says of a cell.
    [[nodiscard]] std::string why(const std::string& address) {
        put("Z99", "=UC.WHY(" + address + ")");
        return text("Z99");
    }
    [[nodiscard]] const sheets::Document& document() const { return document_; }

private:
    sheets::Document document_;
    std::string sheet_;
};

// Calc's error codes.
constexpr int num_error = 503;
constexpr int value_error = 519;
constexpr int no_convergence_error = 523;
constexpr int not_available = 32767;
constexpr int parameter_list_error = 504;

}  // namespace undercroft::tests
