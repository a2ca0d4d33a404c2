// Rows added to the lists of a workbook and taken out again by the menu: formulas, names, checks, print
// ranges, protection and the audit's silence stay.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <map>
#include <set>

#include "sheets/builder/cell_text.hpp"
#include "sheets/office/set_points.hpp"
#include "tests/office/asked_audit.hpp"
#include "tests/office/desk.hpp"
#include "tests/office/menu_hand.hpp"

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;

namespace {

/// A list that grows, by its rows, from 0.
struct Grows {
    std::string sheet;
    sal_Int32 first = 0;
    sal_Int32 last = 0;
    int most = 0;

    [[nodiscard]] sal_Int32 rows() const { return last - first + 1; }
};

css::table::CellRangeAddress used_area(const Document& document, const std::string& sheet) {
    const auto cursor = document.sheet(sheet)->createCursor();
    const Reference<css::sheet::XUsedAreaCursor> used(cursor, UNO_QUERY_THROW);
    used->gotoStartOfUsedArea(false);
    used->gotoEndOfUsedArea(true);
    return Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
}

bool is_protected(const Document& document, const std::string& sheet) {
    return Reference<css::util::XProtectable>(document.sheet(sheet), UNO_QUERY_THROW)->isProtected() != 0;
}

css::uno::Sequence<css::uno::Sequence<Any>> values_of(const Document& document, const std::string& sheet) {
    const css::table::CellRangeAddress used = used_area(document, sheet);
    return Reference<css::sheet::XCellRangeData>(
               document.sheet(sheet)->getCellRangeByPosition(0, 0, used.EndColumn, used.EndRow),
               UNO_QUERY_THROW)
        ->getDataArray();
}

/// The lists of the workbook that say beside the page that they grow.
std::vector<Grows> growing_lists(const Document& document) {
    std::vector<Grows> lists;
    for (const std::string& sheet : document.sheet_names()) {
        if (sheet == "Days") continue;  // long, and no list of it grows
        const auto values = values_of(document, sheet);
        for (sal_Int32 row = 0; row < values.getLength(); ++row)
            for (const Any& value : values[row]) {
                rtl::OUString text;
                if (!(value >>= text) || !text.startsWith("grows to ")) continue;
                const int most = text.copy(9).toInt32();
                if (!lists.empty() && lists.back().sheet == sheet && lists.back().last == row - 1)
                    lists.back().last = row;
                else
                    lists.push_back({sheet, row, row, most});
            }
    }
    return lists;
}

/// Everything that one sees of a sheet: contents, what is printed, protection; and all names.
std::vector<std::string> seen(const Document& document, const std::string& sheet_name) {
    std::vector<std::string> all;
    const auto sheet = document.sheet(sheet_name);
    const css::table::CellRangeAddress used = used_area(document, sheet_name);
    const Reference<css::sheet::XCellRangeFormula> cells(
        sheet->getCellRangeByPosition(0, 0, used.EndColumn, used.EndRow), UNO_QUERY_THROW);
    for (const auto& row : cells->getFormulaArray()) {
        std::string line;
        for (const rtl::OUString& cell : row) line += "|" + sheets::to_utf8(cell);
        all.push_back(line);
    }
    all.push_back(is_protected(document, sheet_name) ? "protected" : "open");
    for (const css::table::CellRangeAddress& area :
         Reference<css::sheet::XPrintAreas>(sheet, UNO_QUERY_THROW)->getPrintAreas())
        all.push_back("printed to row " + std::to_string(area.EndRow));
    const Reference<css::sheet::XNamedRanges> names(
        Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)
            ->getPropertyValue("NamedRanges"),
        UNO_QUERY_THROW);
    for (const rtl::OUString& name : names->getElementNames()) {
        const Reference<css::sheet::XNamedRange> range(names->getByName(name), UNO_QUERY_THROW);
        all.push_back(sheets::to_utf8(name) + " is " + sheets::to_utf8(range->getContent()));
    }
    return all;
}

/// The numbers that names stand for, by name, where they stand in one row.
std::map<std::string, double> named_numbers(const Document& document) {
    std::map<std::string, double> numbers;
    const Reference<css::sheet::XNamedRanges> names(
        Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)
            ->getPropertyValue("NamedRanges"),
        UNO_QUERY_THROW);
    for (const rtl::OUString& name : names->getElementNames()) {
        const std::string key = sheets::to_utf8(name);
        const auto cell = document.named(key);
        if (cell->getType() == css::table::CellContentType_FORMULA && cell->getError() == 0)
            numbers[key] = cell->getValue();
    }
    return numbers;
}

std::string row_address(sal_Int32 row) {
    return sheets::cell_text(row, 1);
}

/// Whether a blank row between others says something: a sieve or a level that is missing, a hold point
/// passed.
bool blank_matters(const Document& document, const Grows& list) {
    rtl::OUString style;
    Reference<css::beans::XPropertySet>(document.sheet(list.sheet)->getCellByPosition(1, list.first),
                                        UNO_QUERY_THROW)
        ->getPropertyValue("CellStyle") >>= style;
    const css::table::CellAddress hold_points =
        Reference<css::sheet::XCellAddressable>(document.named("hold_point_state"), UNO_QUERY_THROW)
            ->getCellAddress();
    return style == "GridEntry" || (list.sheet == "Record" && list.first == hold_points.Row);
}

/// Results that count the rows of a list count the new one too.
const std::set<std::string> counts_rows = {
    "holds_all", "holds_open", "tests_all", "tests_open", "levels_open", "density_open", "lifts_rows",
    "deliveries_open", "record_open", "takeoff_open", "job_open",
    // The last activity of the sequence takes a day for ten hold points.
    "work_taken", "bar_step"};

}  // namespace

TEST_CASE(
    "a row added to each list of a job keeps its numbers and the audit silent, and one undo takes it back",
    "[audit]") {
    const Document job = the_office().open_copy(filled_job);
    const MenuHand hand(the_office(), job);
    job.recalculate();
    const auto before = named_numbers(job);
    const std::vector<Grows> lists = growing_lists(job);
    CHECK(lists.size() == 19);
    for (auto list = lists.rbegin(); list != lists.rend(); ++list) {  // those above stay where they are
        CAPTURE(list->sheet, list->first, list->last, list->most);
        if (list->rows() == list->most) continue;
        const auto was = seen(job, list->sheet);
        hand.select(list->sheet, row_address(list->last));
        REQUIRE(hand.pick("add-row").empty());
        CHECK(hand.undoes() == "Add a row");
        const std::string made = hand.selected();
        hand.undo();
        CHECK(seen(job, list->sheet) == was);
        const auto add_below = [&](sal_Int32 row) {
            hand.select(list->sheet, row_address(row));
            REQUIRE(hand.pick("add-row").empty());
            CHECK(is_protected(job, list->sheet));
        };
        add_below(list->last);
        CHECK(hand.selected() == made);
        add_below(blank_matters(job, *list) ? list->last + 1 : list->first);
    }
    const std::vector<Grows> grown = growing_lists(job);
    REQUIRE(grown.size() == lists.size());
    for (std::size_t i = 0; i < lists.size(); ++i)
        CHECK(grown[i].rows() == lists[i].rows() + (lists[i].rows() < lists[i].most ? 2 : 0));
    job.recalculate();
    const auto after = named_numbers(job);
    for (const auto& [name, number] : before) {
        CAPTURE(name);
        REQUIRE(after.contains(name));
        if (!counts_rows.contains(name)) CHECK(after.at(name) == number);
    }
    const std::string report = asked_audit(the_office(), job, "");
    INFO(report);
    CHECK(report.find("Nothing was found") != std::string::npos);
}

namespace {

/// A whole job as it is new, and a hand.
struct NewJob {
    Document job = the_office().open(std::filesystem::path(TEMPLATES_FOLDER) / "whole-job.ots");
    MenuHand hand = MenuHand(the_office(), job);

    /// The address of the first cell of a defined name, so many rows below.
    [[nodiscard]] std::string at(const std::string& name, int rows_below = 0) const {
        const css::table::CellAddress cell =
            Reference<css::sheet::XCellAddressable>(job.named(name, 0, rows_below), UNO_QUERY_THROW)
                ->getCellAddress();
        return sheets::cell_text(cell.Row, cell.Column);
    }
};

}  // namespace

TEST_CASE("what is typed into an added row counts, and the row goes again") {
    const NewJob made;
    const auto total = [&] { return made.job.named("catchment_area")->getValue(); };
    const double before = total();
    made.hand.select("Flow", made.at("surface_list_area", 4));  // the last
    REQUIRE(made.hand.pick("add-row").empty());
    made.job.named("surface_list_area", 0, 5)->setValue(500);
    made.job.named("surface_list_c", 0, 5)->setValue(0.5);
    CHECK(total() == Approx(before + 500));
    made.hand.select("Flow", made.at("surface_list_area", 5));
    REQUIRE(made.hand.pick("remove-row").empty());
    CHECK(made.hand.undoes() == "Remove a row");
    CHECK(total() == Approx(before));
    CHECK(is_protected(made.job, "Flow"));
    made.hand.undo();
    CHECK(total() == Approx(before + 500));
}

TEST_CASE("a point in an added row is in the file of points") {
    const NewJob made;
    const std::size_t before = sheets::set_points(made.job).points.size();
    made.hand.select("Points", made.at("further_point_x", 2));  // the last
    REQUIRE(made.hand.pick("add-row").empty());
    made.job.named("further_point_name", 0, 3)->setFormula("Manhole");
    made.job.named("further_point_x", 0, 3)->setValue(10);
    made.job.named("further_point_y", 0, 3)->setValue(5);
    made.job.named("further_point_height", 0, 3)->setValue(0.5);
    const sheets::NamedPoints points = sheets::set_points(made.job);
    REQUIRE(points.points.size() == before + 1);
    CHECK(points.points.back().name == "Manhole");
}

TEST_CASE("a row above the last takes what that holds with it, also for who looks at it from elsewhere") {
    const NewJob made;
    made.job.model()->getSheets()->insertNewByName("Own", 20);
    made.job.named("surface_list_area", 0, 4)->setValue(300);
    made.job.named("surface_list_c", 0, 4)->setValue(0.3);
    made.job.cell("Own", "A1")->setFormula(sheets::to_ustring("=$Flow." + made.at("surface_list_area", 4)));
    made.hand.select("Flow", made.at("surface_list_area", 4));
    REQUIRE(made.hand.pick("add-row").empty());
    CHECK(made.job.cell("Own", "A1")->getValue() == 300);
    CHECK(made.job.named("surface_list_area", 0, 4)->getValue() == 300);
    CHECK(made.job.named("surface_list_area", 0, 5)->getType() == css::table::CellContentType_EMPTY);
}

TEST_CASE("rows are refused with a sentence where none is to be added or taken") {
    const NewJob made;
    const auto refused = [&](const char* command, const std::string& sheet, const std::string& cells) {
        made.hand.select(sheet, cells);
        const std::string said = made.hand.pick(command);
        CHECK_FALSE(said.empty());
        return said;
    };
    CHECK(refused("add-row", "Job", "B7").find("in no list that grows") != std::string::npos);
    CHECK(refused("remove-row", "Site", "B7").find("in no list that grows") != std::string::npos);
    CHECK(refused("add-row", "Rain", made.at("storm_list_frequency")).find("in no list") !=
          std::string::npos);
    CHECK(
        refused("add-row", "Rain", made.at("agency_rain", 3)).find("is full: the sheets read its 61 rows") !=
        std::string::npos);
    CHECK(refused("remove-row", "Ground", made.at("plant_patch")).find("fewest rows") != std::string::npos);
    CHECK(refused("remove-row", "Record", made.at("hold_point_state")).find("template's own") !=
          std::string::npos);
    CHECK(refused("remove-row", "Flow", made.at("outlet_list_level", 3)).find("template's own") !=
          std::string::npos);
    made.job.model()->getSheets()->insertNewByName("Own", 20);
    made.job.cell("Own", "A1")->setFormula(sheets::to_ustring("=$Flow." + made.at("surface_list_area", 2)));
    CHECK(refused("remove-row", "Flow", made.at("surface_list_area", 2)).find("looks at this row alone") !=
          std::string::npos);
    CHECK(made.job.cell("Own", "A1")->getError() == 0);
    Reference<css::util::XProtectable>(made.job.sheet("Flow"), UNO_QUERY_THROW)->unprotect({});
    Reference<css::util::XProtectable>(made.job.sheet("Flow"), UNO_QUERY_THROW)->protect("secret");
    CHECK(refused("add-row", "Flow", made.at("surface_list_area")).find("protected with a password") !=
          std::string::npos);
    const Document blank = the_office().blank();
    const MenuHand other(the_office(), blank);
    CHECK(other.pick("add-row").find("in no list") != std::string::npos);
    CHECK(other.pick("next-open").find("not made from a template") != std::string::npos);
}

TEST_CASE("the menu goes from one open item to the next, and confirming takes it away") {
    const NewJob made;
    made.job.recalculate();
    made.hand.select("Site", "A1");
    REQUIRE(made.hand.pick("next-open").empty());
    CHECK(made.hand.selected() == "Site.G7");  // assumed: the template's level
    REQUIRE(made.hand.pick("next-open").empty());
    CHECK(made.hand.selected() == "Site.G8");
    made.hand.select("Site", "B7:B9");
    REQUIRE(made.hand.pick("confirm").empty());
    CHECK(made.hand.undoes() == "Confirm inputs");
    CHECK(made.hand.pick("confirm").find("No selected row has an input that stands as assumed") !=
          std::string::npos);
    made.hand.select("Site", "A1");
    REQUIRE(made.hand.pick("next-open").empty());
    CHECK(made.hand.selected() == "Site.G10");
    made.hand.undo();
    made.hand.select("Site", "A1");
    REQUIRE(made.hand.pick("next-open").empty());
    CHECK(made.hand.selected() == "Site.G7");
    // Behind the last one it goes on with the first.
    made.hand.select("Record", "A200");
    REQUIRE(made.hand.pick("next-open").empty());
    CHECK(made.hand.selected().substr(0, 7) != "Record.");
}

TEST_CASE("an added row that computes otherwise than its list is still told", "[audit]") {
    const Document job = the_office().open_copy(filled_job);
    const MenuHand hand(the_office(), job);
    const css::table::CellAddress area =
        Reference<css::sheet::XCellAddressable>(job.named("surface_list_reduced"), UNO_QUERY_THROW)
            ->getCellAddress();
    hand.select("Flow", sheets::cell_text(area.Row, area.Column));
    REQUIRE(hand.pick("add-row").empty());
    Reference<css::util::XProtectable>(job.sheet("Flow"), UNO_QUERY_THROW)->unprotect({});
    job.named("surface_list_reduced", 0, 1)->setFormula("=99");
    Reference<css::util::XProtectable>(job.sheet("Flow"), UNO_QUERY_THROW)->protect({});
    const std::string report = asked_audit(the_office(), job, "");
    INFO(report);
    CHECK(report.find("is not in the template; read the formulas") != std::string::npos);
}

}  // namespace undercroft::tests
