// What is measured in a running Calc:
//   calc_bench functions EXTENSIONS          our function, one that does nothing, a Basic and a Python one
//   calc_bench job EXTENSIONS WORKBOOK       full recalculation with our functions and with constants for
//   them calc_bench takeoff EXTENSIONS FOLDER     lists of 1,000 to 100,000 rows: fill, recalculate, save,
//   load
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/script/XLibraryContainer.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <cmath>
#include <iostream>
#include <map>

#include "sheets/office/office.hpp"
#include "tests/bench/paired.hpp"

namespace undercroft::bench {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using sheets::Document;
using sheets::Office;
using sheets::to_ustring;
using sheets::to_utf8;

Reference<css::table::XCellRange> range_of(const Document& document, const std::string& address) {
    return document.sheet(document.sheet_names().front())->getCellRangeByName(to_ustring(address));
}

std::string rows_of(const std::string& first, const std::string& last, int rows) {
    return first + "1:" + last + std::to_string(rows);
}

template <class Cell>
void fill(const Document& document, const std::string& address, int rows, int columns, const Cell& cell) {
    Sequence<Sequence<Any>> data(rows);
    for (int r = 0; r < rows; ++r) {
        Sequence<Any> row(columns);
        for (int c = 0; c < columns; ++c) row.getArray()[c] = cell(r, c);
        data.getArray()[r] = row;
    }
    Reference<css::sheet::XCellRangeData>(range_of(document, address), UNO_QUERY_THROW)->setDataArray(data);
}

/// A formula in the first row of a column, filled down as a person does.
void fill_down(const Document& document, const std::string& column, int rows, const std::string& formula) {
    document.cell(document.sheet_names().front(), column + "1")->setFormula(to_ustring(formula));
    Reference<css::sheet::XCellSeries>(range_of(document, rows_of(column, column, rows)), UNO_QUERY_THROW)
        ->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1);
}

/// Areas, thicknesses and densities, each with its unit beside it; the unit of the result in H1, results in
/// G.
void fill_masses(const Document& document, int rows, const std::string& function) {
    static const char* units[] = {"m2", "mm", "kg/m3"};
    fill(document, rows_of("A", "F", rows), rows, 6, [](int r, int c) {
        if (c % 2 == 1) return Any(to_ustring(units[c / 2]));
        return Any(c == 0 ? 100.0 + r : c == 2 ? 1.5 + r % 7 : 940.0);
    });
    document.cell(document.sheet_names().front(), "H1")->setFormula(to_ustring("kg"));
    fill_down(document, "G", rows, "=" + function + "(A1:B1;C1:D1;E1:F1;$H$1)");
}

double last_mass(const Document& document, int rows) {
    return document.cell(document.sheet_names().front(), "G" + std::to_string(rows))->getValue();
}

constexpr const char* basic_source = R"(
Function SiFactor(unit As String) As Double
    Select Case unit
        Case "m2", "m", "kg/m3", "kg" : SiFactor = 1
        Case "mm" : SiFactor = 0.001
        Case "t" : SiFactor = 1000
    End Select
End Function

Function BenchBasic(area, thickness, density, unit)
    a = area(1, 1) * SiFactor(area(1, 2))
    t = thickness(1, 1) * SiFactor(thickness(1, 2))
    rho = density(1, 1) * SiFactor(density(1, 2))
    If a < 0 Or t <= 0 Or rho <= 0 Then Error 5
    BenchBasic = a * t * rho / SiFactor(unit)
End Function
)";

/// A new document that may run the Basic function in it.
Document blank_with_basic(const Office& office) {
    Sequence<css::beans::PropertyValue> how(1);
    how.getArray()[0].Name = "MacroExecutionMode";
    how.getArray()[0].Value <<= sal_Int16(4);  // always, without a question
    const Reference<css::sheet::XSpreadsheetDocument> document(
        css::frame::Desktop::create(office.context())
            ->loadComponentFromURL(to_ustring("private:factory/scalc"), "_blank", 0, how),
        UNO_QUERY_THROW);
    const Reference<css::beans::XPropertySet> properties(document, UNO_QUERY_THROW);
    const Reference<css::script::XLibraryContainer> libraries(properties->getPropertyValue("BasicLibraries"),
                                                              UNO_QUERY_THROW);
    if (!libraries->hasByName("Standard")) libraries->createLibrary("Standard");
    libraries->loadLibrary("Standard");
    const Reference<css::container::XNameContainer> library(libraries->getByName("Standard"),
                                                            UNO_QUERY_THROW);
    library->insertByName("Bench", Any(to_ustring(basic_source)));
    return Document(document);
}

void check_mass(const Document& document, int rows, double wanted) {
    const double got = last_mass(document, rows);
    if (!(std::abs(got - wanted) <= 1e-9 * wanted))
        throw std::runtime_error("a mass of " + std::to_string(got) + " where " + std::to_string(wanted) +
                                 " is wanted");
}

double mass_of_row(int rows) {
    return (100.0 + rows - 1) * (1.5 + (rows - 1) % 7) * 1e-3 * 940;
}

void compare_functions(const Office& office) {
    constexpr int rows = 100000;
    constexpr int few = 10000;
    const Document ours = office.blank();
    fill_masses(ours, rows, "UC.LINER.MASS");
    check_mass(ours, rows, mass_of_row(rows));
    {
        const Document nothing = office.blank();
        fill_masses(nothing, rows, "BENCH.NOTHING");
        check_mass(nothing, rows, 1);
        const Paired times = paired(
            11, [&] { ours.recalculate(); }, [&] { nothing.recalculate(); });
        report("function.ours.s", median(times.a));
        report("function.nothing.s", median(times.b));
        report("function.ratio", times.ratio(), "%.3f");
    }
    const Document ours_few = office.blank();
    fill_masses(ours_few, few, "UC.LINER.MASS");
    const auto against = [&](const std::string& name, const Document& other, const std::string& function) {
        fill_masses(other, few, function);
        check_mass(other, few, mass_of_row(few));
        const Paired times = paired(
            7, [&] { other.recalculate(); }, [&] { ours_few.recalculate(); });
        report(name + ".ratio", times.ratio());
        report(name + ".us", median(times.a) / few * 1e6);
    };
    against("basic", blank_with_basic(office), "BENCHBASIC");
    const Document python = office.blank();
    against("python", python, "BENCH.SCRIPTED");
    const Document nothing_few = office.blank();
    fill_masses(nothing_few, few, "BENCH.NOTHING");
    {
        const Document checked = office.blank();
        against("checked", checked, "BENCH.CHECKED");
    }
    report("python.nothing.ratio", paired(
                                       7, [&] { python.recalculate(); }, [&] { nothing_few.recalculate(); })
                                       .ratio());
}

/// Replaces each formula that calls a function of ours by what it shows. \return how many
int replace_ours(const Document& document) {
    int replaced = 0;
    for (const std::string& name : document.sheet_names()) {
        const auto sheet = document.sheet(name);
        Reference<css::util::XProtectable>(sheet, UNO_QUERY_THROW)->unprotect({});
        const Reference<css::sheet::XCellRangesQuery> query(sheet, UNO_QUERY_THROW);
        const auto ranges =
            query
                ->queryFormulaCells(css::sheet::FormulaResult::VALUE | css::sheet::FormulaResult::STRING |
                                    css::sheet::FormulaResult::ERROR)
                ->getRangeAddresses();
        for (const auto& range : ranges) {
            for (sal_Int32 row = range.StartRow; row <= range.EndRow; ++row) {
                for (sal_Int32 column = range.StartColumn; column <= range.EndColumn; ++column) {
                    const auto cell = sheet->getCellByPosition(column, row);
                    if (to_utf8(cell->getFormula()).find("UC.") == std::string::npos) continue;
                    const auto cursor = sheet->createCursorByRange(Reference<css::sheet::XSheetCellRange>(
                        sheet->getCellRangeByPosition(column, row, column, row), UNO_QUERY_THROW));
                    const bool array = !Reference<css::sheet::XArrayFormulaRange>(cursor, UNO_QUERY_THROW)
                                            ->getArrayFormula()
                                            .isEmpty();
                    if (array) cursor->collapseToCurrentArray();
                    const Reference<css::sheet::XCellRangeData> data(cursor, UNO_QUERY_THROW);
                    const auto values = data->getDataArray();
                    if (array)
                        Reference<css::sheet::XArrayFormulaRange>(cursor, UNO_QUERY_THROW)
                            ->setArrayFormula({});
                    data->setDataArray(values);
                    ++replaced;
                }
            }
        }
    }
    return replaced;
}

void compare_job(const Office& office, const std::filesystem::path& workbook) {
    const Document ours = office.open_copy(workbook);
    const Document constants = office.open_copy(workbook);
    ours.recalculate();
    report("job.formulas", replace_ours(constants), "%.0f");
    const Paired times = paired(
        15, [&] { ours.recalculate(); }, [&] { constants.recalculate(); });
    report("job.ours.ms", median(times.a) * 1e3);
    report("job.constants.ms", median(times.b) * 1e3);
    report("job.more.ms", times.difference() * 1e3);
    report("job.ratio", times.ratio());
}

/// Items: net quantity with its unit, waste, pack with its unit; a function of ours orders whole packs.
void measure_takeoff(const Office& office, const std::filesystem::path& folder) {
    std::map<std::string, double> per_row;
    for (const int rows : {1000, 10000, 100000}) {
        std::map<std::string, std::vector<double>> times;
        const std::filesystem::path file = folder / ("takeoff-" + std::to_string(rows) + ".ods");
        for (int round = 0; round < (rows > 10000 ? 3 : 7); ++round) {
            const Document list = office.blank();
            times["fill"].push_back(seconds([&] {
                fill(list, rows_of("A", "E", rows), rows, 5, [](int r, int c) {
                    switch (c) {
                        case 0:
                            return Any(10.0 + r % 97);
                        case 1:
                            return Any(to_ustring("m3"));
                        case 2:
                            return Any(0.05);
                        case 3:
                            return Any(20.0);
                        default:
                            return Any(to_ustring("m3"));
                    }
                });
                fill_down(list, "F", rows, "=UC.ORDER(A1:B1;C1;D1:E1;\"m3\")");
            }));
            for (int i = 0; i < 3; ++i) times["recalc"].push_back(seconds([&] { list.recalculate(); }));
            times["save"].push_back(seconds([&] { list.store(file); }));
            times["load"].push_back(seconds([&] { (void)office.open(file); }));
        }
        for (const auto& [what, all] : times) {
            const double each = median(all) / rows;
            const std::string key = "takeoff." + std::to_string(rows) + "." + what;
            report(key + ".s", median(all));
            if (rows == 1000) per_row[what] = each;
            report(key + ".linear", each / per_row[what]);
        }
    }
}

int run(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    if (argc < 3) throw std::runtime_error("usage: calc_bench functions|job|takeoff EXTENSIONS [PATH]");
    const Office office(argv[2]);
    if (what == "functions") compare_functions(office);
    if (what == "job" && argc > 3) compare_job(office, argv[3]);
    if (what == "takeoff" && argc > 3) measure_takeoff(office, argv[3]);
    return 0;
}

}  // namespace

}  // namespace undercroft::bench

int main(int argc, char** argv) try {
    return undercroft::bench::run(argc, argv);
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
} catch (const com::sun::star::uno::Exception& error) {
    std::cerr << undercroft::sheets::to_utf8(error.Message) << "\n";
    return 1;
}
