// The look of the sheets: every style that is used is there, and looks as it must.
#include <map>
#include <regex>
#include <set>

#include "sheets/builder/files.hpp"
#include "sheets/builder/worked_examples_book.hpp"
#include "tests/builder/made.hpp"
#include "tests/support/files.hpp"

namespace undercroft::tests {

using namespace sheets;
using pugi::xml_document;
using pugi::xml_node;

namespace {

std::string style_value(const xml_document& document, const std::string& path, const char* name) {
    CAPTURE(path);
    const xml_node node = document.select_node(path.c_str()).node();
    REQUIRE(node);
    return node.attribute(name).value();
}

std::string of_style(const xml_document& document, const std::string& name, const std::string& properties,
                     const char* attribute) {
    return style_value(
        document, "//style:style[@style:name='" + name + "']/style:" + properties + "-properties", attribute);
}

/// Every workbook of the project, as cells.
std::vector<WorkbookGrid> templates() {
    const std::filesystem::path folder = std::filesystem::path(PROJECT_FOLDER) / "sheets" / "text";
    const std::vector<Sheet> sheets = read_sheets(folder);
    std::vector<WorkbookGrid> made;
    for (const WorkbookText& workbook : read_workbooks_of(folder))
        for (const System system : {System::si, System::us})
            made.push_back(compose(workbook, sheets, system));
    made.push_back(worked_examples_book(read_worked_examples(file_text("sheets/worked-examples.txt"))));
    return made;
}

}  // namespace

TEST_CASE("every style that a template's cells name is in its file, and none twice") {
    for (const WorkbookGrid& workbook : templates()) {
        CAPTURE(workbook.name);
        const xml_document document = parsed(workbook);
        std::set<std::string> known;
        for (const auto& style :
             document.select_nodes("/office:document/office:styles/style:style | "
                                   "/office:document/office:automatic-styles/style:style"))
            CHECK(known.insert(style.node().attribute("style:name").value()).second);
        std::set<std::string> used;
        for (const char* path :
             {"//@table:style-name", "//@calcext:apply-style-name", "//@style:parent-style-name"})
            for (const auto& name : document.select_nodes(path)) used.insert(name.attribute().value());
        CHECK(used.size() > 10);
        for (const std::string& name : used) {
            CAPTURE(name);
            CHECK(known.contains(name));
        }
        for (const auto& format : document.select_nodes("//@style:data-style-name")) {
            const std::string name = format.attribute().value();
            CAPTURE(name);
            CHECK(document.select_node(
                ("/office:document/office:styles/*[@style:name='" + name + "']").c_str()));
        }
        for (const auto& validation : document.select_nodes("//@table:content-validation-name")) {
            const std::string name = validation.attribute().value();
            CHECK(document.select_node(("//table:content-validation[@table:name='" + name + "']").c_str()));
        }
    }
}

TEST_CASE("names in a template's file are of its namespaces, looks are such as OpenDocument knows") {
    const std::regex local("[a-zA-Z][a-zA-Z0-9_.-]*");
    const std::regex colour("#[0-9a-f]{6}|transparent");
    const std::regex edge("none|[0-9.]+(pt|cm|mm) (solid|dashed|dotted) #[0-9a-f]{6}");
    const std::regex size("[0-9.]+(pt|cm|mm|in|%)");
    const std::set<std::string> alignments = {"start", "end", "center", "justify"};
    const xml_document document = parsed(templates().front());
    std::set<std::string> spaces = {"xmlns"};
    for (const auto& attribute : document.document_element().attributes())
        if (std::string(attribute.name()).starts_with("xmlns:"))
            spaces.insert(std::string(attribute.name()).substr(6));
    const auto must_be_known = [&](const std::string& name) {
        CAPTURE(name);
        const std::size_t colon = name.find(':');
        REQUIRE(colon != std::string::npos);
        CHECK(spaces.contains(name.substr(0, colon)));
        CHECK(std::regex_match(name.substr(colon + 1), local));
    };
    std::set<std::string> names;
    for (const auto& node : document.select_nodes("//*")) names.insert(node.node().name());
    for (const auto& found : document.select_nodes("//*/@*")) {
        const std::string name = found.attribute().name();
        const std::string value = found.attribute().value();
        names.insert(name);
        CAPTURE(name, value);
        if (name == "fo:text-align") CHECK(alignments.contains(value));
        if (name == "fo:color" || name == "fo:background-color") CHECK(std::regex_match(value, colour));
        if (name.starts_with("fo:border")) CHECK(std::regex_match(value, edge));
        if (name == "fo:font-size") CHECK(std::regex_match(value, size));
    }
    const auto must_be_of = [&](const char* path, const char* family) {
        CAPTURE(path);
        const auto found = document.select_nodes(path);
        CHECK_FALSE(found.empty());
        for (const auto& style : found) {
            const std::string name = style.attribute().value();
            const std::string wanted = "//style:style[@style:name='" + name + "']";
            CAPTURE(name);
            CHECK(
                std::string(document.select_node(wanted.c_str()).node().attribute("style:family").value()) ==
                family);
        }
    };
    must_be_of("//table:table/@table:style-name", "table");
    must_be_of("//table:table-column/@table:style-name", "table-column");
    must_be_of("//table:table-row/@table:style-name", "table-row");
    must_be_of("//table:table-cell/@table:style-name", "table-cell");
    CHECK(names.size() > 100);
    for (const std::string& name : names) must_be_known(name);
}

TEST_CASE("no formula of a template is longer than a checker can read") {
    constexpr std::size_t longest = 300;
    for (const WorkbookGrid& workbook : templates())
        for (const SheetGrid& sheet : workbook.sheets)
            for (const auto& [at, cell] : sheet.cells) {
                if (cell.type != SheetCell::Type::formula) continue;
                CAPTURE(workbook.name, sheet.name, cell_text(at.first, at.second), cell.text);
                CHECK(cell.text.size() <= longest);
            }
}

TEST_CASE(
    "every formula of a bed's storage follows how a unit counts, by its section or by its tested table") {
    std::map<std::string, int> following;
    for (const WorkbookGrid& workbook : templates())
        for (const SheetGrid& sheet : workbook.sheets)
            for (const auto& [at, cell] : sheet.cells) {
                const bool of_a_job = workbook.name.starts_with("storage") ||
                                      workbook.name.starts_with("whole-job") ||
                                      workbook.name.starts_with("design");
                if (!of_a_job || cell.type != SheetCell::Type::formula) continue;
                if (cell.text.find("UC.BEDVOLUME(") == std::string::npos &&
                    cell.text.find("UC.BEDDEPTH(") == std::string::npos &&
                    cell.text.find("UC.STAGESTORAGE(") == std::string::npos)
                    continue;
                CAPTURE(workbook.name, sheet.name, cell_text(at.first, at.second), cell.text);
                CHECK(cell.text.find("formation_fall; IF([") != std::string::npos);
                CHECK(cell.text.find("=1; unit_table; \"\"); unit_kind_n)") != std::string::npos);
                ++following[workbook.name];
            }
    // Full, provided, depth and stages; in the whole job what is kept, the next storm, the six halves and the
    // stages of a smaller porosity too.
    CHECK(following == std::map<std::string, int>{{"storage", 4},
                                                  {"storage-us", 4},
                                                  {"whole-job", 13},
                                                  {"whole-job-us", 13},
                                                  {"design", 13},
                                                  {"design-us", 13}});
}

TEST_CASE("what is typed in may be changed while the sheet is protected, and nothing else") {
    const xml_document document = parsed(workbook_of({"sheet Pit | P\nremark R\n"}));
    std::set<std::string> typed = {"UnitEntry", "UnitResult", "GridUnit", "GridText",
                                   "Mark",      "MarkWanted", "DayEntry"};
    for (const char* entry : {"Entry", "TextEntry", "GridEntry", "ShareEntry"})
        for (const char* look : {"", "Wrong", "Unusual"}) typed.insert(std::string(entry) + look);
    const auto styles =
        document.select_nodes("/office:document/office:styles/style:style[@style:family='table-cell']");
    CHECK(styles.size() > 40);
    for (const auto& style : styles) {
        const std::string name = style.node().attribute("style:name").value();
        if (name == "Default") continue;
        CAPTURE(name);
        CHECK(of_style(document, name, "table-cell", "style:cell-protect") ==
              (typed.contains(name) ? "none" : "protected"));
        CHECK(of_style(document, name, "table-cell", "style:vertical-align") == "top");
    }
}

TEST_CASE("entries stand on sand with an edge, wrong ones in the colours of a failed check") {
    const xml_document document = parsed(workbook_of({"sheet Pit | P\nremark R\n"}));
    const auto ground = [&](const char* name) {
        return of_style(document, name, "table-cell", "fo:background-color");
    };
    const auto ink = [&](const char* name) { return of_style(document, name, "text", "fo:color"); };
    const auto bold = [&](const char* name) {
        return of_style(document, name, "text", "fo:font-weight") == "bold";
    };
    for (const char* name : {"TextEntry", "UnitEntry", "GridEntry", "GridText", "GridUnit", "ShareEntry"})
        CHECK(ground(name) == ground("Entry"));
    CHECK(ground("EntryWrong") == ground("Failed"));
    CHECK(ground("TextEntryWrong") == ground("Failed"));
    CHECK(ink("EntryWrong") == ink("Failed"));
    CHECK(ground("GridEntryWrong") == ground("Failed"));
    CHECK(ground("ShareEntryWrong") == ground("Failed"));
    for (const char* name : {"TextEntryUnusual", "GridEntryUnusual", "ShareEntryUnusual", "MarkWanted"})
        CHECK(ground(name) == ground("EntryUnusual"));
    CHECK(ground("EntryUnusual") != ground("Failed"));
    CHECK(ground("EntryUnusual") != ground("Entry"));
    CHECK(ground("Alarm") == ground("Failed"));
    CHECK(ground("Passed") != ground("Failed"));
    CHECK(ground("Entry") != ground("EntryWrong"));
    for (const char* name :
         {"Title", "State", "Heading", "Section", "Verdict", "Passed", "Failed", "EntryWrong", "Caution"})
        CHECK(bold(name));
    for (const char* name : {"Entry", "Description", "Note", "Number"}) CHECK_FALSE(bold(name));
    CHECK(of_style(document, "Symbol", "text", "fo:font-style") == "italic");
    CHECK(of_style(document, "Note", "text", "fo:font-style").empty());
    CHECK(of_style(document, "Description", "table-cell", "fo:wrap-option") == "wrap");
    CHECK(of_style(document, "Number", "table-cell", "fo:wrap-option").empty());
    CHECK(of_style(document, "Number", "paragraph", "fo:text-align") == "end");
    CHECK(of_style(document, "UnitEntry", "paragraph", "fo:text-align") == "start");
    CHECK(of_style(document, "UnitEntry", "table-cell", "fo:padding-left") == "0.12cm");
    CHECK(of_style(document, "Number", "table-cell", "fo:padding-left").empty());
    CHECK_THAT(of_style(document, "Entry", "table-cell", "fo:border"), Catch::StartsWith("0.5pt solid #"));
    CHECK_THAT(of_style(document, "Number", "table-cell", "fo:border-bottom"),
               Catch::StartsWith("0.5pt solid #"));
    CHECK(of_style(document, "Default", "text", "fo:font-size") == "9pt");
}

TEST_CASE("numbers show four or five digits, counts none behind the point, verdicts words") {
    const xml_document document = parsed(workbook_of({"sheet Pit | P\nremark R\n"}));
    const auto format = [&](const std::string& name) {
        return document.select_node(("/office:document/office:styles/*[@style:name='" + name + "']").c_str())
            .node();
    };
    const auto places = [&](const std::string& name) {
        const xml_node number = format(name).child("number:number");
        CHECK(std::string(number.attribute("number:min-integer-digits").value()) == "1");
        if (name != "Percent")
            CHECK(number.attribute("number:min-decimal-places").as_int() ==
                  number.attribute("number:decimal-places").as_int());
        return number.attribute("number:decimal-places").as_int(-1);
    };
    CHECK(places("Sensible") == 0);
    CHECK(places("SensibleP0") == 3);
    CHECK(places("SensibleP1") == 2);
    CHECK(places("OneDecimal") == 1);
    CHECK(places("Whole") == 0);
    CHECK(places("Percent") == 1);
    std::vector<std::string> parts;
    for (const xml_node map : format("Sensible").children("style:map"))
        parts.push_back(std::string(map.attribute("style:condition").value()) + " " +
                        map.attribute("style:apply-style-name").value());
    CHECK(parts == std::vector<std::string>{"value()<10 SensibleP0", "value()<10000 SensibleP1"});
    const xml_node space = format("Sensible").child("number:number").child("number:embedded-text");
    CHECK(std::string(space.attribute("number:position").value()) == "3");
    CHECK(std::string(space.first_child().value()) == " ");
    CHECK(format("SensibleP0").attribute("style:volatile").as_bool());
    CHECK_FALSE(format("Sensible").attribute("style:volatile"));
    const auto word = [&](const std::string& name) {
        return std::string(format(name).child("number:text").text().get());
    };
    CHECK(word("VerdictP0") == "PASS");
    CHECK(word("VerdictP1") == "FAIL");
    CHECK(word("Percent") == " %");
    CHECK(std::string(format("VerdictFormat").child("style:map").attribute("style:condition").value()) ==
          "value()=1");
    const auto used = [&](const std::string& style) {
        return style_value(document, "//style:style[@style:name='" + style + "']", "style:data-style-name");
    };
    CHECK(used("Number") == "Sensible");
    CHECK(used("NumberCount") == "Whole");
    CHECK(used("NumberShare") == "OneDecimal");
    CHECK(used("Verdict") == "VerdictFormat");
    CHECK(used("Entry").empty());
}

TEST_CASE("SI prints on A4, US customary units on Letter, upright and wide") {
    for (const bool us : {false, true}) {
        const xml_document document =
            parsed(workbook_of({"sheet Pit | P\nremark R\n"}, us ? System::us : System::si));
        const auto page = [&](const char* name, const char* attribute) {
            return style_value(document,
                               std::string("//style:page-layout[@style:name='Layout") + name +
                                   "']/style:page-layout-properties",
                               attribute);
        };
        CHECK(page("Upright", "fo:page-width") == (us ? "21.59cm" : "21cm"));
        CHECK(page("Upright", "fo:page-height") == (us ? "27.94cm" : "29.7cm"));
        CHECK(page("Upright", "style:print-orientation") == "portrait");
        CHECK(page("Wide", "fo:page-width") == (us ? "27.94cm" : "29.7cm"));
        CHECK(page("Wide", "fo:page-height") == (us ? "21.59cm" : "21cm"));
        CHECK(page("Wide", "style:print-orientation") == "landscape");
        CHECK(page("Upright", "style:scale-to-X") == "1");
        CHECK(style_value(document,
                          "//style:page-layout[@style:name='LayoutWide']/style:header-style/"
                          "style:header-footer-properties",
                          "fo:margin-bottom") == "0.2cm");
        CHECK(style_value(document,
                          "//style:page-layout[@style:name='LayoutWide']/style:footer-style/"
                          "style:header-footer-properties",
                          "fo:margin-top") == "0.2cm");
        for (const char* master : {"Upright", "Wide"}) {
            const std::string path = std::string("//style:master-page[@style:name='") + master + "']";
            CHECK(style_value(document, path, "style:page-layout-name") == std::string("Layout") + master);
            CHECK(document.select_node((path + "/style:header//text:file-name").c_str()));
            CHECK(document.select_node((path + "/style:header//text:sheet-name").c_str()));
            CHECK(document.select_node((path + "/style:footer//text:page-number").c_str()));
            CHECK(document.select_node((path + "/style:footer//text:page-count").c_str()));
            CHECK(std::string(document.select_node((path + "/style:footer/style:region-left/text:p").c_str())
                                  .node()
                                  .text()
                                  .get()) == "Local codes and a licensed engineer govern.");
        }
    }
}

}  // namespace undercroft::tests
