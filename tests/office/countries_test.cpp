// A workbook is read alike in every country: commas, dotless i, digits and the direction of writing change
// nothing.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

#include <algorithm>

#include "tests/office/asked_audit.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;
using sheets::Office;

namespace {

const char* const countries[] = {"de-DE", "tr-TR", "fr-FR", "ar-EG"};

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
