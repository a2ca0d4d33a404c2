// The file of a workbook, read again.
#include <set>

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using pugi::xml_document;
using pugi::xml_node;
using Words = std::vector<std::string>;

namespace {

std::string value(const xml_node& node, const char* name) {
    return node.attribute(name).value();
}

std::string value(const xml_document& document, const std::string& path, const char* name) {
    CAPTURE(path);
    const xml_node node = document.select_node(path.c_str()).node();
    REQUIRE(node);
    return value(node, name);
}

std::vector<xml_node> rows_of(const xml_document& document, const std::string& sheet) {
    std::vector<xml_node> rows;
    const std::string path = "//table:table[@table:name='" + sheet + "']//table:table-row";
    for (const auto& row : document.select_nodes(path.c_str())) {
        const int times = row.node().attribute("table:number-rows-repeated").as_int(1);
        rows.insert(rows.end(), static_cast<std::size_t>(times), row.node());
    }
    return rows;
}

/// A cell of the file; each stands for one column, covered or not.
xml_node file_cell(const xml_document& document, const std::string& sheet, const std::string& address) {
    const auto [row, column] = place_of(address);
    xml_node cell = rows_of(document, sheet).at(static_cast<std::size_t>(row)).first_child();
    for (int c = 0; c < column; ++c) cell = cell.next_sibling();
    REQUIRE(cell);
    return cell;
}

/// The text of a cell with its parts, such as `ρ[s]`.
std::string shown(const xml_node& paragraph) {
    std::string text;
    for (const xml_node part : paragraph.children()) {
        if (part.type() == pugi::node_pcdata)
            text += part.value();
        else if (std::string(part.name()) == "text:s")
            text += " ";
        else
            text += "[" + std::string(part.text().get()) + "]";
    }
    return text;
}

}  // namespace

TEST_CASE("rows to paste into are written once, and all others each for itself") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\ngrid d_d | Days | Rain, unit mm, as r\n: 3\n: 0\nblank 36600\n"
                            "result r_r | R | | mm | UC.R(d_d_r; @)\n"}));
    const std::vector<xml_node> rows = rows_of(document, "Pit");
    REQUIRE(rows.size() == 36611);
    CHECK(document.select_nodes("//table:table[@table:name='Pit']//table:table-row").size() < 20);
    CHECK(value(file_cell(document, "Pit", "B8"), "office:value") == "3");
    CHECK(value(file_cell(document, "Pit", "B9"), "office:value") == "0");
    for (const char* blank : {"B10", "B20000", "B36609"}) {
        CAPTURE(blank);
        const xml_node cell = file_cell(document, "Pit", blank);
        CHECK(value(cell, "table:style-name") == "GridEntry");
        CHECK_FALSE(cell.attribute("office:value-type"));
    }
    CHECK(value(file_cell(document, "Pit", "B36610"), "table:style-name").empty());
    CHECK(value(file_cell(document, "Pit", "G36611"), "table:formula") ==
          "of:=UNDERCROFT.UC.R(d_d_r; [.H36611])");
}

TEST_CASE("cells of every kind are written, each with its style") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\ninput a_b | A | rho_s | 0.1 m\ntable t_t | T | 2 | x; y | "
                            "UC.T(a_b; @)\nresult r_r | R | | m | UC.R(a_b; @)\n"}));
    const xml_document texts = parsed(workbook_of({"sheet Pit | P\ntext t_t | T | | x | Note\n"}));
    const xml_node two = file_cell(texts, "Pit", "G5");
    CHECK(value(two, "table:number-columns-spanned") == "2");
    CHECK(std::string(two.next_sibling().name()) == "table:covered-table-cell");
    const xml_node number = file_cell(document, "Pit", "G5");
    CHECK(value(number, "office:value-type") == "float");
    CHECK(value(number, "office:value") == "0.1");
    CHECK(value(number, "table:style-name") == "Entry");
    CHECK(value(number, "table:content-validation-name") == "val2");
    const xml_node unit = file_cell(document, "Pit", "H5");
    CHECK(value(unit, "office:value-type") == "string");
    CHECK(std::string(unit.child("text:p").text().get()) == "m");
    const xml_node formula = file_cell(document, "Pit", "G12");
    CHECK(value(formula, "table:formula") == "of:=UNDERCROFT.UC.R(a_b; [.H12])");
    CHECK_FALSE(formula.attribute("table:number-matrix-rows-spanned"));
    const xml_node array = file_cell(document, "Pit", "B8");
    CHECK(value(array, "table:number-matrix-rows-spanned") == "3");
    CHECK(value(array, "table:number-matrix-columns-spanned") == "2");
    const xml_node wide = file_cell(document, "Pit", "B5");
    CHECK(value(wide, "table:number-columns-spanned") == "4");
    CHECK(value(wide, "table:number-rows-spanned") == "1");
    for (const char* covered : {"C5", "D5", "E5"}) {
        CHECK(std::string(file_cell(document, "Pit", covered).name()) == "table:covered-table-cell");
        CHECK(value(file_cell(document, "Pit", covered), "table:style-name") == "Description");
    }
    CHECK(std::string(file_cell(document, "Pit", "F5").name()) == "table:table-cell");
    CHECK_FALSE(file_cell(document, "Pit", "A2").attribute("table:style-name"));
    CHECK_FALSE(file_cell(document, "Pit", "I12").attribute("office:value-type"));  // no note: blank
    for (const xml_node& row : rows_of(document, "Pit"))
        CHECK(std::distance(row.children().begin(), row.children().end()) == 12 + 1 + 1 + helper_columns);
}

TEST_CASE("symbols are written as by hand: Greek letters, indices lowered") {
    const auto symbol = [](const std::string& text) {
        const xml_document document =
            parsed(workbook_of({"sheet Pit | P\ninput a_b | A | " + text + " | 1 m\n"}));
        return shown(file_cell(document, "Pit", "F5").child("text:p"));
    };
    CHECK(symbol("rho_s") == "ρ[s]");
    CHECK(symbol("A_t") == "A[t]");
    CHECK(symbol("V") == "V");
    CHECK(symbol("phi") == "φ");
    CHECK(symbol("O95") == "O95");
    CHECK(symbol("g_min") == "g[min]");
    CHECK(symbol("a_1 + b_2") == "a[1] + b[2]");
    CHECK(symbol("sum(C A)/sum(A)") == "sum(C A)/sum(A)");
    CHECK(symbol("_x") == "_x");
    CHECK(symbol("mu_d(gamma, sigma_v, delta)") == "μ[d](γ, σ[v], δ)");
    CHECK(symbol("Az09_Z") == "Az09[Z]");
    CHECK(symbol("a ≥ b_1") == "a ≥ b[1]");
    CHECK(symbol("alphabet") == "alphabet");
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\nresult a_b | Rate_of | A_t | m | UC.A(1; @) | rho_b\n"}));
    CHECK(value(file_cell(document, "Pit", "F5").child("text:p").child("text:span"), "text:style-name") ==
          "Lowered");
    CHECK(shown(file_cell(document, "Pit", "I5").child("text:p")) == "ρ[b]");
    CHECK(shown(file_cell(document, "Pit", "B5").child("text:p")) ==
          "Rate_of");  // a description is plain text
    CHECK(value(document, "//style:style[@style:name='Lowered']/style:text-properties",
                "style:text-position") == "sub 70%");
}

TEST_CASE("rows have their heights, columns their widths") {
    const xml_document document = parsed(
        workbook_of({"sheet Pit | P\nremark " + std::string(130, 'x') + "\nremark Short\nremark Short\n"}));
    const auto rows = rows_of(document, "Pit");
    const auto height = [&](std::size_t row) {
        const std::string path = "//style:style[@style:name='" + value(rows.at(row), "table:style-name") +
                                 "']/style:table-row-properties";
        return value(document, path, "style:row-height") + " " + value(document, path, "fo:break-before");
    };
    CHECK(rows.size() == 7);
    CHECK(height(0) == "0.750cm ");
    CHECK(height(1) == "0.400cm ");
    CHECK(height(4) == "0.770cm ");
    CHECK(height(5) == "0.400cm ");
    CHECK(height(6) == "0.400cm ");
    CHECK(value(rows[3], "table:style-name") == value(rows[1], "table:style-name"));
    CHECK(document.select_nodes("//table:table-header-rows/table:table-row").size() == 4);
    const auto width = [&](int column) {
        const std::string path = "//table:table/table:table-column[" + std::to_string(column + 1) + "]";
        return value(document,
                     "//style:style[@style:name='" + value(document, path, "table:style-name") +
                         "']/style:table-column-properties",
                     "style:column-width");
    };
    CHECK(document.select_nodes("//table:table/table:table-column").size() == 12 + 1 + 1 + helper_columns);
    CHECK(width(0) == "0.940cm");
    CHECK(width(1) == "1.800cm");
    CHECK(width(12) == "0.500cm");   // marks
    CHECK(width(13) == "11.000cm");  // reasons
    const auto hidden =
        document.select_nodes("//table:table/table:table-column[@table:visibility='collapse']");
    CHECK(hidden.size() == helper_columns - static_cast<int>(first_kept));
    CHECK(value(document, "//table:table/table:table-column[2]", "table:style-name") ==
          value(document, "//table:table/table:table-column[3]", "table:style-name"));
    for (const auto& style : document.select_nodes("//office:automatic-styles/style:style")) {
        const std::string family = value(style.node(), "style:family");
        if (family == "table-row")
            CHECK(value(style.node().child("style:table-row-properties"), "style:use-optimal-row-height") ==
                  "false");
    }
}

TEST_CASE("a row lower than the standard is made as high as it") {
    WorkbookGrid workbook = workbook_of({"sheet Pit | P\nremark Short\n"});
    workbook.sheets[0].row_heights_cm[4] = 0.2;
    const xml_document document = parsed(workbook);
    CHECK(value(rows_of(document, "Pit")[4], "table:style-name") ==
          value(rows_of(document, "Pit")[1], "table:style-name"));
}

TEST_CASE("a sheet is protected, prints its page only, and stands in its order") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\nremark R\n", "sheet Bed | B\nwide\nunprinted\nremark R\n",
                            "sheet Top | T\nwide\nremark R\n"}));
    const auto sheets = document.select_nodes("//office:spreadsheet/table:table");
    REQUIRE(sheets.size() == 3);
    CHECK(value(sheets[0].node(), "table:name") == "Bed");  // a flat file's charts are read at once
    CHECK(value(sheets[1].node(), "table:name") == "Pit");
    CHECK(value(sheets[1].node(), "table:print-ranges") == "Pit.A1:Pit.M5");
    CHECK(value(sheets[2].node(), "table:print-ranges") == "Top.A1:Top.S5");
    CHECK(value(parsed(workbook_of({"sheet Pit | P\nremark R\nunprinted\nsection S\nremark R\n"})),
                "//table:table", "table:print-ranges") == "Pit.A1:Pit.M5");
    CHECK(value(sheets[0].node(), "table:print") == "false");
    CHECK_FALSE(sheets[0].node().attribute("table:print-ranges"));
    CHECK_FALSE(sheets[1].node().attribute("table:print"));
    for (const auto& sheet : sheets) {
        CHECK(value(sheet.node(), "table:protected") == "true");
        CHECK(value(sheet.node().child("loext:table-protection"), "loext:select-protected-cells") == "true");
        CHECK(value(sheet.node().child("loext:table-protection"), "loext:select-unprotected-cells") ==
              "true");
    }
    CHECK(value(sheets[1].node(), "table:style-name") == "taUpright");
    CHECK(value(sheets[2].node(), "table:style-name") == "taWide");
    CHECK(value(document, "//style:style[@style:name='taWide']", "style:master-page-name") == "Wide");
    CHECK(value(document, "//style:style[@style:name='taUpright']", "style:family") == "table");
}

TEST_CASE("names, title and properties are written") {
    const xml_document document = parsed(workbook_of({"sheet Pit | P\ninput a_b | A | | 1 m\n"}));
    const std::string name = "//table:named-expressions/table:named-range[@table:name='a_b']";
    CHECK(value(document, name, "table:cell-range-address") == "$Pit.$G$5:.$H$5");
    CHECK(value(document, name, "table:base-cell-address") == "$Pit.$A$1");
    CHECK(std::string(document.select_node("//office:meta/dc:title").node().text().get()) == "A small job");
    const xml_node property =
        document.select_node("//meta:user-defined[@meta:name='Undercroft template']").node();
    CHECK(std::string(property.text().get()) == "small");
    CHECK(value(property, "meta:value-type") == "string");
    CHECK(document.select_nodes("//meta:user-defined").size() == 4);
    const xml_node root = document.document_element();
    CHECK(value(root, "office:mimetype") == "application/vnd.oasis.opendocument.spreadsheet");
    CHECK(value(root, "office:version") == "1.3");
    CHECK(value(root, "xmlns:of") == "urn:oasis:names:tc:opendocument:xmlns:of:1.2");
}

TEST_CASE("validations say what may be typed, and what is said when something else is") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\ninput a_b | Depth | | 1 m >= 2 | Survey\nchoice k_k | Kind | | a "
                            "| a, b\ninput c_level | Level | | 1 "
                            "m\ntext t_t | Text | | x | Note\n"}));
    const auto validation = [&](const std::string& address) {
        const std::string name = value(file_cell(document, "Pit", address), "table:content-validation-name");
        return document.select_node(("//table:content-validation[@table:name='" + name + "']").c_str())
            .node();
    };
    const xml_node number = validation("G5");
    CHECK(value(number, "table:condition") == "of:cell-content-is-decimal-number() and cell-content()>=2");
    CHECK(value(number, "table:allow-empty-cell") == "true");
    CHECK(value(number, "table:base-cell-address") == "Pit.A1");
    CHECK(value(number.child("table:help-message"), "table:title") == "Depth");
    CHECK(value(number.child("table:help-message"), "table:display") == "true");
    CHECK_THAT(number.child("table:help-message").child("text:p").text().get(),
               Catch::EndsWith("list. Survey."));
    CHECK(value(number.child("table:error-message"), "table:message-type") == "stop");
    CHECK(std::string(number.child("table:error-message").child("text:p").text().get()) ==
          "A number of 2 or more is wanted; its unit stands in the cell to the right.");
    const xml_node unit = validation("H5");
    CHECK(value(unit, "table:condition") == "of:cell-content-is-in-list(\"m\";\"mm\";\"cm\";\"ft\";\"in\")");
    CHECK(value(unit, "table:display-list") == "unsorted");
    CHECK(value(unit, "table:allow-empty-cell") == "true");
    CHECK(value(unit.child("table:error-message"), "table:message-type") == "warning");
    CHECK_THAT(unit.child("table:error-message").child("text:p").text().get(),
               Catch::Contains("Another unit of the same kind"));
    CHECK_FALSE(unit.child("table:help-message"));
    const xml_node choice = validation("G6");
    CHECK(value(choice, "table:condition") == "of:cell-content-is-in-list(\"a\";\"b\")");
    CHECK(value(choice.child("table:error-message"), "table:message-type") == "stop");
    CHECK(std::string(choice.child("table:error-message").child("text:p").text().get()) ==
          "One of the list is wanted.");
    const xml_node level = validation("G7");
    CHECK_FALSE(level.attribute("table:condition"));
    CHECK_FALSE(level.child("table:error-message"));
    CHECK(level.child("table:help-message"));
    CHECK(std::string(validation("G8").child("table:help-message").child("text:p").text().get()) == "Note");
}

TEST_CASE("verdicts, counts, the state and wrong entries are coloured by what they say") {
    const xml_document document = parsed(workbook_of({"sheet Job | J\nsummary\n",
                                                      "sheet Pit | P\ninput a_b | A | | 1 m\ncheck c_c | C | "
                                                      "= a_b.value\nchoice k_k | K | | a | a, b\n"}));
    const auto conditions = [&](const std::string& sheet, const std::string& address) {
        const std::string at = sheet + "." + address;
        Words found;
        const std::string path = "//calcext:conditional-format[@calcext:target-range-address='" + at + ":" +
                                 at + "']/calcext:condition";
        for (const auto& node : document.select_nodes(path.c_str())) {
            CHECK(value(node.node(), "calcext:base-cell-address") == at);
            found.push_back(value(node.node(), "calcext:value") + " " +
                            value(node.node(), "calcext:apply-style-name"));
        }
        return found;
    };
    CHECK(conditions("Pit", "G6") == Words{"=1 Passed", "=0 Failed"});
    CHECK(conditions("Job", "F6") == Words{">0 Failed"});
    CHECK(conditions("Pit", "A3") == Words{"formula-is(ISERROR(UNDERCROFT.UC.VERSION())) Alarm"});
    const std::string wrong = helper_cell(5, Helper::to_give) + "+" + helper_cell(5, Helper::impossible) +
                              "+" + helper_cell(5, Helper::not_listed) + ">0";
    CHECK(conditions("Pit", "G5") ==
          Words{"formula-is(" + wrong + ") EntryWrong",
                "formula-is(" + helper_cell(5, Helper::unusual) + "=1) EntryUnusual"});
    CHECK(conditions("Pit", "M5") ==
          Words{"formula-is(" + helper_cell(5, Helper::assumed) + "=1) MarkWanted"});
    CHECK(conditions("Pit", "G7").size() == 2);
}

TEST_CASE("a number typed into a list must be one, of either sign, and may stay blank") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\nlist l_l | L | Name, format entry; Depth, span 2, unit m; Share, "
                            "format share; Times, format number\n"
                            ": a ; 1 m ; 5 % ; 2\n: b ; - ; 5 % ; -\n"}));
    for (const char* address : {"C7", "E7", "F7", "C8", "E8", "F8"}) {
        CAPTURE(address);
        const std::string name = value(file_cell(document, "Pit", address), "table:content-validation-name");
        const xml_node wanted =
            document.select_node(("//table:content-validation[@table:name='" + name + "']").c_str()).node();
        REQUIRE(wanted);
        CHECK(value(wanted, "table:condition") ==
              "of:cell-content-is-decimal-number() and cell-content()>=-1E+300");
        CHECK(value(wanted, "table:allow-empty-cell") == "true");
        CHECK(value(wanted.child("table:error-message"), "table:message-type") == "stop");
    }
    CHECK(value(file_cell(document, "Pit", "B7"), "table:content-validation-name").empty());
}

TEST_CASE("a range is checked in the unit that stands beside the number") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\ninput a_b | Depth | | 1 m | usual 0.5..2 m or 0 | Survey\n"}));
    const xml_node range =
        document.select_node("//table:content-validation[contains(@table:condition,'between')]").node();
    REQUIRE(range);
    CHECK(value(range, "table:base-cell-address") == "Pit.G5");
    CHECK(value(range, "table:condition") ==
          "of:cell-content-is-decimal-number() and cell-content-is-between(MIN(0;" +
              helper_cell(5, Helper::least) + ")," + helper_cell(5, Helper::most) + ")");
    CHECK(std::string(range.child("table:error-message").child("text:p").text().get()) ==
          "A number is wanted, 0.025 to 40 m or 0; its unit stands in the cell to the right.");
}

TEST_CASE("a chart stands in the cell where it begins, with the ranges that it follows") {
    const xml_document document =
        parsed(workbook_of({"sheet Pit | P\ntable t_t | T | 3 | x; y; z | UC.T(1; @)\nchart c_c | C | t_t | "
                            "x, y, z | X | Y\nchart d_d | D | t_t | x, y | X | Y\n"}));
    const xml_node frame = file_cell(document, "Pit", "B12").child("draw:frame");
    REQUIRE(frame);
    CHECK(value(frame, "draw:name") == "Chart1");
    CHECK(value(frame, "table:end-cell-address") == "Pit.L30");
    CHECK(value(frame, "svg:width") == "19.600cm");
    CHECK(value(frame, "svg:height") == "7.200cm");
    CHECK(value(frame.child("draw:object"), "draw:notify-on-update-of-ranges") ==
          "Pit.B8:Pit.B10 Pit.C8:Pit.C10 Pit.B8:Pit.B10 Pit.D8:Pit.D10");
    CHECK(frame.child("draw:object").child("office:document"));
    CHECK(value(file_cell(document, "Pit", "B32").child("draw:frame"), "draw:name") == "Chart2");
    CHECK(document.select_nodes("//draw:frame").size() == 2);
}

}  // namespace undercroft::tests
