// Results as an Office Open XML workbook holds them, read from the events of an XML parser.
#include "addin/audit/book/xlsx_values.hpp"
#include "tests/audit/listed_attributes.hpp"
#include "tests/support/catch.hpp"

#include <map>

namespace undercroft::tests {

namespace {

using audit::StoredValue;
using audit::StoredValues;
using audit::XlsxReader;

class Cells {
public:
    Cells() : reader_(values_, "S") {}
    /// A cell with a formula where its attributes are given.
    Cells& cell(const std::string& at, const std::string& type, const std::string& value,
                const std::map<std::string, std::string>* formula) {
        reader_.start("c", Listed({{"r", at}, {"t", type}}));
        if (formula != nullptr) {
            reader_.start("f", Listed(*formula));
            CHECK_FALSE(reader_.wants_text());
            reader_.end("f");
        }
        reader_.start("v", Listed({}));
        reader_.text(value);
        reader_.end("v");
        reader_.end("c");
        return *this;
    }
    [[nodiscard]] const StoredValue* at(std::int32_t row, std::int32_t column) const {
        return values_.find("S", row, column);
    }
    [[nodiscard]] std::size_t size() const { return values_.size(); }

private:
    StoredValues values_;
    XlsxReader reader_;
};

const std::map<std::string, std::string> plain;

}  // namespace

TEST_CASE("numbers, texts, truths and errors of formulas are kept; typed cells are not") {
    Cells cells;
    cells.cell("B3", "", "2.5", &plain).cell("C3", "str", "passes", &plain).cell("D3", "b", "1", &plain);
    cells.cell("E3", "e", "#NAME?", &plain)
        .cell("AA1048576", "n", "1e-3", &plain)
        .cell("F3", "", "7", nullptr);
    cells.cell("G3", "s", "0", &plain).cell("H3", "", "7x", &plain).cell("B0", "", "1", &plain);
    cells.cell("ZZZZ1", "", "1", &plain).cell("", "", "1", &plain);
    REQUIRE(cells.size() == 5);
    CHECK(std::get<double>(cells.at(2, 1)->value) == 2.5);
    CHECK(std::get<std::string>(cells.at(2, 2)->value) == "passes");
    CHECK(std::get<double>(cells.at(2, 3)->value) == 1);
    CHECK(cells.at(2, 4)->is_error);
    CHECK(std::get<double>(cells.at(1048575, 26)->value) == 0.001);
    CHECK(cells.at(2, 5) == nullptr);
}

TEST_CASE("all results of an array formula are kept") {
    const std::map<std::string, std::string> array = {{"t", "array"}, {"ref", "A1:B2"}};
    Cells cells;
    cells.cell("A1", "", "1", &array).cell("B1", "", "2", nullptr).cell("C1", "", "9", nullptr);
    cells.cell("A2", "", "3", nullptr).cell("B2", "", "4", nullptr).cell("A3", "", "9", nullptr);
    CHECK(cells.size() == 4);
    CHECK(std::get<double>(cells.at(1, 1)->value) == 4);
}

TEST_CASE("sheets and their parts, in either way of naming them") {
    audit::XlsxSheets sheets;
    sheets.take_element("sheet", Listed({{"name", "Site"}, {"r:id", "r1"}}));
    sheets.take_element("sheet", Listed({{"name", "Flow"}, {"r:id", "r2"}}));
    sheets.take_element("sheet", Listed({{"name", "None"}, {"r:id", "r3"}}));
    sheets.take_element("Relationship", Listed({{"Id", "r1"}, {"Target", "worksheets/sheet1.xml"}}));
    sheets.take_element("Relationship", Listed({{"Id", "r2"}, {"Target", "/xl/worksheets/sheet2.xml"}}));
    const auto parts = sheets.parts();
    REQUIRE(parts.size() == 2);
    CHECK((parts[0] == std::pair<std::string, std::string>("Site", "xl/worksheets/sheet1.xml")));
    CHECK((parts[1] == std::pair<std::string, std::string>("Flow", "xl/worksheets/sheet2.xml")));
}

}  // namespace undercroft::tests
