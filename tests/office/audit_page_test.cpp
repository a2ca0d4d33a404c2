// The sheet Audit as a checker works with it: accepting, signing, comparing revisions, printing.
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <com/sun/star/util/Date.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <com/sun/star/view/XRenderable.hpp>

#include <boost/property_tree/json_parser.hpp>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <sstream>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

using boost::property_tree::ptree;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;

namespace {

/// One audit of an open workbook, written on it; what it answers besides only where that is wanted.
css::uno::Sequence<css::beans::NamedValue> ask_audit(const Document& document, const std::string& since,
                                                     bool wants_texts) {
    const auto context = the_office().context();
    const Reference<css::task::XJob> job(
        context->getServiceManager()->createInstanceWithContext("undercroft.Audit", context),
        UNO_QUERY_THROW);
    css::uno::Sequence<css::beans::NamedValue> arguments(5);
    arguments.getArray()[0] = {"Document", Any(document.model())};
    arguments.getArray()[1] = {"Writes", Any(true)};
    arguments.getArray()[2] = {"Since", Any(since.empty() ? rtl::OUString() : sheets::file_url(since))};
    arguments.getArray()[3] = {"Table", Any(wants_texts)};
    arguments.getArray()[4] = {"Json", Any(wants_texts)};
    css::uno::Sequence<css::beans::NamedValue> answer;
    job->execute(arguments) >>= answer;
    return answer;
}

ptree audited(const Document& document, const std::string& since = {}) {
    const css::uno::Sequence<css::beans::NamedValue> answer = ask_audit(document, since, true);
    ptree report;
    for (const css::beans::NamedValue& part : answer) {
        rtl::OUString text;
        if (part.Name != "Json" || !(part.Value >>= text)) continue;
        std::istringstream in(sheets::to_utf8(text));
        boost::property_tree::read_json(in, report);
    }
    REQUIRE(!report.empty());
    return report;
}

/// The sheet Audit, cell by cell.
class Page {
public:
    explicit Page(const Document& document) : sheet_(document.sheet("Audit")) {}

    [[nodiscard]] std::string text(sal_Int32 column, sal_Int32 row) const {
        return sheets::shown(sheet_->getCellByPosition(column, row));
    }
    void type(sal_Int32 column, sal_Int32 row, const char* text) const {
        sheet_->getCellByPosition(column, row)->setFormula(rtl::OUString::createFromAscii(text));
    }
    /// The first row from one on that has this text in a column; -1 where none has.
    [[nodiscard]] sal_Int32 row_of(const std::string& wanted, sal_Int32 column, sal_Int32 from = 0) const {
        constexpr sal_Int32 farthest = 2500;
        for (sal_Int32 row = from; row < farthest; ++row)
            if (text(column, row) == wanted) return row;
        return -1;
    }
    [[nodiscard]] sal_Int32 last_printed_row() const {
        const auto areas = Reference<css::sheet::XPrintAreas>(sheet_, UNO_QUERY_THROW)->getPrintAreas();
        REQUIRE(areas.getLength() == 1);
        return areas[0].EndRow;
    }

private:
    Reference<css::sheet::XSpreadsheet> sheet_;
};

std::size_t pages_of(const Document& document) {
    const Reference<css::view::XRenderable> pages(document.model(), UNO_QUERY_THROW);
    return static_cast<std::size_t>(pages->getRendererCount(Any(document.model()), {}));
}

/// A small sheet with a number in a formula that somebody may have reasons for.
Document pump() {
    Document document = the_office().blank();
    const std::string sheet = document.sheet_names().front();
    const std::map<std::string, const char*> cells = {{"A1", "What"},   {"B1", "Value"},    {"C1", "Unit"},
                                                      {"A2", "Inflow"}, {"B2", "20"},       {"C2", "L/s"},
                                                      {"A3", "Margin"}, {"B3", "=B2*1.37"}, {"C3", "L/s"}};
    for (const auto& [address, content] : cells)
        document.cell(sheet, address)->setFormula(rtl::OUString::createFromAscii(content));
    return document;
}

constexpr sal_Int32 what = 1;
constexpr sal_Int32 gravity = 2;
constexpr sal_Int32 says = 3;
constexpr sal_Int32 reason = 9;
constexpr sal_Int32 name = 11;

/// The row of the finding about that number.
sal_Int32 finding_row(const Page& page) {
    const sal_Int32 head = page.row_of("What is wrong, and what to do", says);
    REQUIRE(head >= 0);
    for (sal_Int32 row = head + 1; row < head + 20; ++row)
        if (page.text(says, row).find("1.37") != std::string::npos) return row;
    return -1;
}

/// The cells of the map that bear a tick.
std::size_t ticks(const ptree& report) {
    std::size_t count = 0;
    for (const auto& [none, sheet] : report.get_child("map"))
        for (const auto& [no_key, line] : sheet.get_child("formulas"))
            if (line.get<bool>("as signed")) ++count;
    return count;
}

/// The lines of a list in which one field is a text.
std::vector<ptree> lines_with(const ptree& report, const char* list, const char* field,
                              const std::string& text) {
    std::vector<ptree> lines;
    for (const auto& [none, line] : report.get_child(list))
        if (line.get<std::string>(field) == text) lines.push_back(line);
    return lines;
}

void set(const Document& document, const char* named, double value) {
    document.named(named, 0)->setValue(value);
}

}  // namespace

TEST_CASE("a finding accepted on the sheet stays accepted until its cell changes", "[audit]") {
    const Document document = pump();
    const std::string sheet = document.sheet_names().front();
    const auto errors_and_warnings = [](const ptree& report) {
        return report.get<int>("errors") + report.get<int>("warnings") + report.get<int>("notes");
    };
    const int before = errors_and_warnings(audited(document));
    sal_Int32 row = finding_row(Page(document));
    REQUIRE(row > 0);
    CHECK(Page(document).text(gravity, row) != "accepted");
    Page(document).type(reason, row, "the maker's figure");
    CHECK(errors_and_warnings(audited(document)) == before);  // nobody stands behind it
    row = finding_row(Page(document));
    Page(document).type(reason, row, "the maker's figure");
    Page(document).type(name, row, "A. Checker, 2026-11-27");
    const ptree accepted = audited(document);
    CHECK(errors_and_warnings(accepted) == before - 1);
    CHECK(accepted.get<int>("accepted") == 1);
    row = finding_row(Page(document));
    REQUIRE(row > 0);
    CHECK(Page(document).text(gravity, row) == "accepted");
    CHECK(Page(document).text(reason, row) == "the maker's figure");
    CHECK(Page(document).text(name, row) == "A. Checker, 2026-11-27");
    // What it rests on is another: it must be looked at again.
    document.cell(sheet, "B2")->setValue(25);
    CHECK(errors_and_warnings(audited(document)) == before);
    CHECK(Page(document).text(gravity, finding_row(Page(document))) != "accepted");
    CHECK(Page(document).text(what, finding_row(Page(document))) == "Margin");
}

TEST_CASE("what was signed keeps its tick, and an input changed since is shown first", "[audit]") {
    const Document document = the_office().open_copy(filled_job);
    CHECK(ticks(audited(document)) == 0);
    const sal_Int32 head = Page(document).row_of("Checker", what);
    REQUIRE(head > 0);
    Page(document).type(what, head + 1, "C. Checker");
    Page(document).type(gravity, head + 1, "'2026-11-27");
    const ptree same = audited(document);
    std::size_t all = 0;
    for (const auto& [none, sheet] : same.get_child("map")) all += sheet.get_child("formulas").size();
    CHECK(ticks(same) == all);
    for (const ptree& line : lines_with(same, "inputs", "changed since signed", "true"))
        FAIL_CHECK(line.get<std::string>("cells") << ": " << line.get<std::string>("value") << " was "
                                                  << line.get<std::string>("when signed"));
    CHECK(Page(document).row_of("Inputs worth a look", 0) < 0);
    const std::string before = sheets::shown(document.named("stone_porosity", 0));
    set(document, "stone_porosity", 37);
    const ptree changed = audited(document);
    CHECK(ticks(changed) < all);
    CHECK(ticks(changed) > all / 2);
    const std::vector<ptree> inputs = lines_with(changed, "inputs", "changed since signed", "true");
    REQUIRE(inputs.size() == 1);
    CHECK(inputs.front().get<std::string>("value") == "37");
    const Page page(document);
    const sal_Int32 section = page.row_of("Inputs worth a look", 0);
    REQUIRE(section > 0);
    CHECK(page.text(7, section + 2).find("when signed " + before) != std::string::npos);
    CHECK(page.row_of("Register of inputs", 0) > section);
    set(document, "stone_porosity", std::stod(before));
    CHECK(ticks(audited(document)) == all);
}

TEST_CASE("against an earlier revision: inputs, results, verdicts and rows", "[audit]") {
    const Document document = the_office().open_copy(filled_job);
    const ptree none = audited(document, filled_job);
    CHECK(none.get_child("changes").empty());
    CHECK(Page(document).row_of("Nothing is another than in the earlier revision.", 0) > 0);
    set(document, "stone_porosity", 30);
    set(document, "release_rate", 21);
    const ptree report = audited(document, filled_job);
    CHECK(report.get<std::string>("since") == "whole-job.ods");
    const std::vector<ptree> inputs = lines_with(report, "changes", "what", "Inputs");
    REQUIRE(inputs.size() == 2);
    CHECK(inputs[0].get<std::string>("is") == "30 %");
    CHECK(inputs[0].get<std::string>("was") == "38 %");
    CHECK(inputs[0].get<std::string>("says") == "-21.05 %");
    CHECK(lines_with(report, "changes", "what", "Results").size() > 20);
    CHECK(lines_with(report, "changes", "what", "Formulas").empty());
    CHECK(lines_with(report, "changes", "what", "Verdicts that turned").size() == [&] {
        std::size_t turned = 0;
        for (const auto& [key, check] : report.get_child("checks")) {
            const auto then = lines_with(none, "checks", "cells", check.get<std::string>("cells"));
            if (then.size() == 1 && then[0].get<std::string>("verdict") != check.get<std::string>("verdict"))
                ++turned;
        }
        return turned;
    }());
    const Page page(document);
    const sal_Int32 section = page.row_of("Since whole-job.ods", 0);
    REQUIRE(section > 0);
    CHECK(page.text(0, section + 1).starts_with("Others than in the earlier revision: "));
}

TEST_CASE("days are said as days, from the day 0 of the document, and plain numbers as numbers", "[audit]") {
    const Document document = the_office().blank();
    const std::string sheet = document.sheet_names().front();
    const Reference<css::beans::XPropertySet> settings(document.model(), UNO_QUERY_THROW);
    settings->setPropertyValue("NullDate", Any(css::util::Date(1, 1, 1904)));
    const std::map<std::string, const char*> cells = {
        {"A1", "What"},         {"B1", "Value"},     {"A2", "Starts"},
        {"B2", "2026-11-02"},   {"A3", "Poured at"}, {"B3", "2026-11-02 14:30"},
        {"A4", "Number"},       {"B4", "46328"},     {"A5", "Ends"},
        {"B5", "=B2+B4-46318"}, {"A6", "Next"},      {"B6", "=B3+B4"}};
    for (const auto& [address, content] : cells)
        document.cell(sheet, address)->setFormula(rtl::OUString::createFromAscii(content));
    const Reference<css::util::XNumberFormats> formats =
        Reference<css::util::XNumberFormatsSupplier>(document.model(), UNO_QUERY_THROW)->getNumberFormats();
    const auto show = [&](const char* cell, const char* format) {
        const rtl::OUString code = rtl::OUString::createFromAscii(format);
        const css::lang::Locale locale("en", "US", "");
        const sal_Int32 known = formats->queryKey(code, locale, false);
        Reference<css::beans::XPropertySet>(document.cell(sheet, cell), UNO_QUERY_THROW)
            ->setPropertyValue("NumberFormat", Any(known >= 0 ? known : formats->addNew(code, locale)));
    };
    show("B2", "DD/MM/YY");
    show("B3", "DD.MM.YYYY HH:MM");
    show("B5", "YYYY-MM-DD");
    const std::string earlier = scratch("days.ods").string();
    document.store(earlier);
    document.cell(sheet, "B2")->setFormula("2026-11-04");
    const ptree report = audited(document, earlier);
    const auto value = [&](const char* list, const char* cell) {
        const std::vector<ptree> lines = lines_with(report, list, "cells", sheet + "." + cell);
        return lines.size() == 1 ? lines.front().get<std::string>("value") : "not there";
    };
    CHECK(value("inputs", "B2") == "2026-11-04");
    CHECK(value("inputs", "B3") == "2026-11-02 14:30");
    CHECK(value("inputs", "B4") == "46328");
    const std::vector<ptree> changed = lines_with(report, "changes", "cells", sheet + ".B2");
    REQUIRE(changed.size() == 1);
    CHECK(changed.front().get<std::string>("was") == "2026-11-02");
    CHECK(changed.front().get<std::string>("is") == "2026-11-04");
    CHECK(changed.front().get<std::string>("says") == "2 days later");
    std::string results;
    for (const auto& [none, map] : report.get_child("map"))
        for (const auto& [no_key, line] : map.get_child("formulas"))
            results += line.get<std::string>("cells") + " " + line.get<std::string>("value") + "\n";
    CHECK_THAT(results, Catch::Contains("B5 2026-11-14"));
    CHECK(Page(document).row_of("2026-11-02 14:30", gravity) > 0);  // the column of values
}

TEST_CASE("the whole job's audit is printed on at most twelve pages, with its heads on each", "[audit]") {
    const Document document = the_office().open_copy(filled_job);
    const std::size_t before = pages_of(document);
    CHECK(before <= 34);  // the job's own pages
    for (const char* turn : {"first", "again"}) {
        const auto start = std::chrono::steady_clock::now();
        ask_audit(document, {}, false);  // as the menu does
        const double seconds =
            std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        std::cout << "  the whole job audited in its window, " << turn << ": " << seconds << " s\n";
        CHECK(seconds < 10);  // about 1 s on a machine that does nothing else
    }
    const std::size_t pages = pages_of(document) - before;
    CHECK(pages <= 12);
    CHECK(pages > 3);
    const Page page(document);
    CHECK(page.last_printed_row() < page.row_of("Links, counts and checks of Job", 0));
    // A head on each page: those of the formulas of the sheet Flow are said twice at least.
    const sal_Int32 flow = page.row_of("Formulas of Flow", 0);
    REQUIRE(flow > 0);
    const sal_Int32 again = page.row_of("Formula", 4, flow + 2);
    REQUIRE(again > 0);
    CHECK(again < page.row_of("Formulas of Excavation", 0));
    // Every input is on what two pages hold, of which the first part stands under the summary.
    const sal_Int32 inputs = page.row_of("Register of inputs", 0);
    REQUIRE(inputs > 0);
    CHECK(inputs < 30);
    CHECK(page.row_of("Register of inputs, continued", 0) > inputs);
    constexpr sal_Int32 rows_of_page = 82;
    CHECK(page.row_of("Checks", 0) - inputs <= 2 * rows_of_page);
}

TEST_CASE("somebody's own sheet called Audit is audited, and not written over", "[audit]") {
    const Document document = pump();
    document.model()->getSheets()->insertNewByName("Audit", 1);
    document.cell("Audit", "A1")->setFormula("Notes of mine");
    document.cell("Audit", "B1")->setFormula("=1/0");
    std::string refusal;
    try {
        audited(document);
    } catch (const css::uno::Exception& error) {
        refusal = sheets::to_utf8(error.Message);
    }
    CHECK(refusal.find("a sheet Audit of its own") != std::string::npos);
    CHECK(sheets::shown(document.cell("Audit", "A1")) == "Notes of mine");
}

TEST_CASE("what the package keeps of its templates is what the office reads of them", "[audit]") {
    const auto context = the_office().context();
    for (const std::string name : {"whole-job", "whole-job-us", "storage", "takeoff-us"}) {
        CAPTURE(name);
        const std::filesystem::path package = std::filesystem::path(EXTENSIONS_FOLDER) / "undercroft";
        css::uno::Sequence<css::beans::NamedValue> arguments(1);
        arguments.getArray()[0] = {
            "Template", Any(sheets::file_url(package / "template" / "Undercroft" / (name + ".ots")))};
        const Reference<css::task::XJob> job(
            context->getServiceManager()->createInstanceWithContext("undercroft.Audit", context),
            UNO_QUERY_THROW);
        css::uno::Sequence<css::beans::NamedValue> answer;
        job->execute(arguments) >>= answer;
        REQUIRE(answer.getLength() == 1);
        rtl::OUString text;
        REQUIRE((answer[0].Value >>= text));
        std::ifstream file(package / "read" / (name + ".ots.json"), std::ios::binary);
        const std::string kept(std::istreambuf_iterator<char>(file), {});
        CHECK(kept.size() > 100000);
        CHECK((kept == sheets::to_utf8(text)));
    }
}

}  // namespace undercroft::tests
