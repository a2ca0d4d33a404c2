// The audit in a real Calc: planted mistakes, signatures, templates, damaged and foreign files, speed.
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <array>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>

#include "tests/office/desk.hpp"
#include "tests/support/files.hpp"
#include "tests/support/mistakes.hpp"

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;

namespace {

const std::string whole_job_template = std::string(TEMPLATES_FOLDER) + "/whole-job.ots";

struct Told {
    int findings = -1;
    std::string text;
    std::vector<std::vector<std::string>> table;

    /// Whether a finding of that title stands in that cell; an empty cell stands for the whole workbook.
    [[nodiscard]] bool has(std::string_view title, const std::string& sheet, sal_Int32 column,
                           sal_Int32 row) const;
};

std::vector<std::vector<std::string>> read_table(const std::string& text) {
    std::vector<std::vector<std::string>> rows(1);
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] == '"') {
            std::string field;
            for (++at; at < text.size() && (text[at] != '"' || text.substr(at, 2) == "\"\""); ++at) {
                if (text[at] == '"') ++at;
                field += text[at];
            }
            rows.back().push_back(field);
            ++at;
        } else if (text[at] == '\n') {
            rows.emplace_back();
            ++at;
        } else {
            ++at;
        }
    }
    return rows;
}

/// `G6` at the start of a text, which is then behind it.
bool take_address(std::string_view& text, sal_Int32& column, sal_Int32& row) {
    column = 0;
    row = 0;
    while (!text.empty() && text[0] >= 'A' && text[0] <= 'Z') {
        column = column * 26 + (text[0] - 'A' + 1);
        text.remove_prefix(1);
    }
    while (!text.empty() && text[0] >= '0' && text[0] <= '9') {
        row = row * 10 + (text[0] - '0');
        text.remove_prefix(1);
    }
    --column;
    --row;
    return column >= 0 && row >= 0;
}

/// Whether `Site.G6:G9, H7` names the cell.
bool names(const std::string& cells, const std::string& sheet, sal_Int32 column, sal_Int32 row) {
    if (!cells.starts_with(sheet + ".")) return false;
    std::string_view rest = std::string_view(cells).substr(sheet.size() + 1);
    sal_Int32 left = 0;
    sal_Int32 top = 0;
    while (take_address(rest, left, top)) {
        sal_Int32 right = left;
        sal_Int32 bottom = top;
        if (rest.starts_with(":")) {
            rest.remove_prefix(1);
            take_address(rest, right, bottom);
        }
        if (column >= left && column <= right && row >= top && row <= bottom) return true;
        if (!rest.starts_with(", ")) break;
        rest.remove_prefix(2);
    }
    return false;
}

bool Told::has(std::string_view title, const std::string& sheet, sal_Int32 column, sal_Int32 row) const {
    for (const auto& line : table) {
        if (line.size() < 4 || line[0] != "finding" || line[2] != title) continue;
        if (sheet.empty() || names(line[3], sheet, column, row)) return true;
    }
    return false;
}

Told audit(const Document& document, const std::string& file = {}, const std::string& against = {},
           bool writes = false) {
    const auto context = the_office().context();
    const Reference<css::task::XJob> job(
        context->getServiceManager()->createInstanceWithContext("undercroft.Audit", context),
        UNO_QUERY_THROW);
    const auto url = [](const std::string& path) {
        return path.empty() ? rtl::OUString() : sheets::file_url(path);
    };
    css::uno::Sequence<css::beans::NamedValue> arguments(4);
    arguments.getArray()[0] = {"Document", Any(document.model())};
    arguments.getArray()[1] = {"File", Any(url(file))};
    arguments.getArray()[2] = {"Against", Any(url(against))};
    arguments.getArray()[3] = {"Writes", Any(writes)};
    css::uno::Sequence<css::beans::NamedValue> answer;
    job->execute(arguments) >>= answer;
    Told told;
    for (const css::beans::NamedValue& part : answer) {
        rtl::OUString text;
        if (part.Name == "Findings") part.Value >>= told.findings;
        if (part.Value >>= text) {
            if (part.Name == "Text") told.text = sheets::to_utf8(text);
            if (part.Name == "Table") told.table = read_table(sheets::to_utf8(text));
        }
    }
    return told;
}

struct Place {
    std::string sheet;
    css::table::CellRangeAddress at;
};

/// `Site.G7`, a defined name, or name.unit.
Place place_of(const Document& document, const std::string& cell) {
    const std::size_t dot = cell.find('.');
    const bool unit = dot != std::string::npos && cell.substr(dot) == ".unit";
    const std::string head = cell.substr(0, dot);
    if (dot != std::string::npos && !unit)
        return {head, Reference<css::sheet::XCellRangeAddressable>(
                          document.sheet(head)->getCellRangeByName(sheets::to_ustring(cell.substr(dot + 1))),
                          UNO_QUERY_THROW)
                          ->getRangeAddress()};
    const Reference<css::sheet::XCellAddressable> named(document.named(head, unit ? 1 : 0), UNO_QUERY_THROW);
    const css::table::CellAddress at = named->getCellAddress();
    return {document.sheet_names()[static_cast<std::size_t>(at.Sheet)],
            {at.Sheet, at.Column, at.Row, at.Column, at.Row}};
}

void protect(const Document& document, bool on) {
    for (const std::string& name : document.sheet_names()) {
        const Reference<css::util::XProtectable> sheet(document.sheet(name), UNO_QUERY_THROW);
        if (on)
            sheet->protect({});
        else
            sheet->unprotect({});
    }
}

/// The workbook no longer says which template it was made from.
void forget_identity(const Document& document) {
    const auto own = Reference<css::document::XDocumentPropertiesSupplier>(document.model(), UNO_QUERY_THROW)
                         ->getDocumentProperties()
                         ->getUserDefinedProperties();
    own->removeProperty("Undercroft template");
}

void do_edit(const Document& document, const Edit& edit) {
    if (edit.what == Edit::What::hide_sheet) {
        Reference<css::beans::XPropertySet>(document.sheet(edit.cell), UNO_QUERY_THROW)
            ->setPropertyValue("IsVisible", Any(false));
        return;
    }
    const Place place = place_of(document, edit.cell);
    const Reference<css::sheet::XSpreadsheet> sheet = document.sheet(place.sheet);
    const Reference<css::table::XColumnRowRange> both(sheet, UNO_QUERY_THROW);
    const auto hide = [](const Any& line) {
        Reference<css::beans::XPropertySet>(line, UNO_QUERY_THROW)->setPropertyValue("IsVisible", Any(false));
    };
    switch (edit.what) {
        case Edit::What::type:
            sheet->getCellByPosition(place.at.StartColumn, place.at.StartRow)
                ->setFormula(sheets::to_ustring(edit.text));
            break;
        case Edit::What::hide_row:
            hide(both->getRows()->getByIndex(place.at.StartRow));
            break;
        case Edit::What::hide_column:
            hide(both->getColumns()->getByIndex(place.at.StartColumn));
            break;
        case Edit::What::insert_row:
            both->getRows()->insertByIndex(place.at.StartRow, 1);
            break;
        case Edit::What::delete_row:
            both->getRows()->removeByIndex(place.at.StartRow, 1);
            break;
        default:
            FAIL("not an edit of an open workbook");
    }
}

std::string title_of_word(const std::string& word) {
    for (int kind = 0; kind <= static_cast<int>(audit::FindingKind::signature); ++kind)
        if (audit::word_of(static_cast<audit::FindingKind>(kind)) == word)
            return std::string(audit::title_of(static_cast<audit::FindingKind>(kind)));
    return {};
}

bool stores(const Mistake& mistake) {
    return std::any_of(mistake.edits.begin(), mistake.edits.end(),
                       [](const Edit& edit) { return edit.what == Edit::What::store; });
}

void replace(std::string& text, const std::string& what, const std::string& with) {
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    text.replace(at, what.size(), with);
}

}  // namespace

TEST_CASE("mistakes planted in the whole job are found in a real Calc", "[audit]") {
    std::size_t planted = 0;
    std::size_t line = 0;
    for (const Mistake& mistake : read_mistakes(file_text("tests/data/seeded-mistakes.txt"))) {
        // Those that need no recalculation are all tried without an office; here every eighth of them.
        if (stores(mistake) || (!mistake.needs_calc && ++line % 8 != 0)) continue;
        CAPTURE(mistake.line, mistake.kind, mistake.found_at, mistake.edits.front().text);
        const Document document = the_office().open_copy(filled_job);
        protect(document, false);
        for (const Edit& edit : mistake.edits) do_edit(document, edit);
        protect(document, true);
        if (!mistake.against_template) forget_identity(document);  // else its template would be opened too
        const Told told = audit(document, {}, mistake.against_template ? whole_job_template : std::string());
        INFO(told.text);
        const Place at = mistake.found_at.empty() ? Place() : place_of(document, mistake.found_at);
        CHECK(told.has(title_of_word(mistake.kind), at.sheet, at.at.StartColumn, at.at.StartRow));
        ++planted;
    }
    CHECK(planted >= 25);
}

TEST_CASE("untouched workbooks have no finding, held against the template that they name", "[audit]") {
    const Document document = the_office().open_copy(filled_job);
    const Told told = audit(document, filled_job);
    INFO(told.text);
    CHECK(told.findings == 0);
    CHECK(told.text.find("compared with: whole-job SI") != std::string::npos);
    CHECK(told.text.find("0 formulas changed") != std::string::npos);
}

TEST_CASE("a result edited in the file is stale", "[audit]") {
    const std::string flat = std::string(JOBS_FOLDER) + "/stale.fods";
    {
        Desk desk;
        desk.put("A1", 2.5).put("B1", "m").put("C1", "=UC.PRODUCT(A1:B1;2;\"m\")");
        desk.document().store(flat);
    }
    std::ifstream in(flat);
    std::string text((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    replace(text, "office:value=\"5\"", "office:value=\"6\"");
    std::ofstream(flat) << text;
    const Document document = the_office().open_copy(flat);
    const Told told = audit(document, flat);
    INFO(told.text);
    CHECK(told.has(title_of_word("stale"), document.sheet_names().front(), 2, 0));
}

TEST_CASE("a signature holds until an input, a formula or a unit changes", "[audit]") {
    const Document document = the_office().open_copy(filled_job);
    const auto audit_cell = [&](sal_Int32 column, sal_Int32 row) {
        return document.sheet("Audit")->getCellByPosition(column, row);
    };
    audit(document, {}, {}, true);
    sal_Int32 sign = 0;
    while (sheets::shown(audit_cell(1, sign)) != "Checker") REQUIRE(++sign < 100);
    const std::string fingerprint = sheets::shown(audit_cell(10, sign + 1));
    CHECK(fingerprint.size() == 64);
    audit_cell(1, sign + 1)->setFormula("C. Checker");
    audit_cell(2, sign + 1)->setFormula("'2026-11-25");
    const Told same = audit(document, {}, {}, true);
    INFO(same.text);
    CHECK(same.findings == 0);
    CHECK(same.text.find("signed by C. Checker on 2026-11-25: the workbook is what was signed") !=
          std::string::npos);
    const std::vector<std::array<std::string, 3>> changes = {{"site_length", "42.1", "inputs"},
                                                             {"site_length.unit", "ft", "units and texts"},
                                                             {"Storage.G9", "=G8", "formulas"}};
    for (const auto& [cell, text, kind] : changes) {
        CAPTURE(cell);
        const Place place = place_of(document, cell);
        const auto changed =
            document.sheet(place.sheet)->getCellByPosition(place.at.StartColumn, place.at.StartRow);
        const rtl::OUString before = changed->getFormula();
        protect(document, false);
        changed->setFormula(sheets::to_ustring(text));
        const Told told = audit(document, {}, {}, true);
        CHECK(told.text.find("changed since: " + kind + " in " + place.sheet) != std::string::npos);
        CHECK(told.has(title_of_word("signature"), "", 0, 0));
        changed->setFormula(before);
    }
    protect(document, true);
    const Told again = audit(document, {}, {}, true);
    CHECK(again.text.find("the workbook is what was signed") != std::string::npos);
}

TEST_CASE("the SHA-256 is the standard's", "[audit]") {
    // The workbook's text is hashed by the office's library; the same text hashed by coreutils gives the
    // same.
    const Document document = the_office().blank();
    const Told told = audit(document);
    std::string digest;
    for (const auto& line : told.table)
        if (line.size() > 5 && line[0] == "fingerprint" && line[2] == "Sheet1") digest = line[5];
    // printf 'sheet\tSheet1\n' | sha256sum
    CHECK(digest == "6380837d030f65bf3b1c494ad7ae290a4968360aee166eab8717e054613b1069");
}

TEST_CASE("a damaged file is refused, and one of another kind is read", "[audit]") {
    const std::string damaged = std::string(JOBS_FOLDER) + "/damaged.ods";
    std::ifstream in(filled_job, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    std::ofstream(damaged, std::ios::binary) << bytes.substr(0, bytes.size() / 2);
    CHECK_THROWS(the_office().open_copy(damaged));
    const std::string foreign = UNDERCROFT_PROGRAM_FOLDER "/opencl/cl-test.ods";  // of the office's own tests
    if (std::filesystem::exists(foreign)) {
        const Told told = audit(the_office().open_copy(foreign), foreign);
        CHECK(told.findings > 0);
        CHECK(told.text.find("79 formulas") != std::string::npos);
    }
}

TEST_CASE("files of other kinds carry their cautions", "[audit]") {
    const std::string xlsx = std::string(JOBS_FOLDER) + "/saved.xlsx";
    {
        const Document document = the_office().open_copy(filled_job);
        document.store(xlsx);
    }
    const Document document = the_office().open_copy(xlsx);
    const Told told = audit(document, xlsx);
    INFO(told.text);
    CHECK(told.findings == 1);
    CHECK(told.has(title_of_word("file"), "", 0, 0));
}

TEST_CASE("100 000 formulas are audited in time", "[audit]") {
    const Document document = the_office().blank();
    const std::string name = document.sheet_names().front();
    constexpr sal_Int32 rows = 20000;
    const char* const first[] = {"item 1", "100",    "mm",      "=UC.PRODUCT(B1:C1;2;E1)", "m", "=D1*2",
                                 "=F1+D1", "=G1-F1", "=ABS(H1)"};
    for (sal_Int32 c = 0; c < 9; ++c)
        document.sheet(name)->getCellByPosition(c, 0)->setFormula(sheets::to_ustring(first[c]));
    Reference<css::sheet::XCellSeries>(document.sheet(name)->getCellRangeByPosition(0, 0, 8, rows - 1),
                                       UNO_QUERY_THROW)
        ->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1);
    const auto start = std::chrono::steady_clock::now();
    const Told told = audit(document);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    CAPTURE(seconds, told.text);
    CHECK(told.text.find("100000 formulas") != std::string::npos);
    CHECK(seconds < 30);  // 10 s on a machine that does nothing else
    std::cout << "  100 000 formulas audited in " << seconds << " s\n";
}

}  // namespace undercroft::tests
