// A workbook as plain data: its cells found, named and called what they are called on their sheets.
#include "addin/audit/book/book_values.hpp"
#include "addin/audit/book/labels.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/audit/units/unit_cells.hpp"
#include "tests/support/book_maker.hpp"
#include "tests/support/catch.hpp"
#include "units/refused.hpp"

namespace undercroft::tests {

using audit::Area;
using audit::Book;
using audit::Spot;

namespace {

std::vector<Spot> spots(std::initializer_list<const char*> cells, std::int32_t sheet = 0) {
    std::vector<Spot> all;
    for (const char* cell : cells) all.push_back(spot_of(cell, sheet));
    return all;
}

}  // namespace

TEST_CASE("cells are found by place, by column and by sheet") {
    BookMaker maker;
    maker.sheet("One").put("B3", 1.0).put("A1", 2.0).put("B1", 3.0).put("B7", 4.0);
    maker.sheet("Two").put("C1", 5.0);
    const Book book = maker.made();
    REQUIRE(book.find(spot_of("B3")) != nullptr);
    CHECK(*book.find(spot_of("B3"))->number() == 1);
    for (const Spot& nowhere :
         {Spot{0, 0, 2}, Spot{0, 3, 1}, Spot{-1, 0, 0}, Spot{2, 0, 0}, Spot{1, 0, 1}, Spot{0, 9, 9}})
        CHECK(book.find(nowhere) == nullptr);
    CHECK(book.column(0, 1).size() == 3);
    CHECK(book.column(0, 1, 1, 5).size() == 1);
    CHECK(book.column(0, 1, 2, 6).size() == 2);
    CHECK(book.column(0, 1, 3, 5).empty());
    CHECK(book.column(0, 2).empty());
    CHECK(book.column(0, -1).empty());
    CHECK(book.columns(0) == 2);
    CHECK(book.columns(1) == 3);
    CHECK(book.sheet_named("Two") == 1);
    CHECK(book.sheet_named("Three") == -1);
    std::vector<double> seen;
    book.each_cell({0, 0, 0, 2, 9}, [&](const audit::BookCell& cell) { seen.push_back(*cell.number()); });
    CHECK(seen == std::vector<double>{2, 3, 1});
    CHECK(book.format_of(spot_of("Z9")).locked);
}

TEST_CASE("areas know their shape") {
    const Area pair{0, 1, 2, 1, 3};
    CHECK(pair.is_pair());
    CHECK_FALSE(pair.is_single());
    CHECK_FALSE((Area{0, 1, 2, 2, 3}.is_pair()));
    CHECK_FALSE((Area{0, 1, 2, 1, 4}.is_pair()));
    CHECK(Area::of({0, 1, 2}).is_single());
    CHECK_FALSE((Area{0, 1, 2, 2, 2}.is_single()));
    CHECK((pair.first() == Spot{0, 1, 2}));
    const Area block{1, 2, 3, 4, 5};
    for (const Spot& corner : {Spot{1, 2, 3}, Spot{1, 4, 5}, Spot{1, 2, 5}, Spot{1, 3, 4}})
        CHECK(block.holds(corner));
    for (const Spot& outside : {Spot{0, 2, 3}, Spot{1, 1, 3}, Spot{1, 5, 3}, Spot{1, 2, 2}, Spot{1, 2, 6}})
        CHECK_FALSE(block.holds(outside));
}

TEST_CASE("cells and ranges in words") {
    BookMaker maker;
    maker.sheet("Site").put("A1", 1.0).sheet("Site data").put("A1", 1.0);
    const Book book = maker.made();
    CHECK(book.text(spot_of("G7")) == "Site.G7");
    CHECK(book.text(spot_of("G7", 1)) == "'Site data'.G7");
    CHECK(book.text(Area{0, 6, 6, 6, 7}) == "Site.G7:H7");
    CHECK(book.text_from(0, spot_of("G7")) == "G7");
    CHECK(book.text_from(1, spot_of("G7")) == "Site.G7");
    CHECK(book.text_from(0, Area{0, 6, 6, 7, 6}) == "G7:G8");
    CHECK(cells_text(book, spots({"G6", "G7", "G9", "G8"})) == "Site.G6:G9");
    CHECK(cells_text(book, spots({"G6", "H6", "G8"})) == "Site.G6, G8, H6");
    CHECK(cells_text(book, {}).empty());
    CHECK(cells_text(book, spots({"A1", "A3", "A5", "A7"}), 2) == "Site.A1, A3 and 2 more");
    std::vector<Spot> both = spots({"A1", "A2"});
    for (const Spot& spot : spots({"A3"}, 1)) both.push_back(spot);
    CHECK(cells_text(book, both) == "Site.A1:A2, 'Site data'.A3");
}

TEST_CASE("names: those of the sheet first, without regard to case") {
    BookMaker maker;
    maker.sheet("One").put("A1", 1.0).sheet("Two").put("A1", 2.0);
    maker.name("Depth", "$One.$A$1").name("depth", "$Two.$A$1", 1).name("broken", "=)(");
    const Book book = maker.made();
    const audit::Names names(book);
    REQUIRE(names.find("DEPTH", 0) != nullptr);
    CHECK(names.find("DEPTH", 0)->tree.reference.sheet == "One");
    CHECK(names.find("DEPTH", 1)->tree.reference.sheet == "Two");
    CHECK(names.find("height", 0) == nullptr);
    REQUIRE(names.find("broken", 0) != nullptr);
    CHECK_FALSE(names.find("broken", 0)->readable);
}

TEST_CASE("the cells of a reference move with the formula, but for its dollar signs") {
    BookMaker maker;
    maker.sheet("One").put("A1", 1.0).sheet("Two").put("A1", 2.0).sheet("Three").put("A1", 2.0);
    const Book book = maker.made();
    const auto area = [&](const char* text, const char* base, const char* at) {
        const auto found = area_of(book, addin::parse_formula(text).reference, spot_of(base), spot_of(at));
        return found ? book.text(*found) : "none";
    };
    CHECK(area("=B3", "A1", "A1") == "One.B3");
    CHECK(area("=B3", "A1", "B2") == "One.C4");
    CHECK(area("=$B3", "A1", "B2") == "One.B4");
    CHECK(area("=B$3", "A1", "B2") == "One.C3");
    CHECK(area("=B3:$C$4", "A1", "D9") == "One.C4:E11");  // the corners change places
    CHECK(area("=Two.B3", "A1", "A1") == "Two.B3");
    CHECK(area("=A1", "B2", "A1") == "none");  // above the first row
    CHECK(area("=XFD1", "A1", "B1") == "none");
    CHECK(area("=A1048576", "A1", "A2") == "none");
    CHECK(area("=Nowhere.A1", "A1", "A1") == "none");
    CHECK(area("='file:///a.ods'#$One.A1", "A1", "A1") == "none");
    const auto areas =
        areas_of(book, addin::parse_formula("=One.A1:Three.B2").reference, spot_of("A1"), spot_of("A1"));
    REQUIRE(areas.size() == 3);
    CHECK(book.text(areas[2]) == "Three.A1:B2");
}

TEST_CASE("what a cell is called: the longest text of its row, or the head of its column") {
    BookMaker maker;
    maker.sheet("S")
        .put("A1", "Description")
        .put("C1", "Volume")
        .put("D1", "Area")
        .put("C2", "m3")
        .put("D2", "m2");
    maker.put("A3", "V").put("B3", "Volume of stone").put("C3", 1.0);
    maker.put("A4", "m").put("C4", 2.0);
    maker.put("A5", "x").put("C5", 3.0);
    maker.put("A6", "Bed").formula("C6", "=C3", 1.0).formula("D6", "=C4", 2.0);
    maker.put("A7", "Pit").put("C7", 1.0).formula("D7", "=C4", 2.0);
    const Book book = maker.made();
    audit::UnitTexts texts;
    const audit::Labels labels(book, texts);
    CHECK(labels.of_row(spot_of("C3")) == "Volume of stone");
    CHECK(labels.of_row(spot_of("C4")).empty());  // a unit
    CHECK(labels.of_row(spot_of("C5")).empty());  // one letter is a symbol
    CHECK(labels.of_row(spot_of("A3")).empty());
    CHECK(labels.of_column(spot_of("C5")) == "Volume");
    CHECK(labels.of_column(spot_of("D7")) == "Area");
    CHECK(labels.of_column(spot_of("C1")).empty());
    CHECK(labels.of_column(spot_of("Z9")).empty());
    CHECK(labels.of(spot_of("C3")) == "Volume of stone");
    CHECK(labels.of(spot_of("C4")) == "Volume");
    CHECK(labels.of(spot_of("C6")) == "Bed");
    CHECK(labels.of(spot_of("D6")) == "Bed: Area");  // the second that the row computes
    CHECK(labels.of(spot_of("D7")) == "Pit");
    CHECK(labels.of(spot_of("E3")) == "Volume of stone");
}

TEST_CASE("the unit of a number stands to its right, or at the head of its column") {
    BookMaker maker;
    maker.sheet("S").put("A1", 5.0).put("B1", "mm").put("A2", 6.0).put("B2", "a remark that is long, m");
    maker.put("D1", "Depth").put("D2", "m").put("D3", 1.0).put("D4", 2.0).put("D6", 3.0);
    maker.put("U1", "L").put("U2", 1.0);                                        // a length, no litres
    maker.put("G1", "Flow").put("G2", "L/s").put("G3", 1.0).put("H3", "m3/s");  // beside goes before the head
    maker.put("J1", 8.0).put("K1", 1.0).style("K1", "UnitEntry", false, true);  // a pure number, from a list
    maker.put("J2", 8.0).put("K2", 1.0);
    maker.put("M1", "Depth").put("M2", "m").put("M3", 1.0).put("M4", "none").put("M5", 2.0);
    maker.array("O1:P3", "=F(1)", 2.0).show("O1", "m").show("P1", "m3").show("O3", {});
    maker.formula("R1", "=1/0", Error{532}).put("S1", "m");
    maker.array("W1:W4", "=F(2)", 2.0).show("W1", "m").show("W3", {});
    maker.put("Y1", "Depth").put("Y2", "m").formula("Y3", "=\"\"", "").put("Y4", 3.0);
    const Book book = maker.made();
    audit::UnitTexts texts;
    const audit::UnitCells units(book, texts);
    const auto unit = [&](const char* cell) -> std::string {
        const auto found = units.of(spot_of(cell));
        return found ? found->text->text + (found->beside ? " beside" : " above") + " in " +
                           book.text_from(0, found->at)
                     : "none";
    };
    CHECK(unit("A1") == "mm beside in B1");
    CHECK(unit("A2") == "none");
    CHECK(unit("D3") == "m above in D2");
    CHECK(unit("D4") == "m above in D2");
    CHECK(unit("D6") == "none");  // behind a gap
    CHECK(unit("U2") == "none");
    CHECK(unit("G3") == "m3/s beside in H3");
    CHECK(unit("J1") == "1 beside in K1");
    CHECK(unit("J2") == "none");
    CHECK(unit("M3") == "m above in M2");
    CHECK(unit("M5") == "none");
    CHECK(unit("O2") == "m above in O1");
    CHECK(unit("P3") == "m3 above in P1");
    CHECK(unit("W4") == "m above in W1");  // a blank inside of what a function wrote
    CHECK(unit("Y4") == "none");
    CHECK(unit("R1") == "m beside in S1");
    CHECK(unit("Z9") == "none");
    CHECK(unit("B1") == "none");
}

TEST_CASE("what the numbers of an area are in") {
    BookMaker maker;
    maker.sheet("S");
    const char* of_rows[] = {"m", "m", "mm", "", "m"};
    for (int row = 0; row < 5; ++row) {
        const std::string at = std::to_string(row + 1);
        maker.put("A" + at, 1.0);
        if (of_rows[row][0] != '\0') maker.put("B" + at, of_rows[row]);
    }
    maker.put("A7", "a text");
    const Book book = maker.made();
    audit::UnitTexts texts;
    const audit::UnitCells units(book, texts);
    const auto of_rows_from = [&](std::int32_t first, std::int32_t last) {
        return units.of_area({0, first - 1, 0, last - 1, 0});
    };
    const audit::AreaUnits like = of_rows_from(1, 2);
    CHECK(like.has_numbers);
    REQUIRE(like.unit);
    CHECK(like.unit->text->text == "m");
    CHECK(like.unit->at == spot_of("B1"));
    CHECK_FALSE(like.other);
    CHECK_FALSE(like.without);
    const audit::AreaUnits inside = of_rows_from(2, 2);  // a part of a run
    REQUIRE(inside.unit);
    CHECK(inside.unit->at == spot_of("B2"));
    const audit::AreaUnits mixed = of_rows_from(2, 5);
    REQUIRE(mixed.other);
    CHECK(mixed.other->at == spot_of("B3"));
    REQUIRE(mixed.without);
    CHECK(*mixed.without == spot_of("A4"));
    CHECK_FALSE(of_rows_from(6, 9).has_numbers);
    CHECK_FALSE(units.of_area({0, 0, 9, 9, 12}).has_numbers);
    CHECK(units.of_area({0, 0, 0, 4, 9}).has_numbers);
}

TEST_CASE("values are read from the workbook as Calc hands them over") {
    BookMaker maker;
    maker.sheet("S").put("A1", 2.0).put("B1", "m").put("A2", "text").formula("A3", "=1/0", Error{532});
    maker.formula("A4", "=\"\"", "").name("bed", "$S.$A$1:$B$1").name("sum", "$S.$A$1+1").name("bad", ")(");
    const Book book = maker.made();
    const audit::Names names(book);
    const audit::BookValues values(book, names, spot_of("D1"), spot_of("D1"));
    const auto value = [&](const char* formula) -> std::string {
        try {
            return addin::shown_as_given(values.value_of(addin::parse_formula(formula)).cell());
        } catch (const Refused& refused) {
            return refused.what();
        }
    };
    CHECK(value("=A1") == "2");
    CHECK(value("=A2") == "\"text\"");
    CHECK(value("=A4") == "\"\"");
    CHECK(value("=C9") == "0");
    CHECK(value("=A1:B1") == "2 m");
    CHECK(value("=bed") == "2 m");
    CHECK(value("=A1:B2") == "range of 2 x 2 cells");
    CHECK(value("=A1:A4") == "A3 holds #DIV/0!");
    CHECK(value("=Nowhere.A1") == "the cells Nowhere.A1 are not in this workbook");
    CHECK(value("=lost") == "the name 'lost' is not defined in this workbook");
    CHECK(value("=bad") == "the name 'bad' is not defined in this workbook");
    CHECK(value("=sum") == "the name 'sum' is an expression");
    CHECK(value("=A1:ZZ9999") == "the range A1:ZZ9999 is too large to be computed again");
    CHECK(value("=A300000:B300100") == "range of 101 x 2 cells");  // far down, and not large
    CHECK(value("=UC.CONVERT(A1:B1;\"mm\")") == "2000");
}

}  // namespace undercroft::tests
