// Sheets that an engineer builds from nothing: tables in ranges too short for them, and cells that are shown
// otherwise than a function reads them.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

constexpr const char* hydrograph =
    "=UC.HYDROGRAPH.RATIONAL(0.9;\"1 ha\";\"50 mm/h\";\"20 min\";\"10 min\";\"5 min\")";  // 7 rows of values

void show_as(const Desk& desk, const std::string& address, const std::string& code) {
    const css::uno::Reference<css::util::XNumberFormatsSupplier> supplier(desk.document().model(),
                                                                          css::uno::UNO_QUERY_THROW);
    const css::lang::Locale english("en", "US", "");
    const rtl::OUString text = sheets::to_ustring(code);
    sal_Int32 key = supplier->getNumberFormats()->queryKey(text, english, false);
    if (key == -1) key = supplier->getNumberFormats()->addNew(text, english);
    const css::uno::Reference<css::beans::XPropertySet> cell(
        desk.document().cell(desk.document().sheet_names().front(), address), css::uno::UNO_QUERY_THROW);
    cell->setPropertyValue("NumberFormat", css::uno::Any(key));
}

}  // namespace

TEST_CASE("UC.WHOLE and UC.WHY tell of a table in a range too short for it") {
    Desk desk;
    desk.put_array("A1:B8", hydrograph).put("D1", "=UC.WHOLE(A1:B8)");
    CHECK(desk.number("D1") == 1);
    CHECK(desk.why("D1") == "7 rows, 7 shown");
    CHECK_THAT(desk.why("B3"), Catch::Contains("7 rows, 7 shown. | The table fills A1:B8"));
    desk.put("D2", "=UC.WHOLE(A1:B6)");
    CHECK(desk.number("D2") == 0);
    CHECK_THAT(desk.why("D2"), Catch::StartsWith("7 rows, 5 shown: the range is too short for the table."));

    Desk cut;
    cut.put_array("A1:B6", hydrograph).put("D1", "=UC.WHOLE(A1:B6)").put("D2", "=UC.WHOLE(A1:B30)");
    CHECK(cut.number("D1") == 0);
    CHECK(cut.number("D2") == 0);
    CHECK_THAT(cut.why("B3"), Catch::Contains("7 rows, 5 shown: the range is too short") &&
                                  Catch::Contains("Ctrl+Shift+Enter"));
    cut.put("G1", hydrograph);
    CHECK_THAT(cut.why("G1"), Catch::Contains("7 rows, 0 shown"));
    cut.put("D3", "=IF(UC.WHOLE(A1:B6);1;2)");
    CHECK(cut.number("D3") == 2);
}

TEST_CASE("a typed table is whole where the row below it is blank") {
    Desk desk;
    desk.put("A1", "m").put("B1", "m3").put("A2", 0.0).put("B2", 0.0).put("A3", 1).put("B3", 10);
    desk.put("D1", "=UC.WHOLE(A1:B3)").put("D2", "=UC.WHOLE(A1:B2)");
    CHECK(desk.number("D1") == 1);
    CHECK(desk.number("D2") == 0);
    CHECK(desk.why("D2") == "2 rows, and row 3 below them goes on");
    desk.put_array("F1:G8", "=UC.HYDROGRAPH.RATIONAL(0.9;\"1 kg\";50;20;10;5)").put("D3", "=UC.WHOLE(F1:G8)");
    CHECK(desk.error("D3") == value_error);
    CHECK_THAT(desk.why("D3"), Catch::Contains("is a mass"));
}

TEST_CASE("routing refuses a hydrograph that is cut off, and spare rows do no harm") {
    Desk desk;
    const std::string rest = ";{\"m\";\"m3\"|0;0|2;400};{\"m\";\"L/s\"|0;0|2;60};\"1 min\";0;\"m\")";
    desk.put_array("A1:B5", hydrograph).put("D1", "=UC.ROUTE.DEPTH(A1:B5" + rest);
    CHECK(desk.error("D1") == num_error);
    CHECK_THAT(desk.why("D1"), Catch::Contains("the table is cut off before the storm is over"));
    Desk whole;
    whole.put_array("A1:B8", hydrograph).put("D1", "=UC.ROUTE.DEPTH(A1:B8" + rest);
    CHECK(whole.error("D1") == 0);
    Desk spare;
    std::string with_height = hydrograph;
    with_height.replace(with_height.size() - 1, 1, ";;20)");
    spare.put_array("A1:B21", with_height).put("D1", "=UC.ROUTE.DEPTH(A1:B21" + rest);
    CHECK(spare.number("D1") == whole.number("D1"));
    spare.put("D2", "=UC.LARGEST(B1:B21;\"L/s\")").put("E1", "=UC.LARGEST(B1:B8;\"L/s\")");
    CHECK(spare.number("D2") == spare.number("E1"));
}

TEST_CASE("an array formula over a scalar function says to copy the formula down") {
    Desk desk;
    desk.put("A1", 1).put("A2", 2).put("A3", 3);
    desk.put_array("C1:C3", "=UC.LIFTS(A1:A3;\"0.5 m\")");
    CHECK(desk.error("C1") == value_error);
    CHECK_THAT(desk.why("C1"), Catch::Contains("copy it down"));
}

TEST_CASE("UC.WHY says when a cell is shown otherwise than it is read") {
    Desk desk;
    desk.put("A1", 0.38).put("B1", "%").put("C1", "=UC.STONE.MASS(100;A1:B1;2650;\"t\")");
    CHECK(desk.why("C1").find("Mind that") == std::string::npos);
    show_as(desk, "A1", "0%");
    CHECK_THAT(desk.why("C1"),
               Catch::Contains("Mind that A1 is shown as 38 %, and with % beside it is read as 0.38 %"));
    desk.put("A2", 5.0 / 1440).put("B2", "min").put("C2", "=UC.CONVERT(A2:B2;\"s\")");
    show_as(desk, "A2", "HH:MM");
    CHECK_THAT(desk.why("C2"),
               Catch::Contains("A2 is shown as the time 0:05, and to a function it is the number"));
    desk.put("A3", 3).put("C3", "=UC.LIFTS(A3;0.5)");
    show_as(desk, "A3", "0.00\" ft\"");
    CHECK_THAT(desk.why("C3"), Catch::Contains("A3 is shown in ft by its number format") &&
                                   Catch::Contains("it is read in m"));
    desk.put("A4", "Thickness (ft)").put("B4", 3).put("C4", "=UC.LIFTS(B4;0.5)");
    CHECK_THAT(desk.why("C4"), Catch::Contains("B4 is called \"Thickness (ft)\"") &&
                                   Catch::Contains("UC.QUANTITY(B4;\"ft\")"));
    desk.put("A5", "Thickness (m)").put("B5", 3).put("C5", "=UC.LIFTS(B5;0.5)");
    CHECK(desk.why("C5").find("Mind that") == std::string::npos);
}

}  // namespace undercroft::tests
