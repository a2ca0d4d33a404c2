// A workbook is read alike in every country: commas, dotless i, digits and the direction of writing change
// nothing.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>

#include <algorithm>

#include "sheets/builder/cell_text.hpp"
#include "tests/office/asked_audit.hpp"
#include "tests/office/desk.hpp"
#include "tests/office/menu_hand.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;
using sheets::Office;

namespace {

const char* const countries[] = {"de-DE", "it-IT", "tr-TR", "fr-FR", "ar-EG"};

/// The results of all formulas of a workbook, recalculated, cell by cell; numbers with all their digits.
std::vector<std::string> results_of(const Document& document) {
    document.recalculate();
    std::vector<std::string> results;
    for (const std::string& name : document.sheet_names()) {
        const Reference<css::sheet::XCellRangesQuery> sheet(document.sheet(name), UNO_QUERY_THROW);
        const auto ranges =
            sheet
                ->queryFormulaCells(css::sheet::FormulaResult::VALUE | css::sheet::FormulaResult::STRING |
                                    css::sheet::FormulaResult::ERROR)
                ->getRangeAddresses();
        for (const css::table::CellRangeAddress& range : ranges) {
            const Reference<css::sheet::XCellRangeData> cells(
                document.sheet(name)->getCellRangeByPosition(range.StartColumn, range.StartRow,
                                                             range.EndColumn, range.EndRow),
                UNO_QUERY_THROW);
            for (const auto& row : cells->getDataArray())
                for (const css::uno::Any& value : row) {
                    double number = 0;
                    rtl::OUString text;
                    std::string result = name + " row " + std::to_string(range.StartRow + 1) + ": ";
                    if (value >>= number)
                        result += exact_text(number);
                    else if (value >>= text)
                        result += sheets::to_utf8(text);
                    results.push_back(result);
                }
        }
    }
    return results;
}

/// Whether a result is the same, with the decimal mark of its country: `5.0 h` and `5,0 h`.
bool is_same(const std::string& here, const std::string& there) {
    if (here.size() != there.size()) return false;
    for (std::size_t i = 0; i < here.size(); ++i) {
        const bool is_mark = here[i] == '.' && there[i] == ',' && i > 0 && i + 1 < here.size() &&
                             is_digit(here[i - 1]) && is_digit(here[i + 1]);
        if (here[i] != there[i] && !is_mark) return false;
    }
    return true;
}

std::string fingerprint_of(const Document& signed_copy) {
    const Reference<css::sheet::XSpreadsheet> page = signed_copy.sheet("Audit");
    for (sal_Int32 row = 0; row < 100; ++row) {
        const std::string text = sheets::shown(page->getCellByPosition(10, row));
        if (text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos) return text;
    }
    return "none";
}

/// The demo's job with what a country could read otherwise, and mistakes to be found.
std::filesystem::path mistaken_job() {
    const std::filesystem::path file = scratch("mistaken.ods");
    const Document job = the_office().open_copy(filled_job);
    job.model()->getSheets()->insertNewByName("KIRIK i", 0);
    const auto put = [&job](const char* address, const char* content) {
        job.cell("KIRIK i", address)->setFormula(sheets::to_ustring(content));
    };
    put("A1", "PIPE WIDTH in mm");
    put("B1", "1234.5");
    put("C1", "mm");
    const Reference<css::sheet::XNamedRanges> names(
        Reference<css::beans::XPropertySet>(job.model(), UNO_QUERY_THROW)->getPropertyValue("NamedRanges"),
        UNO_QUERY_THROW);
    names->addNewByName("PIPE_WIDTH_I", "$'KIRIK i'.$B$1:$C$1", css::table::CellAddress(0, 0, 0), 0);
    put("B2", "=UC.CONVERT(pipe_width_i;\"m\")");
    put("C2", "m");
    put("B3", "=UC.CONVERT(\"1.25 mi\";\"km\")");
    put("C3", "km");
    put("B4", "=2.5&\" in\"");
    put("B5", "=B1+UC.CONVERT(\"2 kg\";\"kg\")");  // millimetres and kilograms
    put("C5", "mm");
    put("B6", "=UC.CONVERT(\"2,5 m\";\"mm\")");  // refused: which of the two a comma means is not known
    put("B7", "=TEXT(1234.5;\"0.00\")");
    job.recalculate();
    job.store(file);
    return file;
}

}  // namespace

TEST_CASE("an audit says the same in every country, word for word", "[people]") {
    const std::filesystem::path file = mistaken_job();
    const std::string here = asked_audit(the_office(), the_office().open_copy(file), file);
    INFO(here);
    CHECK(here.find("'KIRIK i'.B5") != std::string::npos);
    CHECK(here.find("'KIRIK i'.B6") != std::string::npos);
    CHECK(here.find("'KIRIK i'.B7") != std::string::npos);  // TEXT(1234.5;"0.00")
    for (const char* country : countries) {
        CAPTURE(country);
        const Office office(EXTENSIONS_FOLDER);
        set_locale(office, country);
        const Document document = office.open_copy(file);
        const std::string there = asked_audit(office, document, file);
        CHECK(there == here);
        CHECK(document.cell("KIRIK i", "B2")->getValue() == 1.2345);
    }
}

TEST_CASE("a job computes the same in every country: each number, verdict and sentence", "[people]") {
    const std::vector<std::string> here = results_of(the_office().open_copy(filled_job));
    CHECK(here.size() > 6000);
    for (const char* country : {"de-DE", "it-IT", "fr-FR", "en-GB"}) {
        CAPTURE(country);
        const Office office(EXTENSIONS_FOLDER);
        set_locale(office, country);
        const std::vector<std::string> there = results_of(office.open_copy(filled_job));
        REQUIRE(there.size() == here.size());
        std::size_t others = 0;
        for (std::size_t i = 0; i < here.size(); ++i)
            if (!is_same(here[i], there[i]) && ++others < 10)
                UNSCOPED_INFO(here[i] + " is there " + there[i]);
        CHECK(others == 0);
    }
}

TEST_CASE("a row that is added counts what is typed there with a decimal comma", "[people]") {
    for (const char* country : {"de-DE", "it-IT"}) {
        CAPTURE(country);
        const Office office(EXTENSIONS_FOLDER);
        set_locale(office, country);
        const Document job = office.open_copy(filled_job);
        const MenuHand hand(office, job);
        const auto total = [&] { return job.named("catchment_area")->getValue(); };
        const double before = total();
        const css::table::CellAddress area =
            Reference<css::sheet::XCellAddressable>(job.named("surface_list_area"), UNO_QUERY_THROW)
                ->getCellAddress();
        hand.select("Flow", sheets::cell_text(area.Row, area.Column));
        REQUIRE(hand.pick("add-row").empty());
        for (const auto& [name, typed] :
             {std::pair{"surface_list_area", "500,5"}, std::pair{"surface_list_c", "0,5"}})
            Reference<css::beans::XPropertySet>(job.named(name, 0, 1), UNO_QUERY_THROW)
                ->setPropertyValue("FormulaLocal", css::uno::Any(sheets::to_ustring(typed)));
        CHECK(total() == Approx(before + 500.5));
        const std::string report = asked_audit(office, job, "");
        INFO(report);
        CHECK(report.find("Nothing was found") != std::string::npos);
    }
}

TEST_CASE("what was signed in one country is what was signed in every other", "[people]") {
    const std::filesystem::path file = scratch("signed-there.ods");
    std::string fingerprint;
    for (const char* country : countries) {
        CAPTURE(country);
        const Office office(EXTENSIONS_FOLDER);
        set_locale(office, country);
        if (fingerprint.empty()) {
            const Document document = office.open_copy(filled_job);
            (void)asked_audit(office, document, filled_job, true);
            sign(document, "C. Checker");
            (void)asked_audit(office, document, filled_job, true);
            document.recalculate();
            document.store(file);
            fingerprint = fingerprint_of(document);
            CHECK(fingerprint.size() == 64);
        }
        const Document document = office.open_copy(file);
        const std::string there = asked_audit(office, document, file, true);
        INFO(there);
        CHECK(there.find("signed by C. Checker") != std::string::npos);
        CHECK(there.find("the workbook is what was signed") != std::string::npos);
        CHECK(there.find("Nothing was found") != std::string::npos);
        CHECK(fingerprint_of(document) == fingerprint);
    }
    const Document document = the_office().open_copy(file);
    CHECK(asked_audit(the_office(), document, file).find("the workbook is what was signed") !=
          std::string::npos);
}

}  // namespace undercroft::tests
