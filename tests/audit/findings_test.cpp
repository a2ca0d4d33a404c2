// Each check at its bounds: what it says, what it just finds, and what it just leaves alone.
#include "tests/audit/audited.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

namespace {

/// What the finding of that kind at the cell says, with all its cells in front; empty where there is none.
std::string says(const Report& report, FindingKind kind, const std::string& cell, std::int32_t sheet = 0) {
    const audit::ReportFinding* finding = found(report, kind, cell, sheet);
    return finding == nullptr ? "" : finding->cells + ": " + finding->says;
}

std::string says(const BookMaker& maker, FindingKind kind, const std::string& cell) {
    return says(audited(maker), kind, cell);
}

}  // namespace

TEST_CASE("an error: its reason, what to do, and what rests on it") {
    BookMaker maker;
    maker.sheet("S").put("A1", 1.0);
    maker.formula("C1", "=A1/0", Error{532})
        .formula("C2", "=A2/0", Error{532})
        .formula("C4", "=#REF!+1", Error{524});
    maker.formula("C5", "=SUMME(A1)", Error{525}).formula("C6", "=SUM(", Error{508});
    maker.formula("E1", "=C1+C4", Error{532})
        .formula("E2", "=E1", Error{532})
        .formula("E3", "=ISERROR(C1)", 1.0);
    const Report report = audited(maker);
    CHECK(says(report, FindingKind::error, "C1") ==
          "S.C1:C2: shows #DIV/0!: it divides by zero or by a blank cell; correct the cells it rests on, or "
          "the "
          "formula. 2 more show an error because of it: S.E1:E2.");
    CHECK(says(report, FindingKind::error, "C4") ==
          "S.C4: shows #REF!: a row, column, sheet or file that the formula used is gone; put the right cell "
          "in its "
          "place.");
    CHECK(says(report, FindingKind::error, "C5") ==
          "S.C5: shows #NAME?: a name or function is not known here: is it spelt right, and is its extension "
          "installed?; correct the name, or install the extension that brings the function.");
    CHECK(says(report, FindingKind::error, "C6") ==
          "S.C6: shows Err:508: the formula cannot be read: it ends where a value is wanted; correct the "
          "cells it "
          "rests on, or the formula.");
    CHECK(count_of(report, FindingKind::error) == 4);
}

TEST_CASE("an error of ours is explained by the innermost call that refuses") {
    BookMaker maker = pit();
    maker.formula("C7", "=UC.PRODUCT(UC.CONVERT(C4:D4;\"kg\");2;\"m\")", Error{519});
    const std::string said = says(maker, FindingKind::error, "C7");
    CHECK(said.starts_with("Pit.C7: shows #VALUE!: UC.CONVERT: "));
    CHECK(said.find("UC.PRODUCT") == std::string::npos);
    maker.formula("C7", "=UC.PRODUCT(VLOOKUP(C2;C2:D4;1);2;\"m\")", Error{519});  // only Calc can follow that
    CHECK(says(maker, FindingKind::error, "C7").find("#VALUE!: text stands where a number is wanted") !=
          std::string::npos);
}

TEST_CASE("an array formula that shows an error inside is told by that cell") {
    BookMaker maker;
    maker.sheet("S").put("A1", 1.0).array("C1:D3", "=A1:B3*2", 2.0).show("D2", Error{532});
    maker.formula("F1", "=D2+1", Error{532});
    const Report report = audited(maker);
    CHECK(count_of(report, FindingKind::error) == 1);
    CHECK(says(report, FindingKind::error, "D2").find("1 more show an error because of it: S.F1.") !=
          std::string::npos);
}

TEST_CASE("errors of many depths come from one root") {
    BookMaker maker;
    maker.sheet("S").formula("A9", "=1/0", Error{532});
    for (int row = 8; row >= 1; --row)
        maker.formula("A" + std::to_string(row), "=A" + std::to_string(row + 1) + "+1", Error{532});
    const Report report = audited(maker);
    CHECK(count_of(report, FindingKind::error) == 1);
    CHECK(says(report, FindingKind::error, "A9").find("8 more") != std::string::npos);
}

TEST_CASE("a circle is written out, a long one in part") {
    BookMaker maker;
    maker.sheet("S").formula("A1", "=B1", Error{522}).formula("B1", "=A1+1", Error{522});
    CHECK(says(maker, FindingKind::circular, "A1") ==
          "S.A1, B1: rests on its own result: A1 rests on B1 rests on A1; break the circle with an input "
          "that is "
          "typed.");
    BookMaker ring;
    ring.sheet("S");
    for (int row = 1; row <= 8; ++row)
        ring.formula("A" + std::to_string(row), "=A" + std::to_string(row % 8 + 1), Error{522});
    CHECK(says(ring, FindingKind::circular, "A1").find("A5 rests on A6 rests on ... A1; break") !=
          std::string::npos);
    BookMaker seven;
    seven.sheet("S");
    for (int row = 1; row <= 7; ++row)
        seven.formula("A" + std::to_string(row), "=A" + std::to_string(row % 7 + 1), Error{522});
    CHECK(says(seven, FindingKind::circular, "A1").find("A6 rests on ... A1; break") != std::string::npos);
    BookMaker six;
    six.sheet("S");
    for (int row = 1; row <= 6; ++row)
        six.formula("A" + std::to_string(row), "=A" + std::to_string(row % 6 + 1), Error{522});
    CHECK(says(six, FindingKind::circular, "A1").find("A6 rests on A1; break") != std::string::npos);
    BookMaker two;  // each is told once
    two.sheet("S").formula("A1", "=B1", Error{522}).formula("B1", "=A1", Error{522});
    two.formula("A3", "=SUM(A3:B3)", Error{522});
    CHECK(count_of(audited(two), FindingKind::circular) == 2);
    BookMaker none;  // what shows no error goes in no circle
    none.sheet("S").formula("A1", "=B1", 1.0).formula("B1", "=A1", 1.0);
    CHECK(count_of(audited(none), FindingKind::circular) == 0);
}

TEST_CASE("failing checks of every sign, and what is no check") {
    for (const char* formula :
         {"=C2=C3", "=C2<>C3", "=C2<C3", "=C2>C3", "=C2<=C3", "=C2>=C3", "=AND(C2>1)", "=OR(C2>1)",
          "=NOT(C2>1)", "=UC.ATLEAST(C2:D2;C3:D3)", "=UC.WITHIN(C2:D2;C3:D3;C4:D4)"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C9", formula, 0.0).put("A9", "Long enough");
        CHECK(says(maker, FindingKind::check_failed, "C9") ==
              "Pit.C9: the check fails: Long enough; change the design, or the input if it was wrong.");
        maker.formula("C9", formula, 1.0);
        CHECK(count_of(audited(maker), FindingKind::check_failed) == 0);
        maker.formula("C9", formula, "no");
        CHECK(count_of(audited(maker), FindingKind::check_failed) == 0);
    }
    for (const char* formula :
         {"=IF(C2>C3;1;0)", "=C2-C3", "=-C2", "=UC.TOTAL(C2:D2;C3:D3;D9)", "=SUM(C2)", "=C2>"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C9", formula, 0.0);
        CHECK(count_of(audited(maker), FindingKind::check_failed) == 0);
    }
    BookMaker all_well = pit();  // sums up other checks: good news
    all_well.formula("C9", "=IF(C2>C3;\"Not ready\";\"Ready: no check fails\")", "Ready: no check fails");
    CHECK(count_of(audited(all_well), FindingKind::check_failed) == 0);
}

TEST_CASE("a style is for results when three formulas have it, four times as many as numbers") {
    const auto styled = [](int formulas, int typed) {
        BookMaker maker;
        maker.sheet("S").put("A1", 1.0);
        for (int row = 1; row <= formulas; ++row)
            maker.formula("C" + std::to_string(3 * row), "=$A$1+" + std::to_string(row), 2.0)
                .style("C" + std::to_string(3 * row), "Result");
        for (int row = 1; row <= typed; ++row)
            maker.put("E" + std::to_string(3 * row), 5.5).style("E" + std::to_string(3 * row), "Result");
        return audited(maker);
    };
    CHECK(says(styled(4, 1), FindingKind::typed_over, "E3") ==
          "S.E3: the number 5.5 is typed in a cell for a computed result (its style is Result); put the "
          "formula back.");
    CHECK(count_of(styled(3, 1), FindingKind::typed_over) == 0);
    CHECK(count_of(styled(2, 0), FindingKind::typed_over) == 0);
    CHECK(count_of(styled(8, 2), FindingKind::typed_over) == 2);
    CHECK(count_of(styled(7, 2), FindingKind::typed_over) == 0);
}

TEST_CASE("a number between like formulas is typed over, when three of them stand in a row") {
    const auto column = [](const std::string& pattern) {  // f: a formula, 5: a number
        BookMaker maker;
        maker.sheet("S");
        for (std::size_t i = 0; i < pattern.size(); ++i) {
            const std::string at = std::to_string(i + 1);
            maker.put("A" + at, 1.0);
            if (pattern[i] == 'f') maker.formula("C" + at, "=A" + at + "*2", 2.0);
            if (pattern[i] == 'g') maker.formula("C" + at, "=A" + at + "*3", 2.0);
            if (pattern[i] == '5') maker.put("C" + at, 5.0);
        }
        return audited(maker);
    };
    CHECK(says(column("ff5f"), FindingKind::typed_over, "C3") ==
          "S.C3: a number is typed between like formulas; copy the formula of C2 here, or say in a note why "
          "it is typed.");
    CHECK(count_of(column("f5ff"), FindingKind::typed_over) == 1);
    CHECK(count_of(column("f5f"), FindingKind::typed_over) == 0);
    CHECK(count_of(column("ff5g"), FindingKind::typed_over) == 0);
    CHECK(count_of(column("ff5"), FindingKind::typed_over) == 0);
    CHECK(count_of(column("5ff"), FindingKind::typed_over) == 0);
    CHECK(count_of(column("ff5 f"), FindingKind::typed_over) == 0);  // a gap ends the line
    CHECK(count_of(column("ff5f5ff"), FindingKind::typed_over) == 2);
    BookMaker row;  // the same along a row
    row.sheet("S");
    for (const char* at : {"B", "C", "D", "E"})
        row.put(at + std::string("1"), 1.0)
            .formula(at + std::string("3"), "=" + std::string(at) + "1*2", 2.0);
    row.put("D3", 5.0);
    CHECK(says(row, FindingKind::typed_over, "D3").find("copy the formula of C3 here") != std::string::npos);
    row.erase("C3").put("H3", 1.0);  // no line without a gap
    CHECK(count_of(audited(row), FindingKind::typed_over) == 0);
}

TEST_CASE("neighbours: how many alike there must be") {
    const auto column =
        [](const std::string& pattern) {  // a, b: two formulas of a kind; l, m: two links; x: another
            BookMaker maker;
            maker.sheet("S").put("F1", 1.0).put("F2", 1.0);
            for (std::size_t i = 0; i < pattern.size(); ++i) {
                const std::string at = std::to_string(i + 1);
                maker.put("A" + at, 1.0).put("B" + at, 1.0);
                const char kind = pattern[i];
                if (kind == 'a') maker.formula("D" + at, "=A" + at + "*B" + at, 1.0);
                if (kind == 'b') maker.formula("D" + at, "=A" + at + "*$F$1", 1.0);
                if (kind == 'l') maker.formula("D" + at, "=A" + at, 1.0);
                if (kind == 'm') maker.formula("D" + at, "=$F$1", 1.0);
                if (kind == 'x') maker.formula("D" + at, "=SUM(A" + at + ":B" + at + ")", 1.0);
            }
            return audited(maker);
        };
    CHECK(says(column("aba"), FindingKind::neighbour, "D2") ==
          "S.D2: the formula differs from those around it, such as the one in D1; copy that one here, or say "
          "in a note "
          "why this one is different.");
    CHECK(count_of(column("axa"), FindingKind::neighbour) == 0);  // another kind of formula
    CHECK(count_of(column("axaa"), FindingKind::neighbour) == 1);
    CHECK(count_of(column("aaxa"), FindingKind::neighbour) == 1);
    CHECK(count_of(column("aaab"), FindingKind::neighbour) == 1);  // the last of a run
    CHECK(count_of(column("baaa"), FindingKind::neighbour) == 1);
    CHECK(count_of(column("aab"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("aaax"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("aaxb"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("bxaa"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("abba"), FindingKind::neighbour) == 0);  // two alike
    CHECK(count_of(column("llmll"), FindingKind::neighbour) == 1);
    CHECK(count_of(column("llml"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("lml"), FindingKind::neighbour) == 0);
    CHECK(count_of(column("aa aba"), FindingKind::neighbour) == 1);
}

TEST_CASE("a formula with the same one above, below, left or right is none that differs") {
    for (const char* like : {"D2", "D4", "C3", "E3"}) {
        CAPTURE(like);
        BookMaker maker;
        maker.sheet("S");
        for (int row = 1; row <= 5; ++row)
            for (const char* column : {"B", "C", "D", "E", "F"})
                maker.formula(column + std::to_string(row), "=$A$1*J" + std::to_string(row), 1.0);
        CHECK(count_of(audited(maker), FindingKind::neighbour) == 0);
        const auto other = [&](const std::string& cell) {  // the same, seen from each cell
            maker.formula(cell, "=$A$1*" + cell.substr(0, 1) + std::to_string(std::stoi(cell.substr(1)) + 9),
                          1.0);
        };
        other("D3");
        CHECK((found(audited(maker), FindingKind::neighbour, "D3") != nullptr));
        other(like);
        CHECK((found(audited(maker), FindingKind::neighbour, "D3") == nullptr));
    }
}

TEST_CASE("numbers in formulas: how they are told, and where they count") {
    const auto said = [](const std::string& formula) {
        BookMaker maker = pit();
        maker.formula("C9", formula, 1.0);
        return says(maker, FindingKind::bare_number, "C9");
    };
    CHECK(said("=C2*1.5") ==
          "Pit.C9: the number 1.5 stands in the formula without a name, a unit or a source; put it in a cell "
          "of its own, "
          "with its unit.");
    CHECK(said("=C2*1.5+3").starts_with("Pit.C9: the numbers 1.5, 3 stand in the formula"));
    CHECK(said("=C2*3*7*5*6").starts_with("Pit.C9: the numbers 3, 7, 5, 6 stand"));
    CHECK(said("=C2*3*7*5*6*8").starts_with("Pit.C9: the numbers 3, 7, 5, 6 and more stand"));
    for (const char* name :
         {"SUM", "MAX", "MIN", "AVERAGE", "PRODUCT", "SUMPRODUCT", "IF", "IFERROR", "IFNA",    "SQRT",
          "ABS", "MOD", "SIN", "COS",     "TAN",     "EXP",        "LN", "LOG10",   "RADIANS", "DEGREES"}) {
        CAPTURE(name);
        CHECK_FALSE(said(std::string("=") + name + "(7)").empty());
    }
    for (const char* name : {"ROUND", "INDEX", "VLOOKUP", "CHOOSE", "LARGE", "TEXT", "POWER"}) {
        CAPTURE(name);
        CHECK(said(std::string("=") + name + "(7)").empty());
    }
    for (const char* formula :
         {"=5", "=C2*0", "=C2*1", "=C2*2", "=C2^5", "=C2&5", "=A1:B2~C3", "={5;6}", "=\"5\"", "=bed"}) {
        CAPTURE(formula);
        CHECK(said(formula).empty());
    }
    for (const char* formula : {"=5^C2", "=-5", "=5%", "=C2>5", "=ROUND(C2*5;1)", "=(5)*C2"}) {
        CAPTURE(formula);
        CHECK_FALSE(said(formula).empty());
    }
}

TEST_CASE("functions that count a blank cell as 0") {
    for (const char* name : {"SUM",   "ABS", "ROUND",   "ROUNDUP", "ROUNDDOWN",  "SQRT", "INT",
                             "MIN",   "MAX", "AVERAGE", "PRODUCT", "SUMPRODUCT", "EXP",  "LN",
                             "LOG10", "SIN", "COS",     "TAN",     "MOD",        "N",    "TRUNC"}) {
        CAPTURE(name);
        BookMaker maker = pit();
        maker.formula("C9", std::string("=") + name + "(C20)", 1.0);
        CHECK(says(maker, FindingKind::blank_reference, "C9") ==
              "Pit.C9: the formula refers to C20, which is blank and counts as 0; fill it in, or correct the "
              "reference.");
    }
    for (const char* name : {"IF", "VLOOKUP", "MYSTERY", "IFERROR"}) {
        CAPTURE(name);
        BookMaker maker = pit();
        maker.formula("C9", std::string("=") + name + "(C20)", 1.0);
        CHECK(count_of(audited(maker), FindingKind::blank_reference) == 0);
    }
}

TEST_CASE("blank cells and texts in what a formula refers to") {
    BookMaker maker = pit();
    maker.formula("E2", "=\"\"", "").formula("F2", "=E2+1", 1.0).formula("F3", "=E2", 0.0);
    maker.formula("F4", "=UC.CONVERT(E8:F8;\"m\")", Error{519}).put("F8", "m");
    maker.formula("F5", "=SUM(K1:L9)", 0.0).formula("F6", "=C2+A3", Error{519});
    const Report report = audited(maker);
    CHECK(says(report, FindingKind::blank_reference, "F2").find("refers to E2, which is blank") !=
          std::string::npos);
    CHECK(says(report, FindingKind::blank_reference, "F3").empty());  // a link shows it blank
    CHECK(says(report, FindingKind::blank_reference, "F4").find("the number in E8 is blank") !=
          std::string::npos);
    CHECK(says(report, FindingKind::blank_reference, "F5").find("the range K1:L9 is blank") !=
          std::string::npos);
    CHECK(says(report, FindingKind::text_reference, "F6") ==
          "Pit.F6: the formula computes with A3, which holds the text \"Width of the base\"; type a number "
          "there, or "
          "correct the reference.");
}

TEST_CASE("texts that look like numbers, in what is summed") {
    for (const char* text : {"12.5", " 12", "-3", "+4", "1,5", "7 "}) {
        CAPTURE(text);
        BookMaker maker;
        maker.sheet("S").put("A1", 1.0).put("A2", text).put("A3", 3.0).formula("C1", "=SUM(A1:A3)", 4.0);
        CHECK(says(maker, FindingKind::text_reference, "C1") ==
              "S.A2, C1: A2 in the range A1:A3 holds the text \"" + std::string(text) +
                  "\", which is passed over; type it as a number.");
    }
    for (const char* text : {"12 m", "none", "-", "", ".5", "1e3", " "}) {
        CAPTURE(text);
        BookMaker maker;
        maker.sheet("S").put("A1", 1.0).put("A2", text).put("A3", 3.0).formula("C1", "=SUM(A1:A3)", 4.0);
        CHECK(count_of(audited(maker), FindingKind::text_reference) == 0);
    }
    BookMaker outside;
    outside.sheet("S").put("A1", "5").put("A2", 1.0).put("A3", 3.0).put("A4", "6").formula(
        "C1", "=SUM(A2:A3)", 4.0);
    CHECK(count_of(audited(outside), FindingKind::text_reference) == 0);
}

TEST_CASE("a text is meant as a unit by the head of its column, by its company, or by its style") {
    const auto column = [](int units, int others, const std::string& head) {
        BookMaker maker;
        maker.sheet("S").put("B1", head);
        int row = 2;
        for (int i = 0; i < units; ++i, ++row)
            maker.put("A" + std::to_string(row), 1.0).put("B" + std::to_string(row), "m");
        for (int i = 0; i < others; ++i, ++row)
            maker.put("A" + std::to_string(row), 1.0).put("B" + std::to_string(row), "metre-ish");
        return count_of(audited(maker), FindingKind::unit_text);
    };
    CHECK(column(0, 1, "Unit") == 1);
    CHECK(column(0, 1, "units") == 1);
    CHECK(column(0, 1, "Remark") == 0);
    CHECK(column(2, 1, "Remark") == 0);
    CHECK(column(3, 1, "Remark") == 0);
    CHECK(column(4, 1, "Remark") == 1);
    CHECK(column(6, 2, "Remark") == 0);
    CHECK(column(7, 2, "Remark") == 2);
    for (const char* text : {"-", "", "a remark that is no unit at all", "m", "%"}) {
        CAPTURE(text);
        BookMaker maker;
        maker.sheet("S").put("B1", "Unit").put("A2", 1.0).put("B2", text);
        CHECK(count_of(audited(maker), FindingKind::unit_text) == 0);
    }
    BookMaker maker;
    maker.sheet("S").put("B1", "Unit").put("A2", 1.0).put("B2", "gal");
    CHECK(says(maker, FindingKind::unit_text, "B2")
              .ends_with("; write a unit, so that the number beside it means something."));
    maker.put("A2", "a text");  // beside no number
    CHECK(count_of(audited(maker), FindingKind::unit_text) == 0);
    maker.formula("A2", "=1/0", Error{532});
    CHECK(count_of(audited(maker), FindingKind::unit_text) == 1);
    BookMaker computed;
    computed.sheet("S").put("A1", 1.0).formula("B1", "=\"gal\"", "gal").style("B1", "UnitEntry");
    CHECK(count_of(audited(computed), FindingKind::unit_text) == 0);
}

TEST_CASE("sums that leave out the number beside them, in every direction") {
    const auto sum = [](const std::string& formula) {
        BookMaker maker;
        maker.sheet("S");
        for (int row = 3; row <= 6; ++row)
            for (const char* column : {"C", "D", "E", "F"})
                maker.put(column + std::to_string(row), 1.0 * row);
        maker.formula("J9", formula, 1.0);
        return audited(maker);
    };
    CHECK(says(sum("=SUM(C3:C5)"), FindingKind::sum_misses, "J9") ==
          "S.J9: the range C3:C5 ends beside C6, a number of the same kind that it leaves out; include it, "
          "or leave a "
          "blank row between.");
    CHECK(says(sum("=SUM(C4:C6)"), FindingKind::sum_misses, "J9").find("ends beside C3,") !=
          std::string::npos);
    CHECK(says(sum("=SUM(C3:E3)"), FindingKind::sum_misses, "J9").find("ends beside F3,") !=
          std::string::npos);
    CHECK(says(sum("=SUM(D3:F3)"), FindingKind::sum_misses, "J9").find("ends beside C3,") !=
          std::string::npos);
    CHECK(says(sum("=SUM(C3:D5)"), FindingKind::sum_misses, "J9").find("ends beside C6,") !=
          std::string::npos);
    for (const char* formula : {"=SUM(C3:C6)", "=SUM(C3:F3)", "=SUM(C3:D3)", "=SUM(C3)", "=SUM(C3:E5)",
                                "=MYSTERY(C3:C5)", "=C3:C5", "=ROWS(C3:C5)", "=SUM($C3:C$5)"}) {
        CAPTURE(formula);
        CHECK(count_of(sum(formula), FindingKind::sum_misses) == 0);
    }
    for (const char* name : {"SUM", "AVERAGE", "MIN", "MAX", "MEDIAN", "PRODUCT"}) {
        CAPTURE(name);
        CHECK(count_of(sum(std::string("=") + name + "(C3:C5)"), FindingKind::sum_misses) == 1);
    }
    CHECK(count_of(sum("=UC.LARGEST(C3:C5)"), FindingKind::sum_misses) == 1);
    CHECK(count_of(sum("=UC.LOOKUP(C3:D5;4)"), FindingKind::sum_misses) == 0);
}

TEST_CASE("a range that ends with a gap leaves out what stands beyond it on purpose, on that side only") {
    const auto sum = [](const std::string& formula, const std::string& gap) {
        BookMaker maker;
        maker.sheet("S");
        for (int row = 3; row <= 6; ++row)
            for (const char* column : {"C", "D", "E", "F"}) {
                const std::string cell = column + std::to_string(row);
                if (cell != gap) maker.put(cell, 1.0 * row);
            }
        maker.formula("J9", formula, 1.0);
        return count_of(audited(maker), FindingKind::sum_misses);
    };
    CHECK(sum("=SUM(C3:E3)", "E3") == 0);
    CHECK(sum("=SUM(C3:E3)", "C3") == 1);  // F3 stands at the other end
    CHECK(sum("=SUM(D3:F3)", "D3") == 0);
    CHECK(sum("=SUM(D3:F3)", "F3") == 1);
    CHECK(sum("=SUM(C3:C5)", "C5") == 0);
    CHECK(sum("=SUM(C3:C5)", "C3") == 1);
    CHECK(sum("=SUM(C4:C6)", "C4") == 0);
    CHECK(sum("=SUM(C4:C6)", "C6") == 1);
}

TEST_CASE("what stands beside a sum and does not belong to it") {
    const auto with = [](const std::string& cell_below, const std::string& unit_below) {
        BookMaker maker;
        maker.sheet("S");
        for (int row = 3; row <= 5; ++row)
            maker.put("C" + std::to_string(row), 1.0 * row).put("D" + std::to_string(row), "m3");
        if (cell_below.starts_with("="))
            maker.formula("C6", cell_below, 12.0);
        else
            maker.put("C6", 6.0);
        if (!unit_below.empty()) maker.put("D6", unit_below);
        maker.formula("J9", "=SUM(C3:C5)", 1.0);
        return count_of(audited(maker), FindingKind::sum_misses);
    };
    CHECK(with("6", "m3") == 1);
    CHECK(with("6", "L") == 1);
    CHECK(with("6", "m") == 0);
    CHECK(with("6", "") == 0);
    CHECK(with("=C3*2", "m3") == 1);
    CHECK(with("=SUM(C3:C5)", "m3") == 0);
    CHECK(with("=SUM(C4:C5)", "m3") ==
          1);                       // it begins too late itself, and a right sum elsewhere does not hide that
    CHECK(with("=C4", "m3") == 1);  // a link is a number like any other
    for (const char* of_others : {"=SUM(A3:A5)", "=SUM(E3:E5)", "=SUM(C20:C25)", "=SUM(A1:B9)"}) {
        CAPTURE(of_others);
        CHECK(with(of_others, "m3") == 0);  // a total is no item of the list beside it
    }
    for (const char* of_these : {"=SUM(B3:C5)", "=SUM(C3:E5)"}) {
        CAPTURE(of_these);
        CHECK(with(of_these, "m3") == 0);  // a total of some of these numbers, and of others
    }
    BookMaker pairs;  // numbers with their units, gathered once as pairs and once without
    pairs.sheet("S");
    for (int row = 3; row <= 5; ++row)
        pairs.put("C" + std::to_string(row), 1.0 * row).put("D" + std::to_string(row), "m3");
    pairs.formula("C6", "=SUM(C3:C5)", 12.0).put("D6", "m3").formula("J9", "=UC.SUM(C3:D5;\"m3\")", 12.0);
    CHECK(count_of(audited(pairs), FindingKind::sum_misses) == 0);
}

TEST_CASE("running totals and windows end inside a column on purpose") {
    BookMaker window;
    window.sheet("S");
    for (int row = 1; row <= 8; ++row) window.put("A" + std::to_string(row), 1.0);
    for (int row = 2; row <= 7; ++row)
        window.formula("C" + std::to_string(row),
                       "=AVERAGE(A" + std::to_string(row - 1) + ":A" + std::to_string(row + 1) + ")", 1.0);
    CHECK(count_of(audited(window), FindingKind::sum_misses) == 0);
    BookMaker along;
    along.sheet("S");
    const std::string columns = "ABCDEFGH";
    for (const char column : columns) along.put(std::string(1, column) + "1", 1.0);
    for (std::size_t i = 1; i + 1 < columns.size(); ++i)
        along.formula(std::string(1, columns[i]) + "3",
                      "=AVERAGE(" + columns.substr(i - 1, 1) + "1:" + columns.substr(i + 1, 1) + "1)", 1.0);
    CHECK(count_of(audited(along), FindingKind::sum_misses) == 0);
    BookMaker apart;  // the same sums, somewhere else
    apart.sheet("S");
    for (int row = 1; row <= 8; ++row) apart.put("A" + std::to_string(row), 1.0);
    apart.formula("C20", "=SUM(A1:A3)", 1.0).formula("C21", "=SUM(A2:A4)", 1.0);
    CHECK(count_of(audited(apart), FindingKind::sum_misses) == 1);  // A1 and A4 end the other one
}

TEST_CASE("inputs that nothing uses: numbers with a unit or a name, entries, choices from a list") {
    BookMaker maker = pit();
    maker.formula("C7", "=C2*C3*C4*C5", 1.0);
    maker.put("A8", "Spare").put("C8", 3.0).put("D8", "m").put("C9", 4.0).put("A10", "Named").put("C10", 5.0);
    maker.name("named", "$Pit.$C$10");
    const Report report = audited(maker);
    CHECK(says(report, FindingKind::unused, "C8") ==
          "Pit.C8: nothing uses this input (Spare); delete it, or use it where it belongs.");
    CHECK(says(report, FindingKind::unused, "C10").find("(Named)") != std::string::npos);
    CHECK(count_of(report, FindingKind::unused) == 2);  // C9 may be anything
    BookMaker entries = pit();
    entries.protect().formula("C7", "=C2*C3*C4*C5", 1.0);
    entries.put("C9", 4.0).style("C9", "Entry", false).put("C10", 5.0);
    entries.put("C11", "ellipse").style("C11", "Entry", false, true);
    entries.put("C12", "a remark")
        .style("C12", "Entry", false)
        .put("C13", "m")
        .style("C13", "UnitEntry", false, true);
    entries.put("C14", "ellipse").style("C14", "Entry", true, true);
    const Report of_entries = audited(entries);
    CHECK((found(of_entries, FindingKind::unused, "C9") != nullptr));
    CHECK((found(of_entries, FindingKind::unused, "C11") != nullptr));
    CHECK(count_of(of_entries, FindingKind::unused) == 2);
}

TEST_CASE("what is used: by wide ranges, by charts, by sentences") {
    BookMaker wide;
    wide.sheet("S").put("A1", 1.0).put("B1", "m").put("C1", 2.0).put("D1", "m").put("G1", 3.0).put("H1", "m");
    wide.formula("A3", "=SUM(A1:Z1)", 6.0);
    CHECK(count_of(audited(wide), FindingKind::unused) == 0);
    wide.formula("A3", "=SUM(A1:F1)", 3.0);
    CHECK((found(audited(wide), FindingKind::unused, "G1") != nullptr));
    BookMaker last;
    last.sheet("S")
        .put("A1", 1.0)
        .put("A2", 5.0)
        .name("spare", "$S.$A$2")
        .formula("B1", "=A1*2", 2.0)
        .put("D1", 3.0);
    last.name("edge", "$S.$D$1").formula("B2", "=SUM(A1:ZZ9)", 9.0);
    CHECK(count_of(audited(last), FindingKind::unused) == 0);
    BookMaker charted = pit();
    charted.formula("C7", "=C2*C3*C5", 1.0);
    CHECK((found(audited(charted), FindingKind::unused, "C4") != nullptr));
    charted.book().charted.push_back({0, 3, 0, 3, 5});
    CHECK(count_of(audited(charted), FindingKind::unused) == 0);
    BookMaker sentence;  // a name that is no quantity may be shown only
    sentence.sheet("S").put("A1", 7.0).name("number", "$S.$A$1").formula("C1", "=\"No. \"&A1", "No. 7");
    CHECK(count_of(audited(sentence), FindingKind::unused) == 0);
    sentence.put("B1", "m");
    CHECK(count_of(audited(sentence), FindingKind::unused) == 1);
    CHECK(count_of(audited(BookMaker().put("A1", 1.0).put("B1", "m")), FindingKind::unused) == 0);  // a list
}

TEST_CASE("columns kept for the record are those of a table with three heads, none of which is used") {
    const auto table = [](const std::string& formula, int heads) {
        BookMaker maker;
        maker.sheet("T").protect();
        const char* columns[] = {"A", "B", "C"};
        for (int c = 0; c < heads; ++c) maker.put(columns[c] + std::string("1"), "Head " + std::to_string(c));
        for (int row = 2; row <= 4; ++row)
            for (int c = 0; c < heads; ++c)
                maker.put(columns[c] + std::to_string(row), 1.0 * row)
                    .style(columns[c] + std::to_string(row), "Entry", false);
        maker.formula("H9", formula, 1.0);
        return count_of(audited(maker), FindingKind::unused);
    };
    CHECK(table("=SUM(A2:A4)", 3) == 0);
    CHECK(table("=SUM(A2:A3)", 3) == 1);  // A4 alone is forgotten
    CHECK(table("=SUM(A2:A4)", 2) == 3);  // two heads are no table
    CHECK(table("=SUM(A2:C4)", 3) == 0);
    BookMaker below;  // the same table further down, a title above it
    below.sheet("T").protect().put("A1", "Tests of the ground").formula("H9", "=SUM(A6:A7)", 1.0);
    for (const char* column : {"A", "B", "C"}) {
        below.put(column + std::string("5"), std::string("Head ") + column);
        for (const char* row : {"6", "7"})
            below.put(std::string(column) + row, 1.0).style(std::string(column) + row, "Entry", false);
    }
    CHECK(count_of(audited(below), FindingKind::unused) == 0);
    below.put("B5", 3.0);  // a row in which a number stands is no row of heads
    CHECK(count_of(audited(below), FindingKind::unused) > 0);
    BookMaker picked;  // what is picked from a list is an entry, no head
    picked.sheet("T").protect().formula("H9", "=SUM(A2:A4)", 1.0);
    for (const char* column : {"A", "B", "C"}) {
        picked.put(column + std::string("1"), "round").style(column + std::string("1"), "Entry", true, true);
        for (const char* row : {"2", "3", "4"})
            picked.put(std::string(column) + row, 1.0).style(std::string(column) + row, "Entry", false);
    }
    CHECK(count_of(audited(picked), FindingKind::unused) == 6);
    picked.put("E1", "Remark");
    for (const char* column : {"A", "B", "C"}) picked.style(column + std::string("1"), "Entry", false);
    CHECK(count_of(audited(picked), FindingKind::unused) == 6);
}

TEST_CASE("hidden parts, links and settings in words") {
    BookMaker maker;
    maker.sheet("Pit")
        .put("A1", 1.0)
        .formula("C1", "=A1*2", 2.0)
        .formula("C2", "=A1*2", 2.0)
        .formula("D3", "=A1", 1.0);
    maker.raw().hidden_rows = {0, 1};
    CHECK(says(maker, FindingKind::hidden, "C1") ==
          "Pit.A1, C1:C2: a part of the sheet Pit is in hidden rows and holds formulas (2) and inputs (1); "
          "show it (Format > "
          "Rows > Show) and "
          "check it.");
    maker.raw().hidden_columns = {3};
    CHECK(says(maker, FindingKind::hidden, "D3")
              .find("is in hidden columns and holds formulas (1); show it (Format > "
                    "Columns > Show)") != std::string::npos);
    maker.raw().hidden = true;
    CHECK(says(maker, FindingKind::hidden, "C1")
              .find("the sheet Pit is hidden and holds formulas (3) and inputs (1); show it (Sheet > "
                    "Show Sheet)") != std::string::npos);
    CHECK(count_of(audited(maker), FindingKind::hidden) == 1);
    for (const char* name : {"WEBSERVICE", "DDE", "FILTERXML"}) {
        CAPTURE(name);
        BookMaker linked;
        linked.sheet("S").formula("A1", std::string("=") + name + "(\"x\")", 1.0);
        CHECK(
            says(linked, FindingKind::link, "A1").find(std::string("another program or server by ") + name) !=
            std::string::npos);
    }
    BookMaker both;
    both.sheet("S").formula("A1", "='file:///a.ods'#$S.B2+'file:///b.ods'#$S.B2+NOW()", 1.0);
    CHECK(says(both, FindingKind::link, "A1").find("a value from the file file:///a.ods, which") !=
          std::string::npos);
    CHECK(says(both, FindingKind::unsteady, "A1").find("changes by itself") != std::string::npos);
}

TEST_CASE("what the file held and what is computed, side by side") {
    BookMaker maker;
    maker.sheet("S")
        .put("A1", 2.0)
        .formula("C1", "=A1*2", 4.0)
        .formula("C2", "=A1&\"x\"", "2x")
        .formula("C3", "=\"\"", "");
    maker.formula("C4", "=1/0", Error{532}).array("E1:F2", "=A1:B2*2", 4.0);
    const audit::Book book = maker.made();
    const auto with = [&](const char* cell, audit::StoredValue value) {
        audit::StoredValues stored = audit::results_of(book);
        stored.add("S", spot_of(cell).row, spot_of(cell).column, std::move(value));
        return says(audit::audit_workbook({.book = book, .stored = &stored}), FindingKind::stale, cell);
    };
    const std::string rest =
        " when it is computed anew; save the workbook again, and find out who or what changed the value.";
    CHECK(with("C1", {5.0, false}) == "S.C1: the file holds 5, and the formula gives 4" + rest);
    CHECK(with("C1", {std::string("4"), false}) ==
          "S.C1: the file holds \"4\", and the formula gives 4" + rest);
    CHECK(with("C1", {{}, false}) == "S.C1: the file holds nothing, and the formula gives 4" + rest);
    CHECK(with("C1", {{}, true}) == "S.C1: the file holds an error, and the formula gives 4" + rest);
    CHECK(with("C2", {std::string("3x"), false}) ==
          "S.C2: the file holds \"3x\", and the formula gives \"2x\"" + rest);
    CHECK(with("C2", {2.0, false}) == "S.C2: the file holds 2, and the formula gives \"2x\"" + rest);
    CHECK(with("C3", {0.0, false}).starts_with("S.C3: the file holds 0, and the formula gives \"\""));
    CHECK(with("C4", {7.0, false}) == "S.C4: the file holds 7, and the formula gives an error" + rest);
    CHECK(with("C4", {{}, true}).empty());
    CHECK(with("F2", {5.0, false}) == "S.F2: the file holds 5, and the formula gives 4" + rest);
    CHECK(with("C1", {4.0 + 3e-7, false}).empty());  // files hold fewer digits
    CHECK_FALSE(with("C1", {4.0 + 5e-7, false}).empty());
    CHECK(with("C3", {std::string(), false}).empty());
}

TEST_CASE("results may differ where they rest on the clock, on chance, or on the surroundings") {
    BookMaker maker;
    maker.sheet("S").put("A1", 2.0);
    maker.formula("C1", "=RAND()", 1.0).formula("C2", "=C1+1", 1.0).formula("C3", "=SUM(C1:C2)", 1.0);
    maker.formula("C4", "=CELL(\"filename\")", "a")
        .formula("C5", "=A1+1", 3.0)
        .formula("C6", "=UC.VERSION()", "1");
    maker.formula("C7", "=SUM(", 1.0);  // who knows
    const audit::Book book = maker.made();
    audit::StoredValues stored;
    for (int row = 0; row < 7; ++row) stored.add("S", row, 2, {77.0, false});
    const Report report = audit::audit_workbook({.book = book, .stored = &stored});
    CHECK(count_of(report, FindingKind::stale) == 2);
    CHECK((found(report, FindingKind::stale, "C5") != nullptr));
    CHECK((found(report, FindingKind::stale, "C7") != nullptr));
}

}  // namespace undercroft::tests
