// What goes wrong as formulas are copied, pasted and linked; and what looks like it and is right.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

/// Amounts in A and B of rows 3 to 8 under a rate in B1, and a formula in D of each row, with # for its
/// number.
BookMaker copied(const std::string& formula) {
    BookMaker maker;
    maker.sheet("S").put("A1", "Rate").put("B1", 38.0).put("A2", "Stone").put("B2", "Amount");
    for (int row = 3; row <= 8; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, 10.0 + row).put("B" + at, 20.0 + row % 3);
        std::string own = formula;
        for (std::size_t hash = 0; (hash = own.find('#')) != std::string::npos;) {
            const bool before = own[hash + 1] == '-';
            own.replace(hash, before ? 3 : 1, std::to_string(before ? row - (own[hash + 2] - '0') : row));
        }
        maker.formula("D" + at, own, 1.0);
    }
    return maker;
}

bool slides(const std::string& formula) {
    return count_of(audited(copied(formula)), FindingKind::sliding) > 0;
}

}  // namespace

TEST_CASE("a reference slides off the input it was meant for, or stays where it should go along") {
    CHECK(slides("=A#*B#-2"));                   // the rate, then the head below it
    CHECK(slides("=VLOOKUP(A#;A#:B$8;2;0)*1"));  // its first row goes along
    CHECK(slides("=A#*$B$4"));                   // each row has an amount of its own
    CHECK_FALSE(slides("=A#*$B$1"));
    CHECK_FALSE(slides("=A#*B#"));
    CHECK_FALSE(slides("=A#-A#-1+B#*0"));  // steps of a table
    CHECK_FALSE(slides("=VLOOKUP(A#;$A$3:$B$8;2;0)*1"));
    CHECK_FALSE(slides("=B#/$B$3"));  // each against the first
    CHECK_FALSE(slides("=SUM($B$3:B#)"));
}

TEST_CASE("a link under another row's label is told where a row of that label stands there") {
    const auto link = [](const std::string& label, const std::string& formula) {
        BookMaker maker;
        maker.sheet("In")
            .row(1, "Site length", 62, "m")
            .row(2, "Site width", 28, "m")
            .row(3, "Ground level", 101, "m");
        maker.sheet("Work").row(1, label, formula, 1.0, "m");
        return count_of(audited(maker), FindingKind::wrong_row);
    };
    CHECK(link("Site width", "=In.C1") == 1);
    CHECK(link("Ground level", "=In.C2") == 1);
    CHECK(link("Site width", "=In.C2") == 0);
    CHECK(link("Width of the site in metres", "=In.C2") == 0);
    CHECK(link("Ground", "=In.C3") == 0);
    CHECK(link("Depth", "=In.C3") == 0);  // no row is called so
}

TEST_CASE("a typed number off by a power of ten, and what may be so far from the others") {
    const auto outliers = [](const std::vector<double>& numbers) {
        BookMaker maker;
        maker.sheet("S").put("A1", "Weight").put("B1", "Twice");
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            const std::string at = std::to_string(i + 2);
            maker.put("A" + at, numbers[i]).formula("B" + at, "=A" + at + "*2", 1.0);
        }
        return count_of(audited(maker), FindingKind::outlier);
    };
    CHECK(outliers({21, 19, 200, 20}) == 1);
    CHECK(outliers({21, 19, 2.2, 20}) == 1);
    CHECK(outliers({21, 19, 508, 20}) == 1);    // inches and millimetres
    CHECK(outliers({21, 19, 45, 20}) == 0);     // large, and off by no such factor
    CHECK(outliers({21, 200, 20}) == 0);        // too few to tell
    CHECK(outliers({1, 5, 20, 63, 630}) == 0);  // they spread, and go one way
    CHECK(outliers({21, -200, 20, 22}) == 0);
}

TEST_CASE("an input typed on two sheets is told, and a link is not") {
    BookMaker maker;
    maker.sheet("A").row(1, "Depth of stone", 0.5, "m").row(2, "Twice", "=C1*2", 1, "m");
    maker.sheet("B").row(1, "Depth of stone", 0.45, "m").row(2, "Thrice", "=C1*3", 1, "m");
    CHECK(count_of(audited(maker), FindingKind::twin) == 1);
    maker.sheet("B").formula("C1", "=A.C1", 0.5);
    CHECK(count_of(audited(maker), FindingKind::twin) == 0);
}

TEST_CASE("a number with more digits than anybody types was pasted") {
    const auto pasted = [](double number) {
        BookMaker maker = pit();
        maker.put("C3", number);
        return count_of(audited(maker), FindingKind::typed_over);
    };
    CHECK(pasted(12.345678912) == 1);
    CHECK(pasted(12.34567) == 0);
    CHECK(pasted(1200000000000) == 0);
}

TEST_CASE("one paste is one finding") {
    BookMaker maker;
    maker.sheet("S");
    for (int row = 1; row <= 9; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, 1.0 + row).formula("C" + at, "=A" + at + "*2", 1.0);
    }
    maker.put("C4", 8.0).put("C5", 10.0).put("C6", 12.0);
    const Report report = audited(maker);
    CHECK(count_of(report, FindingKind::typed_over) == 1);
    CHECK((found(report, FindingKind::typed_over, "C5") != nullptr));
    maker.formula("C5", "=A5*2", 1.0);
    CHECK(count_of(audited(maker), FindingKind::typed_over) == 2);
}

TEST_CASE("amounts are counted twice over subtotals and overlapping ranges only") {
    const auto twice = [](const std::string& total) {
        BookMaker maker;
        maker.sheet("S")
            .put("C1", 1.0)
            .put("C2", 2.0)
            .formula("C3", "=SUM(C1:C2)", 3.0)
            .put("C5", 4.0)
            .put("C6", 5.0);
        maker.formula("C7", "=SUM(C5:C6)", 9.0).formula("C9", total, 12.0);
        return count_of(audited(maker), FindingKind::counted_twice);
    };
    CHECK(twice("=SUM(C1:C7)") == 1);
    CHECK(twice("=SUM(C1:C2)+C2") == 1);
    CHECK(twice("=SUM(C1:C2;C2:C5)") == 1);
    CHECK(twice("=C3+C7") == 0);
    CHECK(twice("=SUM(C3;C7)") == 0);
    CHECK(twice("=SUM(C1:C2)/C2") == 0);
    CHECK(twice("=SUM(C1:C2)+SUM(C5:C6)") == 0);
    CHECK(twice("=MAX(C1:C7)") == 0);
}

}  // namespace undercroft::tests
