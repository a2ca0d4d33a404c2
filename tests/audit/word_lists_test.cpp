// The lists by which rules know a word or a function, walked one by one: a word that a list loses is a
// mistake that nobody is told any more.
#include "addin/audit/book/file_risks.hpp"
#include "addin/audit/findings/verdicts.hpp"
#include "addin/audit/report/sheet_heads.hpp"
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

bool has(const BookMaker& maker, FindingKind kind, const std::string& cell) {
    return found(audited(maker), kind, cell) != nullptr;
}

/// Two rows with their units, of which a check in C9 compares the numbers.
BookMaker two_rows(const std::string& first, const std::string& second, const std::string& check) {
    BookMaker maker;
    maker.sheet("S").row(1, first, 180, "kPa").row(2, second, 200, "kPa");
    maker.put("A9", "Check").formula("C9", check, 1.0);
    return maker;
}

bool is_turned(const std::string& first, const std::string& second, const std::string& check) {
    const Report report = audited(two_rows(first, second, check));
    const audit::ReportFinding* finding = found(report, FindingKind::weak_check, "C9");
    return finding != nullptr && finding->says.find("it passes where") != std::string::npos;
}

/// Numbers in A1 to A5 and a formula in C1.
BookMaker column_of_numbers(const std::string& formula, const Shown& shown = 1.0) {
    BookMaker maker;
    maker.sheet("S");
    for (int r = 1; r <= 5; ++r) maker.put("A" + std::to_string(r), r * 1.37);
    maker.formula("C1", formula, shown);
    return maker;
}

}  // namespace

TEST_CASE("words that pass, words that fail, and words that are no verdict") {
    const auto verdict = [](const std::string& text) { return audit::verdict_in_words(text); };
    for (const char* word :
         {"OK", "okay", "Pass", "passes", "PASSED", "yes", "adequate", "sufficient", "satisfied", "safe",
          "acceptable", "good", "fits", "complies", "this is OK as it stands"}) {
        CAPTURE(word);
        CHECK(verdict(word) == true);
        CHECK(verdict(std::string("not ") + word) ==
              (std::string(word).size() > 20 ? std::nullopt : std::optional(false)));
    }
    for (const char* word :
         {"NG", "fail", "FAILS", "failed", "inadequate", "insufficient", "exceeds", "exceeded", "unsafe",
          "too steep", "unacceptable", "no", "not", "No good", "not OK", "FAIL: short by 0.05 m"}) {
        CAPTURE(word);
        CHECK(verdict(word) == false);
    }
    for (const char* word : {"", "no check fails", "not counted", "open: limit not given", "large", "none",
                             "one of seven words is OK or so"}) {
        CAPTURE(word);
        CHECK(verdict(word) == std::nullopt);
    }
}

TEST_CASE("every word of a limit tells which side of a check is one") {
    for (const char* limit : {"allowable", "allowed", "permitted", "permissible", "capacity", "available",
                              "provided", "resistance", "limit", "maximum", "max"}) {
        CAPTURE(limit);
        CHECK(is_turned("Stress", std::string("Stress ") + limit, "=C1>=C2"));
        CHECK_FALSE(is_turned("Stress", std::string("Stress ") + limit, "=C1<=C2"));
        CHECK_FALSE(is_turned("Stress", std::string("Batter ") + limit, "=C1>=C2"));
    }
    for (const char* demand :
         {"required", "needed", "demand", "demanded", "minimum", "min", "least", "wanted"}) {
        CAPTURE(demand);
        CHECK(is_turned("Depth", std::string("Depth ") + demand, "=C1<=C2"));
        CHECK_FALSE(is_turned("Depth", std::string("Depth ") + demand, "=C1>=C2"));
    }
    for (const char* run : {"slope", "batter", "steepest", "steep"}) {
        CAPTURE(run);
        CHECK_FALSE(is_turned("Wall", std::string("Wall, ") + run + " allowed", "=C1>=C2"));
    }
}

TEST_CASE("a ratio to a limit is turned where it passes above 1") {
    const auto turned = [](const std::string& ratio, const std::string& check) {
        BookMaker maker = two_rows("Stress", "Stress allowed", check);
        maker.row(3, "Utilisation", ratio, 0.9, "1");
        const Report report = audited(maker);
        const audit::ReportFinding* finding = found(report, FindingKind::weak_check, "C9");
        return finding == nullptr ? std::string() : finding->says;
    };
    CHECK(turned("=C1/C2", "=C3>=1").find("the ratio to the limit is above 1") != std::string::npos);
    CHECK(turned("=C2/C1", "=C3<=1").find("the ratio of the limit is below 1") != std::string::npos);
    CHECK(turned("=C1/C2", "=C3<=1").find("passes where") == std::string::npos);
    CHECK(turned("=C2/C1", "=C3>=1").find("passes where") == std::string::npos);
    CHECK(turned("=C1*C2", "=C3>=1").find("passes where") == std::string::npos);
}

TEST_CASE("every lookup that takes the nearest below is told of a column that falls") {
    BookMaker maker;
    maker.sheet("S");
    for (const auto& [row, key] :
         {std::pair(1, 1.0), std::pair(2, 3.0), std::pair(3, 2.0), std::pair(4, 5.0)}) {
        maker.put("A" + std::to_string(row), key).put("B" + std::to_string(row), 10 * key);
        maker.put(std::string(1, static_cast<char>('E' + row - 1)) + "10", key);
        maker.put(std::string(1, static_cast<char>('E' + row - 1)) + "11", 10 * key);
    }
    const auto told = [&](const std::string& formula) {
        return has(BookMaker(maker).formula("D6", formula, 1.0), FindingKind::lookup, "D6");
    };
    for (const char* formula :
         {"=VLOOKUP(2.5;A1:B4;2)", "=VLOOKUP(2.5;A1:B4;2;1)", "=HLOOKUP(2.5;E10:H11;2)",
          "=LOOKUP(2.5;A1:A4;B1:B4)", "=MATCH(2.5;A1:A4)", "=MATCH(2.5;A1:A4;1)", "=LOOKUP(2.5;E10:H10)"}) {
        CAPTURE(formula);
        CHECK(told(formula));
    }
    for (const char* formula :
         {"=VLOOKUP(3;A1:B4;2;0)", "=VLOOKUP(3;A1:B4;2;FALSE())", "=HLOOKUP(3;E10:H11;2;0)",
          "=MATCH(3;A1:A4;0)", "=MATCH(3;A1:A4;-1)", "=VLOOKUP(3;A1:B4;2;)"}) {
        CAPTURE(formula);
        CHECK_FALSE(told(formula));
    }
}

TEST_CASE("every function that takes two ranges row by row is told of ranges that do not match") {
    BookMaker maker;
    maker.sheet("S");
    for (int r = 1; r <= 8; ++r) maker.put("A" + std::to_string(r), r).put("B" + std::to_string(r), 3 * r);
    for (const char* function :
         {"SUMPRODUCT(A2:A6;B3:B7)", "SUMIF(A2:A6;3;B3:B7)", "SUMIFS(A2:A6;B3:B7;3)",
          "AVERAGEIF(A2:A6;3;B3:B7)", "COUNTIFS(A2:A6;3;B3:B7;9)", "LOOKUP(3;A2:A6;B3:B7)",
          "SUMXMY2(A2:A6;B3:B7)", "CORREL(A2:A6;B3:B7)", "SLOPE(A2:A6;B3:B7)", "INTERCEPT(A2:A6;B3:B7)",
          "FORECAST(3;A2:A6;B3:B7)", "INDEX(A2:A6;MATCH(9;B3:B7;0))"}) {
        CAPTURE(function);
        std::string level = function;
        for (std::size_t at; (at = level.find("B3:B7")) != std::string::npos;) level.replace(at, 5, "B2:B6");
        CHECK(
            has(BookMaker(maker).formula("D9", std::string("=") + function, 1.0), FindingKind::ranges, "D9"));
        CHECK_FALSE(has(BookMaker(maker).formula("D9", "=" + level, 1.0), FindingKind::ranges, "D9"));
    }
}

TEST_CASE("a name for a range stands for its rows where ranges are taken row by row") {
    BookMaker maker;
    maker.sheet("S");
    for (int r = 1; r <= 8; ++r) maker.put("A" + std::to_string(r), r).put("B" + std::to_string(r), 3 * r);
    maker.name("lengths", "$S.$A$2:$A$6");
    CHECK(has(BookMaker(maker).formula("D9", "=SUMPRODUCT(lengths;B3:B7)", 1.0), FindingKind::ranges, "D9"));
    CHECK_FALSE(
        has(BookMaker(maker).formula("D9", "=SUMPRODUCT(lengths;B2:B6)", 1.0), FindingKind::ranges, "D9"));
}

TEST_CASE("every function of numbers is told of a blank cell, and those that only ask are not") {
    BookMaker maker;
    maker.sheet("S").put("A1", 3.0);
    const auto told = [&](const std::string& formula) {
        return has(BookMaker(maker).formula("C1", formula, 1.0), FindingKind::blank_reference, "C1");
    };
    for (const char* function :
         {"SUM",     "ABS", "ROUND", "ROUNDUP", "ROUNDDOWN",  "SQRT",  "INT", "MIN", "MAX", "EXP",  "LN",
          "AVERAGE", "SIN", "COS",   "PRODUCT", "SUMPRODUCT", "LOG10", "TAN", "MOD", "N",   "TRUNC"}) {
        CAPTURE(function);
        CHECK(told(std::string("=") + function + "(A5)"));
    }
    for (const char* function :
         {"ISERROR", "ISERR",  "ISNA",   "ISREF",   "ISFORMULA",  "ISTEXT",    "ISNUMBER", "ISLOGICAL",
          "ROW",     "ROWS",   "COLUMN", "COLUMNS", "CELL",       "FORMULA",   "COUNT",    "COUNTA",
          "SHEET",   "SHEETS", "AREAS",  "TYPE",    "ERROR.TYPE", "ERRORTYPE", "ADDRESS",  "INFO"}) {
        CAPTURE(function);
        CHECK_FALSE(told(std::string("=") + function + "(A5+0)"));
    }
    CHECK_FALSE(told("=ISBLANK(A5)"));
    CHECK_FALSE(told("=COUNTBLANK(A5)"));
    // What makes a text of a cell shows a blank as nothing; what asks for it before knows of it.
    for (const char* function : {"TEXT", "CONCATENATE", "CONCAT", "TEXTJOIN", "T", "LEN", "UPPER", "LOWER",
                                 "TRIM", "LEFT", "RIGHT", "MID", "HYPERLINK", "FIND", "SEARCH"}) {
        CAPTURE(function);
        CHECK_FALSE(told(std::string("=") + function + "(A5)"));
    }
    for (const char* asked :
         {"ISBLANK(A5)", "COUNTBLANK(A5)>0", "COUNTIF(A5;3)=0", "COUNTIFS(A5;3)=0", "A5=\"\""}) {
        CAPTURE(asked);
        CHECK_FALSE(told(std::string("=IF(") + asked + ";0;A5*2)"));
    }
    CHECK(told("=IF(A1>2;0;A5*2)"));
}

TEST_CASE("every value that changes by itself, or from country to country, is told") {
    const auto told = [](const std::string& formula) {
        return has(column_of_numbers(formula), FindingKind::unsteady, "C1");
    };
    for (const char* formula :
         {"=NOW()", "=TODAY()", "=RAND()", "=RANDBETWEEN(1;6)", "=RANDARRAY(2;2)", "=RAND.NV()",
          "=RANDBETWEEN.NV(1;6)", "=A1+NOW()", "=NOW()>1", "=TEXT(A1;\"0.00\")", "=TEXT(A1;\"#,##0\")",
          "=VALUE(\"1,5\")", "=DATEVALUE(\"1/2/2026\")", "=TIMEVALUE(\"10:30\")"}) {
        CAPTURE(formula);
        CHECK(told(formula));
    }
    for (const char* formula : {"=NOW()=0", "=NOW()<>0", "=NOW()>0", "=NOW()<0", "=TODAY()>0",
                                "=TEXT(A1;\"0\")", "=TEXT(A1;\"yyyy-mm\")", "=A1*2"}) {
        CAPTURE(formula);
        CHECK_FALSE(told(formula));
    }
}

TEST_CASE("every function that gathers a column is told of the number that it leaves out") {
    for (const char* function : {"SUM", "AVERAGE", "MIN", "MAX", "MEDIAN", "PRODUCT", "COUNT", "AND", "OR"}) {
        CAPTURE(function);
        CHECK(has(column_of_numbers(std::string("=") + function + "(A1:A4)"), FindingKind::sum_misses, "C1"));
        CHECK_FALSE(
            has(column_of_numbers(std::string("=") + function + "(A1:A5)"), FindingKind::sum_misses, "C1"));
    }
    CHECK_FALSE(has(column_of_numbers("=STDEV(A1:A4)"), FindingKind::sum_misses, "C1"));
}

TEST_CASE("every lookup whose table moves on with its copies is told") {
    for (const char* call : {"VLOOKUP(C#;E#:F@;2;0)", "HLOOKUP(C#;E#:F@;2;0)", "LOOKUP(C#;E#:E@)",
                             "MATCH(C#;E#:E@;0)", "INDEX(E#:E@;1)"}) {
        CAPTURE(call);
        BookMaker maker;
        maker.sheet("S");
        for (int r = 1; r <= 9; ++r)
            maker.put("E" + std::to_string(r), r)
                .put("F" + std::to_string(r), 2 * r)
                .put("C" + std::to_string(r), r);
        BookMaker fixed = maker;
        for (int r = 1; r <= 3; ++r) {  // the fewest that are copies
            const auto with = [&](std::string text, const std::string& first, const std::string& last) {
                for (std::size_t at; (at = text.find("E#")) != std::string::npos;)
                    text.replace(at + 1, 1, first);
                for (std::size_t at; (at = text.find('@')) != std::string::npos;) text.replace(at, 1, last);
                for (std::size_t at; (at = text.find('#')) != std::string::npos;)
                    text.replace(at, 1, std::to_string(r));
                return "=" + text;
            };
            const std::string cell = "D" + std::to_string(r);
            maker.formula(cell, with(call, std::to_string(r), std::to_string(r + 5)), r * 2.0);
            fixed.formula(cell, with(call, "$1", "$9"), r * 2.0);
        }
        CHECK(has(maker, FindingKind::sliding, "D1"));
        CHECK_FALSE(has(fixed, FindingKind::sliding, "D1"));
    }
}

TEST_CASE("errors that become numbers, digits rounded away, cells named by a text") {
    const auto told = [](const std::string& formula, FindingKind kind) {
        return has(column_of_numbers(formula, 1.37), kind, "C1");
    };
    for (const char* formula : {"=IFERROR(A1;0)", "=IFNA(A1;0)", "=IFERROR(A1;-1)", "=2*IFERROR(A1/A2;0)",
                                "=ROUND(A1)", "=ROUND(A1;0)", "=ROUND(A1;1)", "=ROUND(A1;-1)"}) {
        CAPTURE(formula);
        CHECK(told(formula, FindingKind::swallowed));
    }
    for (const char* formula : {"=IFERROR(A1;\"no rain\")", "=IFERROR(A1;A2)", "=ROUND(A1;3)",
                                "=ROUND(A1;A2)", "=ABS(A1)", "=ROUND(A1;2)"}) {
        CAPTURE(formula);
        CHECK_FALSE(told(formula, FindingKind::swallowed));
    }
    for (const char* formula :
         {"=INDIRECT(\"A1\")", "=OFFSET(A1;2;0)", "=OFFSET(A1;-1;0)", "=2*INDIRECT(\"A\"&2)"}) {
        CAPTURE(formula);
        CHECK(told(formula, FindingKind::text_address));
    }
    for (const char* formula : {"=OFFSET(A1;A2;0)", "=OFFSET(A1;0;A2)", "=INDEX(A1:A5;2)"}) {
        CAPTURE(formula);
        CHECK_FALSE(told(formula, FindingKind::text_address));
    }
}

TEST_CASE("every word by which a plain number is known keeps it from being asked for a unit") {
    const auto told = [](const std::string& label) {
        BookMaker maker;
        maker.sheet("S").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
        maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Depth", 2, "m");
        maker.put("A5", label).put("C5", 1.5);
        maker.row(6, "Sum of both", "=C2+C5", 41.5, "m");
        return has(maker, FindingKind::missing_unit, "C5");
    };
    CHECK(told("Overlap"));
    for (const char* word : {"Coefficient", "factor", "ratio", "number", "count", "roughness", "share",
                             "porosity", "efficiency", "safety", "bulking", "swell", "coeff.", "friction"}) {
        CAPTURE(word);
        CHECK_FALSE(told(word));
    }
}

TEST_CASE("the heads of a sheet are found where a value stands beside any of its usual neighbours") {
    for (const char* beside : {"Unit", "Units", "Symbol", "Description"}) {
        CAPTURE(beside);
        BookMaker maker;
        maker.sheet("S").put("A3", beside).put("B3", "Value").put("A4", "x").put("B4", 3.0);
        const audit::Book book = maker.made();
        const audit::SheetHeads heads(book);
        CHECK(heads.column(0, {"value"}) == 1);
    }
    BookMaker maker;
    maker.sheet("S").put("A3", "Place").put("B3", "Value").put("B4", 3.0);
    const audit::Book book = maker.made();
    CHECK(audit::SheetHeads(book).column(0, {"value"}) == -1);
}

TEST_CASE("each way to bring along a macro, a script or a control is told") {
    using audit::FileRisks;
    for (const char* starts : {"vnd.sun.star.script:x", "macro:x", "javascript:x", "vnd.sun.star.expand:x",
                               "service:x", "Macro:x", "JAVASCRIPT:x"}) {
        CAPTURE(starts);
        CHECK(FileRisks::starts_script(starts));
        FileRisks risks;
        risks.take_element("content.xml", "text:a", {{"xlink:href", starts}});
        CHECK(risks.scripts().count(starts) == 1);
    }
    CHECK_FALSE(FileRisks::starts_script("http://127.0.0.1/macro:x"));
    for (const char* part :
         {"Basic/Standard/Module1.xml", "Scripts/python/a.py", "Dialogs/a.xml", "xl/vbaProject.bin",
          "xl/macrosheets/sheet1.xml", "xl/dialogsheets/sheet1.xml", "customUI/customUI.xml"}) {
        CAPTURE(part);
        FileRisks risks;
        risks.take_parts({part, "content.xml", "Basic/"});
        REQUIRE(risks.scripts().size() == 1);
        CHECK(*risks.scripts().begin() == part);
    }
    for (const auto& [element, name] :
         {std::pair("ooo:module", "ooo:name"), std::pair("script:module", "script:name"),
          std::pair("ooo:library-embedded", "ooo:name"),
          std::pair("script:library-embedded", "script:name")}) {
        CAPTURE(element);
        FileRisks risks;
        risks.take_element("content.xml", element, {{name, "Thief"}});
        REQUIRE(risks.scripts().size() == 1);
        CHECK(*risks.scripts().begin() == "Basic Thief");
    }
    FileRisks events;
    events.take_element("content.xml", "script:event-listener", {{"script:event-name", "dom:load"}});
    events.take_element("content.xml", "table:error-macro", {});
    CHECK(events.scripts() == std::set<std::string>{"at dom:load", "at a wrong entry"});
}

TEST_CASE("controls are told, and what only holds them together is not; data from elsewhere is a link") {
    using audit::FileRisks;
    for (const char* frame :
         {"form:forms", "form:form", "form:properties", "form:property", "form:list-value",
          "form:list-property", "form:item", "form:option", "form:connection-resource", "form:column"}) {
        CAPTURE(frame);
        FileRisks risks;
        risks.take_element("content.xml", frame, {{"form:name", "A"}});
        CHECK(risks.controls().empty());
    }
    FileRisks risks;
    risks.take_element("content.xml", "form:button", {{"form:name", "Pay"}});
    risks.take_element("content.xml", "form:checkbox",
                       {{"form:name", "Lined"}, {"form:linked-cell", "S.B2"}});
    risks.take_element("content.xml", "xforms:model", {});
    CHECK(risks.controls() ==
          std::set<std::string>{"button Pay", "checkbox Lined, bound to S.B2", "form data"});
    FileRisks parts;
    parts.take_parts({"xl/activeX/activeX1.xml", "xl/ctrlProps/ctrlProp1.xml", "xl/embeddings/a.bin",
                      "xl/connections.xml", "xl/queryTables/queryTable1.xml"});
    CHECK(parts.controls() == std::set<std::string>{"xl/activeX/activeX1.xml", "xl/ctrlProps/ctrlProp1.xml",
                                                    "object xl/embeddings/a.bin"});
    CHECK(parts.links() == std::set<std::string>{"data source xl/connections.xml",
                                                 "data source xl/queryTables/queryTable1.xml"});
}

TEST_CASE("links that wait for a click, and those that the office lists itself, are told elsewhere") {
    using audit::FileRisks;
    for (const char* element :
         {"table:table-source", "table:cell-range-source", "text:a", "draw:a", "manifest:file-entry"}) {
        CAPTURE(element);
        FileRisks risks;
        risks.take_element("content.xml", element, {{"xlink:href", "http://127.0.0.1/a"}});
        CHECK(risks.links().empty());
    }
    const auto of_type = [](const std::string& type, const std::string& mode) {
        FileRisks risks;
        risks.take_element(
            "xl/_rels/workbook.xml.rels", "Relationship",
            {{"Type", "http://schemas.openxmlformats.org/officeDocument/2006/relationships/" + type},
             {"Target", "http://127.0.0.1/a"},
             {"TargetMode", mode}});
        return risks.links();
    };
    CHECK(of_type("image", "External") == std::set<std::string>{"image http://127.0.0.1/a"});
    CHECK(of_type("image", "Internal").empty());
    CHECK(of_type("hyperlink", "External").empty());
    CHECK(of_type("externalLinkPath", "External").empty());
}

TEST_CASE("the elements of cells matter to no risk, and all others may") {
    for (const char* common :
         {"table:table-cell", "table:covered-table-cell", "table:table-row", "table:table-column", "text:p",
          "text:span", "text:s", "c", "f", "v", "row", "is", "t", "col"}) {
        CAPTURE(common);
        CHECK_FALSE(audit::FileRisks::matters(common));
    }
    CHECK(audit::FileRisks::matters("draw:image"));
    CHECK(audit::FileRisks::matters("text:a"));
}

}  // namespace undercroft::tests
