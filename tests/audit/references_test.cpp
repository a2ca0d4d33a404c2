// What formulas rest on: blank cells, texts, sums that end too early, inputs that nothing uses.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

TEST_CASE("references to blank cells are found") {
    for (const std::string formula : {"=C2*C20", "=C20", "=UC.PRODUCT(C2:D2;C20:D20;\"m2\")", "=SUM(F2:F9)",
                                      "=SQRT(C20)", "=IF(C20>1;C2;C3)"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C8", formula, 1.0);
        CHECK((found(audited(maker), FindingKind::blank_reference, "C8") != nullptr));
    }
}

TEST_CASE("a blank cell that the formula asks about is expected") {
    for (const std::string formula : {"=IF(C20=\"\";0;C20*2)", "=IF(ISBLANK(C20);C2;C20)",
                                      "=IF(ISNUMBER(C20);UC.PRODUCT(C20:D20;2;\"m\");0)", "=COUNT(F2:F9)",
                                      "=COUNTA(C20)", "=ISERROR(C20)", "=\"Depth \"&C20", "=SUM(C2:C20)",
                                      "=IF(ISNUMBER(C20);UC.DIFFERENCE(C2:D2;E20:F20;\"m\");0)"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("E8", formula, 1.0);
        CHECK(count_of(audited(maker), FindingKind::blank_reference) == 0);
    }
}

TEST_CASE("computing with texts is found, joining and comparing them is not") {
    for (const std::string formula : {"=C2+A3", "=C2*D3", "=-A2"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C8", formula, Error{519});
        CHECK((found(audited(maker), FindingKind::text_reference, "C8") != nullptr));
    }
    for (const std::string formula :
         {"=A2&A3", "=IF(A2=\"x\";1;0)", "=A2", "=LEN(A2)", "=(A2<>1)*(A2<>\"open\")"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("E8", formula, 1.0);
        CHECK(count_of(audited(maker), FindingKind::text_reference) == 0);
    }
}

TEST_CASE("a number typed as a text inside a sum is found") {
    BookMaker maker;
    maker.put("A1", 1.0).put("A2", "12.5").put("A3", 3.0).formula("A5", "=SUM(A1:A3)", 4.0);
    CHECK((found(audited(maker), FindingKind::text_reference, "A5") != nullptr));
    maker.put("A2", "none");
    CHECK(count_of(audited(maker), FindingKind::text_reference) == 0);
}

TEST_CASE("a sum that ends beside a number of the same kind misses it") {
    const auto column = [](const std::string& formula) {
        BookMaker maker;
        for (int row = 2; row <= 6; ++row)
            maker.put("A" + std::to_string(row), 1.0 * row).put("B" + std::to_string(row), "m3");
        maker.formula("A8", formula, 1.0).put("B8", "m3");
        return audited(maker);
    };
    for (const char* formula : {"=SUM(A2:A5)", "=SUM(A3:A6)", "=AVERAGE(A2:A5)", "=UC.SUM(A2:B5;B8)",
                                "=MAX(A2:A5)", "=UC.LARGEST(A2:B5;B8)"}) {
        CAPTURE(formula);
        CHECK((found(column(formula), FindingKind::sum_misses, "A8") != nullptr));
    }
    for (const char* formula : {"=SUM(A2:A6)", "=UC.SUM(A2:B6;B8)", "=SUM(A1:A7)", "=A2+A3"}) {
        CAPTURE(formula);
        CHECK(count_of(column(formula), FindingKind::sum_misses) == 0);
    }
}

TEST_CASE("a row of numbers is summed whole as well") {
    BookMaker maker;
    maker.put("A1", "Rain").put("B1", 1.0).put("C1", 2.0).put("D1", 3.0).put("E1", 4.0);
    maker.formula("G1", "=SUM(B1:D1)", 6.0);
    CHECK((found(audited(maker), FindingKind::sum_misses, "G1") != nullptr));
    maker.formula("G1", "=SUM(B1:E1)", 10.0);
    CHECK(count_of(audited(maker), FindingKind::sum_misses) == 0);
}

TEST_CASE("running totals, sums side by side and numbers of another kind are no misses") {
    BookMaker running;
    for (int row = 1; row <= 6; ++row) {
        const std::string at = std::to_string(row);
        running.put("A" + at, 1.0).formula("B" + at, "=SUM(A$1:A" + at + ")", 1.0);
    }
    CHECK(count_of(audited(running), FindingKind::sum_misses) == 0);
    BookMaker parts;  // two groups that follow each other, each with its sum
    for (int row = 1; row <= 6; ++row) parts.put("A" + std::to_string(row), 1.0);
    parts.formula("C1", "=SUM(A1:A3)", 3.0).formula("C4", "=SUM(A4:A6)", 3.0);
    CHECK(count_of(audited(parts), FindingKind::sum_misses) == 0);
    BookMaker other;  // the number below has another unit
    for (int row = 1; row <= 3; ++row)
        other.put("A" + std::to_string(row), 1.0).put("B" + std::to_string(row), "m3");
    other.put("A4", 12.0).put("B4", "m").formula("A6", "=SUM(A1:A3)", 3.0).put("B6", "m3");
    CHECK(count_of(audited(other), FindingKind::sum_misses) == 0);
    BookMaker total;  // the total itself stands below
    for (int row = 1; row <= 3; ++row) total.put("A" + std::to_string(row), 1.0);
    total.formula("A4", "=SUM(A1:A3)", 3.0);
    CHECK(count_of(audited(total), FindingKind::sum_misses) == 0);
}

TEST_CASE("an input that nothing uses is found") {
    BookMaker maker = pit();
    maker.row(6, "Area", "=C2*C3", 480, "m2");
    const Report report = audited(maker);
    CHECK((found(report, FindingKind::unused, "C4") != nullptr));
    CHECK((found(report, FindingKind::unused, "C5") != nullptr));
    CHECK(count_of(report, FindingKind::unused) == 2);
    maker.row(7, "Stone", "=UC.PRODUCT(C4:D4;C6:D6;D7)", 1, "m3");
    maker.formula("E5", "=IF(C5>C7;1;0)", 1.0);
    CHECK(count_of(audited(maker), FindingKind::unused) == 0);
}

TEST_CASE("an input that is only shown in a sentence, or only asked for errors, is not used") {
    BookMaker maker = pit();
    maker.formula("C6", "=UC.PRODUCT(C2:D2;C3:D3;C4:D4;\"m3\")", 1.0);
    maker.formula("A8", "=\"It holds \"&C5&\" m3\"", "It holds 146.4 m3").formula("A9", "=ISERROR(C5)", 0.0);
    CHECK((found(audited(maker), FindingKind::unused, "C5") != nullptr));
    CHECK(count_of(audited(maker), FindingKind::unused) == 1);
}

TEST_CASE("what a chart draws, a name stands for and a formula uses is used; a list is no calculation") {
    BookMaker maker = pit();
    maker.formula("C6", "=UC.PRODUCT(C2:D2;C3:D3;stone_depth;\"m3\")", 1.0);
    maker.name("stone_depth", "$Pit.$C$4:$D$4");
    maker.book().charted.push_back({0, 4, 2, 4, 2});
    CHECK(count_of(audited(maker), FindingKind::unused) == 0);
    CHECK(audited(pit()).findings.empty());
}

TEST_CASE("a column of a table that is kept for the record is no unused input") {
    BookMaker maker;
    maker.sheet("Tests").put("A1", "Place").put("B1", "Lift").put("C1", "Density").put("D1", "Unit");
    for (int row = 2; row <= 4; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, "North").put("B" + at, 1.0 * row).put("C" + at, 2.0).put("D" + at, "t/m3");
        for (const char* column : {"A", "B", "C", "D"}) maker.style(column + at, "Entry", false);
    }
    maker.protect().formula("C6", "=AVERAGE(C2:C4)", 2.0).put("D6", "t/m3");
    CHECK(count_of(audited(maker), FindingKind::unused) == 0);
    maker.formula("C6", "=AVERAGE(C2:C3)", 2.0);  // one of a column that is used
    CHECK((found(audited(maker), FindingKind::unused, "C4") != nullptr));
}

}  // namespace undercroft::tests
