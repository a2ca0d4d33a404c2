// Edges of the rules: lists walked word by word, and what stands just outside of a rule.
#include <boost/property_tree/json_parser.hpp>
#include <set>
#include <sstream>

#include "addin/audit/book/content_hash.hpp"
#include "addin/audit/book/unit_text.hpp"
#include "addin/audit/units/unit_cells.hpp"
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::FileRisks;

bool has(const BookMaker& maker, FindingKind kind, const std::string& cell) {
    return found(audited(maker), kind, cell) != nullptr;
}

/// A sheet of three numbers with their units, and one formula.
BookMaker with_formula(const std::string& formula, const std::string& unit = "m") {
    BookMaker maker;
    maker.sheet("S");
    maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Depth", 2, "m");
    maker.row(6, "Result", formula, 100, unit);
    return maker;
}

}  // namespace

TEST_CASE("every word of doubt in a comment is told") {
    for (const char* word : {"a guess", "assumed", "tbc", "TBD", "to be confirmed", "to be checked", "todo",
                             "to do", "?", "verify", "please confirm", "missing", "placeholder",
                             "provisional", "not sure", "unsure", "preliminary", "an estimate"}) {
        CAPTURE(word);
        BookMaker maker = with_formula("=C2+C3");
        maker.raw().comments = {{1, 2, word}};
        CHECK(has(maker, FindingKind::comment, "C2"));
    }
}

TEST_CASE("every source of a data base is a link, and every kind of reference into the file is none") {
    for (const char* element : {"table:database-source-sql", "table:database-source-table",
                                "table:database-source-query", "table:source-service"}) {
        CAPTURE(element);
        FileRisks risks;
        risks.take_element("content.xml", element, {{"table:database-name", "rain"}});
        REQUIRE(risks.links().size() == 1);
        CHECK(*risks.links().begin() == "data base rain");
    }
    for (const char* link : {"#Site.A1", "data:image/png;base64,AA", "vnd.sun.star.GraphicObject:0123",
                             "vnd.sun.star.Package:Pictures/a.png"}) {
        CAPTURE(link);
        FileRisks risks;
        risks.take_element("content.xml", "draw:image", {{"xlink:href", link}});
        CHECK(risks.links().empty());
    }
}

TEST_CASE("a link is told by a word for what it is") {
    const std::pair<const char*, const char*> words[] = {
        {"draw:image", "picture"},
        {"draw:fill-image", "picture"},
        {"style:background-image", "picture"},
        {"draw:object", "object"},
        {"draw:object-ole", "object"},
        {"draw:floating-frame", "frame"},
        {"draw:applet", "applet"},
        {"draw:plugin", "plug-in"},
        {"svg:font-face-uri", "font"},
        {"meta:template", "template"},
        {"meta:auto-reload", "page that it turns into by itself"},
        {"chart:chart", "chart"},
        {"form:form", "form"},
        {"form:button", "button"},
        {"svg:definition-src", "font"},
        {"xforms:submission", "form"},
        {"form:connection-resource", "data base"}};
    for (const auto& [element, word] : words) {
        CAPTURE(element);
        FileRisks risks;
        risks.take_element("content.xml", element, {{"xlink:href", "http://127.0.0.1/a"}});
        REQUIRE(risks.links().size() == 1);
        CHECK(risks.links().begin()->starts_with(word));
    }
}

TEST_CASE("factors that everybody knows by sight are no numbers hidden in a formula") {
    for (const char* factor : {"4",       "10",         "12",   "24",     "25.4",  "27",    "60",    "100",
                               "144",     "360",        "1000", "1440",   "3600",  "10000", "43560", "86400",
                               "1000000", "1000000000", "0.5",  "0.001",  "0.01",  "0.1",   "9.81",  "9.8",
                               "9.807",   "9.80665",    "32.2", "32.174", "1.486", "1.49",  "10^3"}) {
        CAPTURE(factor);
        CHECK_FALSE(has(with_formula(std::string("=C2*") + factor), FindingKind::bare_number, "C6"));
        CHECK_FALSE(has(with_formula(std::string("=C2/") + factor), FindingKind::bare_number, "C6"));
    }
    for (const char* factor : {"37", "1.7", "0.38", "110"}) {
        CAPTURE(factor);
        CHECK(has(with_formula(std::string("=C2*") + factor), FindingKind::bare_number, "C6"));
    }
}

TEST_CASE("two columns of a sum are both added up") {
    BookMaker maker;
    maker.sheet("S").put("A1", "Part").put("B1", "Dug").put("C1", "Kept");
    for (int r = 2; r <= 4; ++r) {
        const std::string row = std::to_string(r);
        maker.put("A" + row, "Part " + row).put("B" + row, 10 + r).put("C" + row, 20 + r);
    }
    maker.put("A6", "Total").formula("B6", "=SUM(B2:C4;C3)", 122.0);
    CHECK(has(maker, FindingKind::counted_twice, "B6"));
    maker.formula("B6", "=SUM(B2:C4)", 99.0);
    CHECK_FALSE(has(maker, FindingKind::counted_twice, "B6"));
}

TEST_CASE("a lookup by a name sees the cells behind it; texts alone beyond a table are another table") {
    BookMaker maker;
    maker.sheet("S").put("A1", "Depth").put("B1", "Flow");
    for (int r = 2; r <= 5; ++r)
        maker.put("A" + std::to_string(r), r == 4 ? 1.0 : r).put("B" + std::to_string(r), 10.0 * r);
    maker.name("depths", "$S.$A$2:$A$5").formula("D2", "=MATCH(3;depths;1)", 2.0);
    CHECK(has(maker, FindingKind::lookup, "D2"));
    maker.put("A4", 4.0).put("A5", 5.0).put("A3", 3.0);
    CHECK_FALSE(has(maker, FindingKind::lookup, "D2"));

    BookMaker texts;
    texts.sheet("S").put("A1", "Kinds");
    const char* kinds[] = {"arch", "box", "culvert", "duct"};
    for (int r = 2; r <= 5; ++r) texts.put("A" + std::to_string(r), std::string(kinds[r - 2]));
    texts.formula("D2", "=MATCH(\"box\";A2:A4;0)", 2.0);
    CHECK(count_of(audited(texts), FindingKind::lookup) == 0);
    texts.put("A2", 1.0).put("A3", 2.0).put("A4", 3.0).put("A5", 4.0).formula("D2", "=MATCH(2;A2:A4;0)", 2.0);
    CHECK(has(texts, FindingKind::lookup, "D2"));
}

TEST_CASE("a total in a line of equal formulas is no slip, another formula is") {
    const auto line = [](const std::string& middle) {
        BookMaker maker;
        maker.sheet("S").put("A1", "Width").put("B1", "Depth").put("C1", "Area");
        for (int r = 2; r <= 11; ++r) {
            const std::string row = std::to_string(r);
            if (r != 6) maker.put("A" + row, 2.0 * r).put("B" + row, 3.0);
            maker.formula("C" + row, r == 6 ? middle : "=A" + row + "*B" + row, 6.0 * r);
        }
        return maker;
    };
    CHECK_FALSE(has(line("=SUM(C2:C5)"), FindingKind::neighbour, "C6"));
    CHECK(has(line("=A2*B2"), FindingKind::neighbour, "C6"));
}

TEST_CASE("a number beyond a sum that was computed from the summed cells is no missed one") {
    const auto bill = [](const std::string& last) {
        BookMaker maker;
        maker.sheet("S").put("A1", "Item").put("B1", "Cost");
        for (int r = 2; r <= 5; ++r)
            maker.put("A" + std::to_string(r), "Item").put("B" + std::to_string(r), 9.0 * r);
        maker.put("A6", "Another").formula("B6", last, 18.0);
        maker.put("A8", "Total").formula("B8", "=SUM(B2:B5)", 126.0);
        return maker;
    };
    CHECK_FALSE(has(bill("=INDEX(B2:B5;1)*B3"), FindingKind::sum_misses, "B8"));
    CHECK(has(bill("=B20*2").put("B20", 9.0), FindingKind::sum_misses, "B8"));
}

TEST_CASE("inputs below a short use within a long one are used") {
    BookMaker maker;
    maker.sheet("S").put("A1", "What").put("C1", "Value").put("D1", "Unit");
    for (int r = 2; r <= 20; ++r) maker.row(r, "Rain " + std::to_string(r), 0.5 * r, "mm");
    maker.row(22, "First", "=SUM(C2:C3)", 2.5, "mm").row(23, "All", "=SUM(C5:C20)", 100, "mm");
    maker.row(24, "Some", "=SUM(C6:C7)", 6.5, "mm").row(25, "Sum", "=C4+C22+C23+C24", 111, "mm");
    CHECK(count_of(audited(maker), FindingKind::unused) == 0);
    maker.row(21, "Rain that nobody takes", 7, "mm");
    CHECK(has(maker, FindingKind::unused, "C21"));
}

TEST_CASE("a list that grew keeps its name's template; the same rows of another sheet do not") {
    const auto list = [](bool grown, const char* name) {
        BookMaker maker;
        for (const char* sheet : {"Plan", "Other"}) {
            maker.sheet(sheet).put("A3", "Layer").put("C3", "Depth");
            for (int r = 4; r <= (grown ? 7 : 6); ++r)
                maker.put("A" + std::to_string(r), std::string(sheet) + " layer " + std::to_string(r))
                    .put("C" + std::to_string(r), 0.1 * r);
            const std::string sum = grown ? "11" : "10";
            maker.put("A" + sum, "Sum").formula("C" + sum, "=SUM(layers)", 1.5);
        }
        maker.name("layers", name);
        return maker;
    };
    const auto told = [&](const char* name) {
        const audit::Book book = list(true, name).made();
        const audit::Book from = list(false, "$Plan.$C$4:$C$6").made();
        const Report report = audit::audit_workbook({.book = book, .against = &from});
        return std::any_of(report.findings.begin(), report.findings.end(),
                           [](const audit::ReportFinding& finding) {
                               return finding.kind == FindingKind::template_changed &&
                                      finding.says.find("layers") != std::string::npos;
                           });
    };
    CHECK_FALSE(told("$Plan.$C$4:$C$7"));
    CHECK(told("$Other.$C$4:$C$7"));
}

TEST_CASE("a name that is a number and stays one is no change of a revision") {
    const auto bed = [](const char* porosity) {
        BookMaker maker = with_formula("=C2*porosity");
        maker.name("porosity", porosity);
        return maker;
    };
    const auto changes = [&](const char* then, const char* now) {
        const audit::Book book = bed(now).made();
        const audit::Book earlier = bed(then).made();
        const Report report =
            audit::audit_workbook({.book = book, .earlier = &earlier, .earlier_name = "a.ods"});
        return report.revision->count(audit::Change::name);
    };
    CHECK(changes("0.4", "0.4") == 0);
    CHECK(changes("0.4", "0.45") == 1);
}

TEST_CASE("a check rests on an input that stands anywhere in its range") {
    BookMaker maker;
    maker.sheet("S").put("A1", "Part").put("C1", "Length").put("D1", "Unit");
    maker.row(2, "First", "=1+1", 2, "m").row(3, "Second", "=2*1", 2, "m").row(4, "Third", 3, "m");
    maker.put("A6", "Long enough").formula("C6", "=SUM(C2:C4)>=C5", 1.0).row(5, "Wanted", 6, "m");
    const Report report = audited(maker);
    REQUIRE(report.checks.size() == 1);
    CHECK(report.checks[0].rests == audit::RestsOn::inputs);
}

TEST_CASE("a coefficient beside a quantity to an odd power has a unit that nobody writes") {
    BookMaker maker;
    maker.sheet("S").put("A1", "What").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Hydraulic radius", 0.1, "m").row(3, "Gradient", 0.004, "").row(4, "Roughness", 0.013, "");
    maker.row(5, "Velocity", "=C2^(2/3)*C3^0.5/C4", 1.05, "m/s");
    const Report report = audited(maker);
    REQUIRE(line_at(report, "C5") != nullptr);
    CHECK(line_at(report, "C5")->verdict != UnitVerdict::inconsistent);
    CHECK(count_of(report, FindingKind::unit_clash) == 0);
}

TEST_CASE("the hash of an area hangs on all of its columns") {
    const auto hash = [](double last) {
        BookMaker maker;
        maker.sheet("S").put("A1", 1.0).put("B1", 2.0).put("C2", last);
        return audit::ContentHash(maker.made()).of({0, 0, 0, 1, 2});
    };
    CHECK(hash(3) == hash(3));
    CHECK(hash(3) != hash(4));
}

TEST_CASE("each run of one unit in a column has its own rows") {
    BookMaker maker;
    maker.sheet("S").put("A1", "Part").put("C1", "Length").put("D1", "Unit");
    for (int r = 2; r <= 10; ++r)
        maker.row(r, "Part " + std::to_string(r), 5.0 * r, r < 5 ? "mm" : r < 8 ? "m" : "ft");
    const audit::Book book = maker.made();
    audit::UnitTexts texts;
    const audit::UnitCells units(book, texts);
    for (const auto& [first, last, unit] :
         {std::tuple(1, 3, "mm"), std::tuple(5, 6, "m"), std::tuple(6, 6, "m"), std::tuple(8, 9, "ft")}) {
        CAPTURE(first, last);
        const audit::AreaUnits found = units.of_area({0, first, 2, last, 2});
        CHECK(found.has_numbers);
        REQUIRE(found.unit);
        CHECK(found.unit->text->text == unit);
        CHECK_FALSE(found.other);
    }
    const audit::AreaUnits both = units.of_area({0, 5, 2, 8, 2});
    REQUIRE(both.other);
    CHECK(both.other->text->text == "ft");
}

TEST_CASE("a kept number of a protected sheet may be shown rounded, one with its unit beside it may not") {
    const auto told = [](bool is_protected, bool has_unit) {
        BookMaker maker = with_formula("=C2+C3+C4");
        maker.put("A4", "Depth (m)")
            .put("C4", 0.717)
            .style("C4", "Entry", false)
            .shown_as("C4", {.decimals = 0});
        if (!has_unit) maker.erase("D4");
        if (is_protected) maker.protect();
        return has(maker, FindingKind::shown_otherwise, "C4");
    };
    CHECK(told(false, true));
    CHECK(told(true, true));
    CHECK(told(false, false));
    CHECK_FALSE(told(true, false));
}

TEST_CASE("the report for machines names every part of every line") {
    BookMaker maker = with_formula("=C2*C3", "m2");
    maker.put("A8", "The area is enough")
        .formula("C8", "=C6>=C2*C3", 1.0)
        .put("C9", 0.717)
        .shown_as("C9", {.decimals = 0});
    boost::property_tree::ptree report;
    std::istringstream in(audit::json_text(audited(maker)));
    boost::property_tree::read_json(in, report);
    const auto keys = [](const boost::property_tree::ptree& lines) {
        std::set<std::string> all;
        for (const auto& [none, line] : lines)
            for (const auto& [key, value] : line) all.insert(key);
        std::string text;
        for (const std::string& key : all) text += (text.empty() ? "" : " ") + key;
        return text;
    };
    CHECK(keys(report.get_child("findings")) == "accepted by cells kind label on reason says severity title");
    CHECK(
        keys(report.get_child("inputs")) ==
        "cells changed since signed label note reference remark state symbol template unit usual value when "
        "signed");
    CHECK(keys(report.get_child("checks")) ==
          "capacity cells demand label ratio reference rests on shown source unit verdict");
    CHECK(keys(report.get_child("map").front().second.get_child("formulas")) ==
          "as signed cells equation formula inputs label link reason source unit units value");
}

}  // namespace undercroft::tests
