// Numbers shown otherwise than a function reads them, and tables in ranges too short for them.
#include "addin/audit/book/number_format.hpp"
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

using audit::NumberFormat;
using audit::ShownAs;

TEST_CASE("the unit that a number format writes") {
    for (const auto& [code, text] :
         std::vector<std::pair<std::string, std::string>>{{"0.00\" mm\"", "mm"},
                                                          {"# ##0.0\\ \\m", "m"},
                                                          {"[RED]0\" kN/m2\"", "kN/m2"},
                                                          {"0\" m\";-0\" ft\"", "m"},
                                                          {"\"L = \"0.0", ""},
                                                          {"\"L = \"0.0\" m\"", "m"},
                                                          {"0.00", ""},
                                                          {"", ""}}) {
        CAPTURE(code);
        CHECK(audit::text_behind(code) == text);
    }
}

TEST_CASE("the words that a number format writes, and when, in every country") {
    for (const auto& [code, words] : std::vector<std::pair<std::string, std::string>>{
             {"[=1]\"PASS\";[=0]\"FAIL\";0.00", "[=1]\"PASS\";[=0]\"FAIL\";"},
             {"[=0]\"PASS\";[=1]\"FAIL\";0,00", "[=0]\"PASS\";[=1]\"FAIL\";"},
             {"[=1]\\P\\A\\S\\S;0", "[=1]\"PASS\";"},
             {"[<0.5][RED]0.00\" m\"", "[<0.5]\"m\""},
             {"[<0,5][ROT]0,00\" m\"", "[<0.5]\"m\""},
             {"#,##0.00", ""},
             {"#.##0,00", ""},
             {"[=1]\"PASS", "[=1]\"PASS\""},
             {"[", ""},
             {"", ""}}) {
        CAPTURE(code);
        CHECK(audit::words_of_format(code) == words);
    }
}

TEST_CASE("the unit in a label or heading") {
    for (const auto& [label, unit] :
         std::vector<std::pair<std::string, std::string>>{{"Depth (mm)", "mm"},
                                                          {"Depth [mm] ", "mm"},
                                                          {"Depth in mm", "mm"},
                                                          {"Rain depth, in", "in"},
                                                          {"Flow (peak) (L/s)", "L/s"},
                                                          {"Depth", ""},
                                                          {"Depth (see note)", ""},
                                                          {"mm", ""},
                                                          {"(mm)", ""},
                                                          {"Put in place", ""},
                                                          {"Coefficient, -", ""},
                                                          {"", ""}}) {
        CAPTURE(label);
        CHECK(audit::unit_in_label(label).value_or("") == unit);
    }
}

namespace {

const audit::ReportFinding* format_finding(const Report& report, const std::string& cell) {
    return found(report, FindingKind::number_format, cell);
}

BookMaker lifts(const std::string& argument) {
    BookMaker maker;
    return maker.sheet("Pit").formula("F1", "=UC.LIFTS(" + argument + ";\"1 ft\")", 2.0);
}

}  // namespace

TEST_CASE("a percent cell beside %, or where a percentage is read") {
    BookMaker maker;
    maker.sheet("Stone").put("B5", 0.38).put("C5", "%");
    maker.formula("F1", "=UC.STONE.MASS(\"100 m3\";B5:C5;\"2650 kg/m3\";\"t\")", 264.0);
    CHECK(format_finding(audited(maker), "B5") == nullptr);
    BookMaker percent = maker;
    percent.shown_as("B5", {ShownAs::percent, {}});
    const Report report = audited(percent);
    const audit::ReportFinding* told = format_finding(report, "B5");
    REQUIRE(told != nullptr);
    CHECK_THAT(told->says,
               Catch::Contains("B5 is shown as 38 %, and with % beside it is read as 0.38 %: type 38"));
    CHECK(told->severity == audit::Severity::error);

    BookMaker soil;
    soil.sheet("Soil").put("B1", 0.95).shown_as("B1", {ShownAs::percent, {}});
    soil.formula("F1", "=UC.SOIL.GROUP(B1;85;60;30;12)", std::string("A-6"));
    REQUIRE(format_finding(audited(soil), "B1") != nullptr);
    BookMaker share;  // of a share a percent cell is what it should be
    share.sheet("Stone").put("B1", 0.38).shown_as("B1", {ShownAs::percent, {}});
    share.formula("F1", "=UC.STONE.MASS(\"100 m3\";B1;\"2650 kg/m3\";\"t\")", 164.0);
    CHECK(format_finding(audited(share), "B1") == nullptr);
}

TEST_CASE("times and dates used as numbers") {
    BookMaker maker;
    maker.sheet("Rain")
        .put("A1", "min")
        .put("B1", "mm/h")
        .put("A2", 5.0 / 1440)
        .put("B2", 100)
        .put("A3", 10.0 / 1440);
    maker.put("B3", 80).shown_as("A2", {ShownAs::time, {}}).shown_as("A3", {ShownAs::time, {}});
    maker.formula("F1", "=UC.RAIN.INTENSITY(A1:B3;\"7 min\";\"mm/h\")", 90.0);
    const Report report = audited(maker);
    for (const char* cell : {"A2", "A3"}) REQUIRE(format_finding(report, cell) != nullptr);
    CHECK_THAT(format_finding(report, "A2")->says, Catch::Contains("shown as the time 0:05"));
    BookMaker batter;
    batter.sheet("Pit").put("A1", 45000.0).shown_as("A1", {ShownAs::date, {}});
    batter.formula("F1", "=UC.PIT.VOLUME(\"30 m\";\"12 m\";\"1 m\";A1)", Error{503});
    REQUIRE(format_finding(audited(batter), "A1") != nullptr);
    CHECK_THAT(format_finding(audited(batter), "A1")->says, Catch::Contains("a slope as text such as 2H:1V"));
    BookMaker unused;  // a date that no function is given
    unused.sheet("Pit")
        .put("A1", 45000.0)
        .shown_as("A1", {ShownAs::date, {}})
        .formula("B1", "=A1+1", 45001.0);
    CHECK(format_finding(audited(unused), "A1") == nullptr);
}

TEST_CASE("a unit written by a number format") {
    const auto says = [](const std::string& unit) {
        BookMaker maker = lifts("B1");
        maker.put("B1", 2.0).shown_as("B1", {ShownAs::number, unit});
        const Report report = audited(maker);
        const audit::ReportFinding* told = format_finding(report, "B1");
        return told == nullptr ? std::string() : told->says;
    };
    CHECK_THAT(says("mm"),
               Catch::Contains("B1 is shown in mm by its number format, which no function sees") &&
                   Catch::Contains("it is read in m"));
    CHECK(says("m").empty());
    CHECK(says("").empty());
    CHECK(says("pcs.").empty());
    BookMaker pair = lifts("B1:C1");
    pair.put("B1", 2.0).put("C1", "m").shown_as("B1", {ShownAs::number, "mm"});
    REQUIRE(format_finding(audited(pair), "B1") != nullptr);
    CHECK_THAT(format_finding(audited(pair), "B1")->says, Catch::Contains("with m beside it is read in m"));
    pair.put("C1", "mm");
    CHECK(format_finding(audited(pair), "B1") == nullptr);
}

TEST_CASE("a unit in the label or the head that is not the one in which the bare number is read") {
    BookMaker maker = lifts("B1");
    maker.put("A1", "Thickness of fill (mm)").put("B1", 2.0);
    REQUIRE(format_finding(audited(maker), "B1") != nullptr);
    CHECK_THAT(format_finding(audited(maker), "B1")->says,
               Catch::Contains("B1 is called \"Thickness of fill (mm)\"") &&
                   Catch::Contains("it is read in m: write UC.QUANTITY(B1;\"mm\")"));
    maker.put("A1", "Thickness of fill (m)");
    CHECK(format_finding(audited(maker), "B1") == nullptr);
    maker.put("A1", "Thickness of fill (kg)");  // another kind of quantity: about something else
    CHECK(format_finding(audited(maker), "B1") == nullptr);
    BookMaker head = lifts("B3");
    head.put("B1", "Thickness, in").put("B2", 1.0).put("B3", 2.0);
    REQUIRE(format_finding(audited(head), "B3") != nullptr);
    BookMaker table;
    table.sheet("Rain").put("A1", "Duration (h)").put("B1", "Intensity (mm/h)").put("A2", 5).put("B2", 100);
    table.put("A3", 10).put("B3", 80).formula("F1", "=UC.RAIN.INTENSITY(A2:B3;\"7 min\";\"mm/h\")", 90.0);
    CHECK(format_finding(audited(table), "A2") != nullptr);
    CHECK(format_finding(audited(table), "B2") == nullptr);
    BookMaker with_units = table;  // the function is given the headings, and reads the units
    with_units.formula("F1", "=UC.RAIN.INTENSITY(A1:B3;\"7 min\";\"mm/h\")", 90.0);
    CHECK(format_finding(audited(with_units), "A2") == nullptr);
}

TEST_CASE("a table in a range that is too short for it") {
    const std::string rational =
        "=UC.HYDROGRAPH.RATIONAL(0.9;\"1 ha\";\"50 mm/h\";\"20 min\";\"10 min\";B1:C1)";  // 7 rows of values
    const auto told = [&](const std::string& range) {
        BookMaker maker;
        maker.sheet("Flow").put("B1", 5.0).put("C1", "min").array(range, rational, 1.0);
        const Report report = audited(maker);
        const audit::ReportFinding* finding = found(report, FindingKind::cut_table, "E1");
        return finding == nullptr ? std::string() : finding->says;
    };
    CHECK_THAT(told("E1:F6"), Catch::StartsWith("7 rows, 5 shown: the range is too short for the table"));
    CHECK(told("E1:F8").empty());
    CHECK(told("E1:F20").empty());
    BookMaker one_cell;
    one_cell.sheet("Flow").put("B1", 5.0).put("C1", "min").formula("E1", rational, std::string("min"));
    CHECK(found(audited(one_cell), FindingKind::cut_table, "E1") != nullptr);
    BookMaker nested;
    nested.sheet("Flow").put("B1", 5.0).put("C1", "min");
    nested.formula("E1", "=UC.LARGEST(INDEX(" + rational.substr(1) + ";0;2);\"L/s\")", 125.0);
    CHECK(found(audited(nested), FindingKind::cut_table, "E1") == nullptr);
}

TEST_CASE("the reason of an error follows what IF and INDEX take") {
    BookMaker maker;
    maker.sheet("Pit").put("A1", 1.0).put("B1", "m").put("A2", 2.0).put("B2", "kg");
    maker.formula("F1", "=UC.LIFTS(INDEX(A1:B2;2;0);\"1 m\")", Error{519});
    maker.formula("F2", "=IF(A1=1;UC.LIFTS(OFFSET(A1:B1;1;0);\"1 m\");0)", Error{519});
    maker.formula("F3", "=UC.LIFTS(G9;\"1 m\")", Error{503});
    const Report report = audited(maker);
    for (const char* cell : {"F1", "F2"}) {
        CAPTURE(cell);
        REQUIRE(found(report, FindingKind::error, cell) != nullptr);
        CHECK_THAT(found(report, FindingKind::error, cell)->says, Catch::Contains("2 kg is a mass"));
    }
    REQUIRE(found(report, FindingKind::error, "F3") != nullptr);
    CHECK_THAT(found(report, FindingKind::error, "F3")->says,
               Catch::Contains("thickness: the cell is blank (G9)"));
}

}  // namespace undercroft::tests
