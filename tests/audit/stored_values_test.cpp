// Results as an OpenDocument file holds them, read from the events of an XML parser.
#include <map>

#include "addin/audit/book/stored_values.hpp"
#include "tests/audit/listed_attributes.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

using audit::StoredReader;
using audit::StoredValues;

namespace {

class Events {
public:
    explicit Events(StoredReader& reader) : reader_(reader) {}
    Events& begin(const char* element, std::map<std::string, std::string> attributes = {}) {
        reader_.start(element, Listed(std::move(attributes)));
        return *this;
    }
    Events& end(const char* element) {
        reader_.end(element);
        return *this;
    }
    Events& cell(std::map<std::string, std::string> attributes, const std::string& text = "") {
        begin("table:table-cell", std::move(attributes));
        if (!text.empty()) {
            begin("text:p");
            reader_.text(text);
            end("text:p");
        }
        return end("table:table-cell");
    }

private:
    StoredReader& reader_;
};

const std::string formula_attribute = "table:formula";
const std::string type_attribute = "office:value-type";

}  // namespace

TEST_CASE("results of formulas are kept by sheet, row and column; typed cells are not") {
    StoredValues values;
    StoredReader reader(values);
    Events events(reader);
    events.begin("table:table", {{"table:name", "Pit"}});
    events.begin("table:table-row", {{"table:number-rows-repeated", "3"}}).cell({}).end("table:table-row");
    events.begin("table:table-row");
    events.cell({{"table:number-columns-repeated", "2"}});
    events.cell({{formula_attribute, "of:=1+1"}, {type_attribute, "float"}, {"office:value", "2"}}, "2.000");
    events.cell({{type_attribute, "float"}, {"office:value", "5"}}, "5");
    events.cell({{formula_attribute, "of:=\"a\""}, {type_attribute, "string"}}, "a text");
    events.cell({{formula_attribute, "of:=1/0"}, {type_attribute, "string"}, {"calcext:value-type", "error"}},
                "#DIV/0!");
    events.cell(
        {{formula_attribute, "of:=1=1"}, {type_attribute, "boolean"}, {"office:boolean-value", "true"}},
        "TRUE");
    events.cell({{formula_attribute, "of:=2"}});
    events.end("table:table-row").end("table:table");
    CHECK(values.size() == 4);
    REQUIRE(values.find("Pit", 3, 2) != nullptr);
    CHECK((values.find("Pit", 3, 2)->value == audit::CellValue(2.0)));
    CHECK(values.find("Pit", 3, 3) == nullptr);
    REQUIRE(values.find("Pit", 3, 4) != nullptr);
    CHECK((values.find("Pit", 3, 4)->value == audit::CellValue(std::string("a text"))));
    CHECK(values.find("Pit", 3, 5)->is_error);
    CHECK((values.find("Pit", 3, 6)->value == audit::CellValue(1.0)));
    CHECK(values.find("Pit", 3, 7) == nullptr);  // the file holds no result
    CHECK(values.find("Other", 3, 2) == nullptr);
}

TEST_CASE("a text result is what its paragraphs show, spaces and breaks included") {
    StoredValues values;
    StoredReader reader(values);
    Events events(reader);
    events.begin("table:table", {{"table:name", "Pit"}}).begin("table:table-row");
    events.begin("table:table-cell", {{formula_attribute, "of:=A1"}, {type_attribute, "string"}});
    events.begin("text:p");
    reader.text("two");
    events.begin("text:s", {{"text:c", "3"}}).end("text:s");
    reader.text("words");
    events.end("text:p").begin("text:p");
    reader.text("and a line");
    events.begin("text:s").end("text:s").end("text:p");
    reader.text("not shown");
    events.begin("text:s").end("text:s").end("table:table-cell");
    events.cell(
        {{formula_attribute, "of:=A2"}, {type_attribute, "string"}, {"office:string-value", "as stored"}},
        "as shown");
    events.end("table:table-row").end("table:table");
    REQUIRE(values.find("Pit", 0, 0) != nullptr);
    CHECK((values.find("Pit", 0, 0)->value == audit::CellValue(std::string("two   words\nand a line "))));
    CHECK((values.find("Pit", 0, 1)->value == audit::CellValue(std::string("as stored"))));
}

TEST_CASE("what stands inside of a sheet without being its cells is passed over, however deep") {
    for (const char* element :
         {"draw:frame", "draw:object", "table:shapes", "office:annotation", "table:tracked-changes",
          "table:dde-links", "office:forms", "table:content-validations"}) {
        CAPTURE(element);
        StoredValues values;
        StoredReader reader(values);
        Events events(reader);
        const std::map<std::string, std::string> nine = {
            {formula_attribute, "of:=9"}, {type_attribute, "float"}, {"office:value", "9"}};
        events.begin("table:table", {{"table:name", "Pit"}}).begin("table:table-row").begin(element);
        events.begin("table:table", {{"table:name", "Inside"}}).begin("table:table-row").cell(nine);
        events.end("table:table-row").end("table:table").end(element).cell(nine);
        events.end("table:table-row").end("table:table");
        CHECK(values.size() == 1);
        CHECK(values.find("Pit", 0, 0) != nullptr);
    }
}

TEST_CASE("covered cells count, and each sheet begins at its first row") {
    StoredValues values;
    StoredReader reader(values);
    Events events(reader);
    const std::map<std::string, std::string> nine = {
        {formula_attribute, "of:=9"}, {type_attribute, "float"}, {"office:value", "9"}};
    for (const char* sheet : {"One", "Two"}) {
        events.begin("table:table", {{"table:name", sheet}}).begin("table:table-row");
        events.begin("table:covered-table-cell")
            .end("table:covered-table-cell")
            .cell(nine)
            .end("table:table-row");
        events.end("table:table");
    }
    CHECK(values.size() == 2);
    CHECK(values.find("One", 0, 1) != nullptr);
    CHECK(values.find("Two", 0, 1) != nullptr);
    CHECK(values.find("Two", 1, 1) == nullptr);
}

TEST_CASE("all results of an array formula are kept, and cells of charts are not taken for the sheet's") {
    StoredValues values;
    StoredReader reader(values);
    Events events(reader);
    events.begin("table:table", {{"table:name", "Pit"}}).begin("table:table-row");
    events.begin("draw:frame")
        .cell({{formula_attribute, "of:=1"}, {type_attribute, "float"}, {"office:value", "9"}})
        .end("draw:frame");
    events.cell({{formula_attribute, "of:=A1:B2"},
                 {"table:number-matrix-rows-spanned", "2"},
                 {"table:number-matrix-columns-spanned", "1"},
                 {type_attribute, "float"},
                 {"office:value", "1"}});
    events.end("table:table-row").begin("table:table-row");
    events.cell({{type_attribute, "float"}, {"office:value", "2"}});
    events.cell({{type_attribute, "float"}, {"office:value", "3"}});
    events.end("table:table-row").end("table:table");
    CHECK(values.size() == 2);
    REQUIRE(values.find("Pit", 1, 0) != nullptr);
    CHECK((values.find("Pit", 1, 0)->value == audit::CellValue(2.0)));
}

TEST_CASE("attributes that make no sense end in no value, not in trouble") {
    StoredValues values;
    StoredReader reader(values);
    Events events(reader);
    events.end("table:table-cell").end("table:table-row");
    events.begin("table:table", {{"table:name", "Pit"}});
    events.begin("table:table-row", {{"table:number-rows-repeated", "99999999999999"}});
    events.cell({{"table:number-columns-repeated", "-5"},
                 {formula_attribute, "of:=1"},
                 {type_attribute, "float"},
                 {"office:value", "x"}});
    events.cell(
        {{"table:number-columns-repeated", "many"}, {formula_attribute, "of:=1"}, {type_attribute, "float"}});
    events.end("table:table-row").end("table:table");
    CHECK(values.size() == 0);
}

}  // namespace undercroft::tests
