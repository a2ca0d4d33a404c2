// Workbooks of ours, and files written and read again.
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/FunctionArgument.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XFunctionDescriptions.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>

#include "addin/catalogue/catalogue.hpp"
#include "sheets/builder/worked_examples.hpp"
#include "tests/office/desk.hpp"
#include "tests/office/menu_hand.hpp"
#include "tests/support/files.hpp"

namespace undercroft::tests {

namespace {
namespace fs = std::filesystem;

const char* template_names[] = {"storage",    "excavation", "takeoff",   "storage-us",   "excavation-us",
                                "takeoff-us", "reuse",      "reuse-us",  "options",      "options-us",
                                "release",    "release-us", "whole-job", "whole-job-us", "worked-examples"};

fs::path in_templates(const std::string& name) {
    return fs::path(TEMPLATES_FOLDER) / name;
}

}  // namespace

TEST_CASE(
    "every function is in Calc's list with its description, every argument with its own and its default "
    "unit") {
    const auto context = the_office().context();
    Desk desk;
    desk.put("A1", "=UC.VERSION()");  // arguments are described once the component is loaded
    const css::uno::Reference<css::sheet::XFunctionDescriptions> list(
        context->getServiceManager()->createInstanceWithContext("com.sun.star.sheet.FunctionDescriptions",
                                                                context),
        css::uno::UNO_QUERY_THROW);
    std::map<std::string, css::uno::Sequence<css::beans::PropertyValue>> found;
    for (sal_Int32 i = 0; i < list->getCount(); ++i) {
        css::uno::Sequence<css::beans::PropertyValue> properties;
        list->getByIndex(i) >>= properties;
        for (const auto& property : properties)
            if (property.Name == "Name")
                found[sheets::to_utf8(property.Value.get<rtl::OUString>())] = properties;
    }
    for (const addin::Function& function : addin::all_functions()) {
        CAPTURE(function.name);
        REQUIRE(found.count(function.name) == 1);
        css::uno::Sequence<css::sheet::FunctionArgument> arguments;
        std::string description;
        for (const auto& property : found[function.name]) {
            if (property.Name == "Arguments") property.Value >>= arguments;
            if (property.Name == "Description")
                description = sheets::to_utf8(property.Value.get<rtl::OUString>());
        }
        CHECK_THAT(description, Catch::StartsWith(function.says));
        REQUIRE(arguments.getLength() == static_cast<sal_Int32>(function.parameters.size()));
        for (sal_Int32 i = 0; i < arguments.getLength(); ++i) {
            const addin::Parameter& parameter = function.parameters[static_cast<std::size_t>(i)];
            const std::string name = sheets::to_utf8(arguments[i].Name);
            CAPTURE(name);
            CHECK_THAT(name, Catch::StartsWith(parameter.name));
            const std::string unit = parameter.unit() == "1" ? "-" : parameter.unit();
            if (!unit.empty()) CHECK_THAT(name, Catch::EndsWith("[" + unit + "]"));
            CHECK_THAT(sheets::to_utf8(arguments[i].Description), Catch::StartsWith(parameter.says));
        }
    }
}

TEST_CASE("every template opens without an error cell, computes and prints") {
    for (const char* name : template_names) {
        CAPTURE(name);
        const sheets::Document document = the_office().open(in_templates(std::string(name) + ".ots"));
        document.recalculate();
        for (const sheets::CellError& error : sheets::errors_of(document))
            FAIL_CHECK(error.cell << " shows " << error.shows << ": " << error.reason);
        const fs::path pdf = scratch(std::string(name) + ".pdf");
        document.store(pdf);
        CHECK(fs::file_size(pdf) > 10000);
    }
}

TEST_CASE("every worked example agrees in Calc as it does in the core") {
    const sheets::Document document = the_office().open(in_templates("worked-examples.ots"));
    document.recalculate();
    const auto sheet = document.sheet("Examples");
    int rows = 0;
    for (sal_Int32 row = 4; row < 2000; ++row) {
        const auto number = sheet->getCellByPosition(0, row);
        if (number->getValue() < 1) continue;
        ++rows;
        INFO(sheets::shown(sheet->getCellByPosition(1, row)));
        CHECK(sheet->getCellByPosition(6, row)->getValue() == 1);
        CHECK(sheet->getCellByPosition(6, row)->getError() == 0);
    }
    const auto examples = sheets::read_worked_examples(file_text("sheets/worked-examples.txt"));
    CHECK(rows == static_cast<int>(examples.rows.size()));
}

TEST_CASE("a check that must fail fails, and says what it compared") {
    const sheets::Document document = the_office().open(in_templates("storage.ots"));
    document.recalculate();
    const double open_before = document.named("storage_open")->getValue();
    document.named("site_layer_height", 0, 2)->setValue(100);
    document.recalculate();
    CHECK(document.named("cover_stone_deep")->getValue() == 0);
    CHECK(sheets::shown(document.named("cover_stone_deep")) == "FAIL");
    CHECK(document.named("storage_open")->getValue() == open_before + 1);
    CHECK_THAT(sheets::shown(document.cell("Storage", "A3")), Catch::Contains("1 of 8 checks fail"));
    const css::uno::Reference<css::sheet::XCellAddressable> check(document.named("cover_stone_deep"),
                                                                  css::uno::UNO_QUERY_THROW);
    const auto note = document.sheet("Storage")->getCellByPosition(check->getCellAddress().Column + 2,
                                                                   check->getCellAddress().Row);
    CHECK_THAT(sheets::shown(note), Catch::StartsWith("100 mm < 152 mm: short by 52 mm; "));
    document.named("least_cover_stone")->setFormula("");
    CHECK(sheets::shown(document.named("cover_stone_deep")) == "open: limit not given");
    document.named("least_cover_stone")->setValue(0);
    CHECK(sheets::shown(document.named("cover_stone_deep")) == "open: limit not given");
    document.named("least_cover_stone")->setValue(152);
    document.named("site_layer_height", 1, 2)->setFormula("in");
    CHECK(document.named("cover_stone_deep")->getValue() == 1);  // 100 in is deep enough
    document.named("site_layer_height", 1, 2)->setFormula("kg");
    CHECK(document.named("cover_stone")->getError() == value_error);
    CHECK(document.named("cover_stone_deep")->getError() != 0);
    CHECK_THAT(sheets::shown(document.cell("Storage", "A3")), Catch::Contains("cells that show an error: "));
}

TEST_CASE("beside every row that shows an error stands its reason, down to where it begins") {
    const sheets::Document document = the_office().open(in_templates("whole-job.ots"));
    document.named("chamber_span", 1)->setFormula("kg");
    document.recalculate();
    const auto reason_column = [](const css::uno::Reference<css::sheet::XSpreadsheet>& sheet) {
        sal_Int32 column = 0;
        while (column < 40 && !sheets::shown(sheet->getCellByPosition(column, 3)).starts_with("Reason"))
            ++column;
        return column;
    };
    int beside = 0;
    for (const sheets::CellError& error : sheets::errors_of(document)) {  // of a table its first row
        const std::string name = error.cell.substr(0, error.cell.find('.'));
        const std::string address = error.cell.substr(error.cell.find('.') + 1);
        const auto sheet = document.sheet(name);
        const sal_Int32 column = reason_column(sheet);
        if (column == 40) continue;  // the tables behind charts and pictures
        const css::uno::Reference<css::sheet::XCellRangeAddressable> cell(
            sheet->getCellRangeByName(sheets::to_ustring(address)), css::uno::UNO_QUERY_THROW);
        INFO(error.cell << " shows " << error.shows);
        const std::string reason =
            sheets::shown(sheet->getCellByPosition(column, cell->getRangeAddress().StartRow));
        CHECK_THAT(reason, Catch::Contains("1070 kg is a mass"));
        ++beside;
    }
    CHECK(beside > 40);
}

TEST_CASE("an entry that cannot be right is counted on its own sheet, whatever the checks say") {
    const sheets::Document document = the_office().open(in_templates("whole-job.ots"));
    const auto state = [&](const char* sheet) { return sheets::shown(document.cell(sheet, "A3")); };
    CHECK_THAT(state("Site"), Catch::StartsWith("assumed: "));

    document.named("fabric_opening")->setValue(-0.18);
    CHECK_THAT(state("Site"), Catch::Contains("impossible: 1; "));
    document.named("bed_lined")->setFormula("yess");
    CHECK_THAT(state("Site"), Catch::Contains("impossible: 1; not in the list: 1; "));
    CHECK(document.named("uplift_held")->getError() != 0);
    document.named("fabric_opening")->setValue(0.18);
    document.named("bed_lined")->setFormula("no");
    document.named("groundwater_level")->setValue(-4);  // below the datum
    CHECK_THAT(state("Site"), !Catch::Contains("impossible"));

    document.named("bearing_by")->setFormula("guess");
    CHECK(document.named("subgrade_bears")->getError() != 0);
    document.named("plant_impact")->setValue(0.5);  // a factor takes nothing away
    CHECK_THAT(state("Ground"), Catch::Contains("impossible: 1; "));
    document.named("plant_impact")->setValue(1);
    document.named("carry_persons")->setValue(-2);
    CHECK_THAT(state("Ground"), Catch::Contains("impossible: 1; "));
    document.named("carry_persons")->setFormula("two");
    CHECK_THAT(state("Ground"), Catch::Contains("impossible: 1; "));
    document.named("carry_persons")->setValue(9);  // the method knows teams of three at most
    CHECK_THAT(state("Ground"), Catch::Contains("impossible: 1; "));
    document.named("carry_persons")->setValue(2);
    document.named("plant_impact")->setValue(5);  // more than plant does, but it can be
    CHECK_THAT(state("Ground"), Catch::Contains("unusual: 1; "));
    CHECK_THAT(state("Ground"), !Catch::Contains("impossible"));
}

TEST_CASE("a new workbook has nothing unusual or impossible, and the cursor on its first entry") {
    for (const char* name : {"whole-job", "whole-job-us", "storage", "storage-us", "excavation-us",
                             "takeoff-us", "reuse-us", "options", "options-us", "release-us"}) {
        CAPTURE(name);
        const sheets::Document document = the_office().open(in_templates(std::string(name) + ".ots"));
        const std::string state = sheets::shown(document.cell("Job", "A3"));
        CHECK_THAT(state, !Catch::Contains("unusual") && !Catch::Contains("impossible") &&
                              !Catch::Contains("not in the list"));
        CHECK(MenuHand(the_office(), document).selected() == "Job.G7");
    }
}

TEST_CASE("a workbook without the sheets that a job does not need says what the whole job says") {
    const std::string folder = std::string(JOBS_FOLDER) + "/field-infiltration/";
    const sheets::Document whole = the_office().open_copy(folder + "whole-job.ods");
    const sheets::Document design = the_office().open_copy(folder + "design.ods");
    CHECK(design.sheet_names().size() + 5 == whole.sheet_names().size());
    const auto names = [](const sheets::Document& document) {
        const css::uno::Reference<css::container::XNameAccess> all(
            css::uno::Reference<css::beans::XPropertySet>(document.model(), css::uno::UNO_QUERY_THROW)
                ->getPropertyValue("NamedRanges"),
            css::uno::UNO_QUERY_THROW);
        return all->getElementNames();
    };
    std::size_t numbers = 0;
    for (const rtl::OUString& name : names(design)) {
        const std::string key = sheets::to_utf8(name);
        CAPTURE(key);
        REQUIRE(whole.has_name(key));
        const auto cell = design.named(key);
        CHECK(cell->getError() == whole.named(key)->getError());
        if (key == "job_open" || cell->getError() != 0) continue;  // it counts its own sheets
        CHECK(cell->getValue() == whole.named(key)->getValue());
        numbers += cell->getValue() != 0 ? 1 : 0;
    }
    CHECK(numbers > 300);
}

TEST_CASE("a job that is opened is not changed by that: closing it asks nothing") {
    const sheets::Document document = the_office().open_copy(filled_job);
    const css::uno::Reference<css::util::XModifiable> model(document.model(), css::uno::UNO_QUERY_THROW);
    CHECK(model->isModified() == 0);
    document.named("row_gap")->setValue(161);
    CHECK(model->isModified() != 0);
}

TEST_CASE("a number that is shown as a percentage or a date is impossible, whatever its size") {
    const sheets::Document document = the_office().open(in_templates("whole-job-us.ots"));
    const css::uno::Reference<css::util::XNumberFormatsSupplier> supplier(document.model(),
                                                                          css::uno::UNO_QUERY_THROW);
    const auto typed = [&](const char* key, double number, const char* format, int row = 0) {
        const css::lang::Locale english("en", "US", {});
        auto shown = supplier->getNumberFormats()->queryKey(sheets::to_ustring(format), english, false);
        if (shown < 0) shown = supplier->getNumberFormats()->addNew(sheets::to_ustring(format), english);
        const css::uno::Reference<css::beans::XPropertySet> cell(document.named(key, 0, row),
                                                                 css::uno::UNO_QUERY_THROW);
        cell->setPropertyValue("NumberFormat", css::uno::Any(shown));
        document.named(key, 0, row)->setValue(number);  // as what is typed does, after its look
    };
    const auto state = [&](const char* sheet) { return sheets::shown(document.cell(sheet, "A3")); };
    typed("surface_level", 0.4, "0.00%");  // 40% in a row of feet
    CHECK_THAT(state("Site"), Catch::Contains("impossible: 1; "));
    const auto note = document.sheet("Site")->getCellByPosition(8, 7);
    CHECK(sheets::shown(note) == "impossible: -1640 to 29500 ft or 0, not shown as % or date (Ctrl+M)");
    typed("surface_level", 328.5, "General");
    CHECK_THAT(state("Site"), !Catch::Contains("impossible"));
    typed("stone_porosity", 40, "0.00%");  // 4000%
    CHECK_THAT(state("Site"), Catch::Contains("impossible: 1; "));
    typed("stone_porosity", 40, "General");
    typed("surface_list_c", 0.9, "0.00%", 1);
    CHECK_THAT(state("Flow"), Catch::Contains("impossible: 1; "));
    typed("surface_list_c", 0.9, "General", 1);
    CHECK_THAT(state("Flow"), !Catch::Contains("impossible"));
    typed("outlet_list_level", 0.00347, "HH:MM:SS AM/PM");  // 0:05
    CHECK_THAT(state("Flow"), Catch::Contains("impossible: 1; "));
}

TEST_CASE("an input of the template is assumed until it is typed over or marked") {
    const sheets::Document document = the_office().open(in_templates("whole-job.ots"));
    const css::uno::Reference<css::sheet::XCellAddressable> input(document.named("row_gap"),
                                                                  css::uno::UNO_QUERY_THROW);
    const auto at = input->getCellAddress();
    const auto site = document.sheet("Site");
    const auto note = [&] { return sheets::shown(site->getCellByPosition(8, at.Row)); };
    CHECK(note() == "assumed");
    site->getCellByPosition(12, at.Row)->setFormula("x");
    CHECK(note().empty());
    site->getCellByPosition(12, at.Row)->setFormula("");
    document.named("row_gap")->setValue(160);
    CHECK(note().empty());
    document.named("row_gap")->setFormula("");
    CHECK(note() == "to give");
    document.named("row_gap")->setValue(0);
    CHECK(note() == "to give");
    document.named("row_gap")->setValue(1500);
    CHECK(note() == "unusual: usual is 50 to 1000 mm");
    document.named("row_gap", 1)->setFormula("m");
    CHECK_THAT(note(), Catch::StartsWith("impossible: "));
    document.named("row_gap", 1)->setFormula("kg");
    CHECK_THAT(note(), Catch::StartsWith("impossible: "));
    CHECK_THAT(sheets::shown(document.cell("Job", "A3")), Catch::StartsWith("Not ready for checking - "));
}

TEST_CASE("a hold point is released by somebody and on a day") {
    const sheets::Document document = the_office().open(in_templates("whole-job.ots"));
    const double all = document.named("holds_open")->getValue();
    CHECK(all == 17);
    document.named("hold_point_state")->setFormula("done");  // of the first
    CHECK(document.named("holds_open")->getValue() == all);
    document.named("hold_point_released")->setFormula("A. Engineer");
    document.named("hold_point_date")->setFormula("2026-11-03");
    CHECK(document.named("holds_open")->getValue() == all - 1);
    document.named("hold_point_state")->setFormula("");
    CHECK(document.named("holds_open")->getValue() == all);
}

TEST_CASE("a number below 0 shows its sign, whatever its size") {
    const sheets::Document document = the_office().open(in_templates("storage.ots"));
    const auto required = document.named("storage_required");
    const auto spare = document.named("storage_spare");
    const double held = spare->getValue() + required->getValue();
    const std::pair<double, const char*> expected[] = {{-5.25, "-5.250"},        {-77.5, "-77.500"},
                                                       {-43210.5, "-43210.500"}, {5.25, "5.250"},
                                                       {77.5, "77.50"},          {-0.25, "-0.250"}};
    for (const auto& [wanted, text] : expected) {
        required->setValue(held - wanted);
        document.recalculate();
        CHECK(spare->getValue() == Approx(wanted));
        CHECK(sheets::shown(spare) == text);
    }
}

TEST_CASE("SI and US templates are the same job when their inputs are") {
    const sheets::Document si = the_office().open(in_templates("excavation.ots"));
    const sheets::Document us = the_office().open(in_templates("excavation-us.ots"));
    const auto take_over = [&](const char* key, int row = 0) {
        us.named(key, 0, row)->setValue(si.named(key, 0, row)->getValue());
        us.named(key, 1, row)->setFormula(si.named(key, 1, row)->getFormula());
    };
    for (const char* key : {"bed_length", "bed_width", "chamber_rise", "ground_level", "surface_level"})
        take_over(key);
    for (const int layer : {0, 2, 3, 4, 8}) take_over("site_layer_height", layer);
    us.recalculate();
    CHECK(sheets::shown(us.named("pit_volume", 1)) == "yd3");
    CHECK(us.named("pit_volume")->getValue() * 27 * 0.3048 * 0.3048 * 0.3048 ==
          Approx(si.named("pit_volume")->getValue()).epsilon(1e-12));
}

TEST_CASE("formulas and values survive .ods, .fods and .xlsx") {
    for (const char* ending : {".ods", ".fods", ".xlsx"}) {
        CAPTURE(ending);
        const fs::path path = scratch(std::string("round-trip") + ending);
        double before = 0;
        {
            Desk desk;
            desk.put("A1", 305)
                .put("B1", "mm")
                .put("C1", "=UC.PIT.VOLUME(30;\"12 m\";A1:B1;\"1.5H:1V\")")
                .put("C2", "=UC.WHY(C1)");
            before = desk.number("C1");
            desk.document().store(path);
        }
        const sheets::Document document = the_office().open(path);
        CHECK(document.cell("Sheet1", "C1")->getValue() ==
              Approx(before).epsilon(1e-14));  // .xlsx keeps 15 digits
        CHECK_THAT(sheets::to_utf8(document.cell("Sheet1", "C1")->getFormula()),
                   Catch::Contains("UNDERCROFT.UC.PITVOLUME"));
        document.cell("Sheet1", "A1")->setValue(610);
        CHECK(document.cell("Sheet1", "C1")->getValue() > 2 * before);
        CHECK_THAT(sheets::shown(document.cell("Sheet1", "C2")), Catch::Contains("610 mm"));
    }
}

TEST_CASE("a stale value in a file is computed anew when the file is opened") {
    const fs::path path = scratch("stale.fods");
    {
        Desk desk;
        desk.put("A1", "=UC.LIFTS(\"900 mm\";\"300 mm\")");
        desk.document().store(path);
    }
    std::string text;
    {
        std::ifstream file(path);
        text.assign(std::istreambuf_iterator<char>(file), {});
    }
    const std::string fresh = "office:value=\"3\"";
    REQUIRE(text.find(fresh) != std::string::npos);
    text.replace(text.find(fresh), fresh.size(), "office:value=\"99\"");
    std::ofstream(path) << text;
    const sheets::Document document = the_office().open(path);
    CHECK(document.cell("Sheet1", "A1")->getValue() == 3);
}

}  // namespace undercroft::tests
