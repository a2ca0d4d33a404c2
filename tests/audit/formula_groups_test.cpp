// Formulas of a workbook, gathered into groups of those that are the same apart from their position.
#include "addin/audit/book/formulas.hpp"
#include "tests/audit/audited.hpp"
#include "tests/support/processor_time.hpp"

namespace undercroft::tests {

namespace {

/// `=A1+A1+...` with that many operators.
std::string long_sum(const std::string& cell, int operators) {
    std::string text = "=" + cell;
    for (int i = 0; i < operators; ++i) text += (i % 3 == 2 ? "-" : "+") + cell;
    return text;
}

double seconds_to_audit(const BookMaker& maker) {
    const audit::Book book = maker.made();
    return processor_seconds([&] { (void)audit::audit_workbook({.book = book}); }, 3);
}

/// A hundred formulas, each unlike the others.
BookMaker hundred_formulas(int operators) {
    BookMaker maker;
    maker.put("A1", 2.0).put("B1", "m");
    for (int row = 1; row <= 100; ++row)
        maker.formula("D" + std::to_string(row), long_sum("A1", operators) + "*" + std::to_string(row + 2),
                      2.0);
    return maker;
}

}  // namespace

TEST_CASE("formulas with the same text share one tree, whatever they are seen from their cells") {
    BookMaker maker;
    maker.put("A1", 2.0).formula("C1", "=A1*2").formula("C2", "=A1*2").formula("C3", "=A1*3");
    maker.formula("D1", "=SUM(").formula("D2", "=SUM(");
    const audit::Book book = maker.made();
    const audit::Formulas formulas(book);
    const auto group_of = [&](const std::string& cell) -> const audit::FormulaGroup& {
        const audit::FormulaCell* formula = formulas.find(spot_of(cell));
        REQUIRE(formula != nullptr);
        return formulas.group_of(*formula);
    };
    CHECK(&group_of("C1") != &group_of("C2"));  // A1 lies elsewhere, seen from there
    CHECK(&group_of("C1").tree() == &group_of("C2").tree());
    CHECK(&group_of("C1").tree() != &group_of("C3").tree());
    CHECK(&group_of("D1") == &group_of("D2"));
    CHECK_FALSE(group_of("D1").unreadable().empty());
}

TEST_CASE("formulas that are copied down are one group, with one tree") {
    BookMaker maker;
    maker.formula("C1", "=A1*$B$1").formula("C2", "=A2*$B$1").formula("C3", "=A3*B1");
    const audit::Book book = maker.made();
    const audit::Formulas formulas(book);
    REQUIRE(formulas.groups().size() == 2);
    CHECK(formulas.groups()[0].members.size() == 2);
    CHECK(formulas.groups()[0].key == "(RC[-2]*R1C2)");
    CHECK(formulas.groups()[0].base == spot_of("C1"));
}

TEST_CASE("formulas are the same where only their position differs, and are written alike") {
    const auto key = [](const std::string& formula) {
        BookMaker maker;
        maker.sheet("S").formula("C3", formula);
        const audit::Book book = maker.made();
        const audit::Formulas formulas(book);
        return formulas.groups()[0].key + " " + formulas.groups()[0].skeleton;
    };
    CHECK(key("=A1%") == "(R[-2]C[-2]%) (R%)");
    CHECK(key("=-A1+2*$B$3") == "((-R[-2]C[-2])+(2*R3C2)) ((-R)+(n*R))");
    CHECK(key("=SUM(A1:$B$3;\"a\";)") == "SUM(R[-2]C[-2]:R3C2;\"a\";) SUM(R:R;t;)");
    CHECK(key("=UNDERCROFT.UC.PITVOLUME(C3)") == "UC.PIT.VOLUME(RC) UC.PIT.VOLUME(R)");
    CHECK(key("=Other.A1:Site.B2") == "Other.R[-2]C[-2]:Site.R[-1]C[-1] R:R");
    CHECK(key("='file:///a.ods'#$S.A1") == "'file:///a.ods'#S.R[-2]C[-2] R");
    CHECK(key("=Bed_Length") == "bed_length R");
    CHECK(key("={1;2|3;4}") == "{{1;2};{3;4}} {{n;n};{n;n}}");
    CHECK(key("=#REF!") == "#REF! #REF!");
    CHECK(key("=SUM(") == "=SUM( ");
}

TEST_CASE("array formulas are the same where they fill as many cells; names of a sheet are its own") {
    BookMaker maker;
    maker.sheet("S")
        .array("C1:D2", "=A1:B2")
        .array("C4:D5", "=A4:B5")
        .array("C7:D9", "=A7:B8")
        .array("C11:E12", "=A11:B12");
    maker.formula("G1", "=E1:F2");
    const audit::Book book = maker.made();
    const audit::Formulas formulas(book);
    CHECK(formulas.groups().size() == 4);
    CHECK(formulas.groups()[0].members.size() == 2);
    CHECK(formulas.all().size() == 5);
    REQUIRE(formulas.find(spot_of("D2")) != nullptr);
    CHECK(formulas.find(spot_of("D2"))->at == spot_of("C1"));
    CHECK(formulas.find(spot_of("A1")) == nullptr);
    CHECK_FALSE(formulas.groups()[0].is_link());
    BookMaker own;
    own.sheet("One").formula("A1", "=depth").sheet("Two").formula("A1", "=depth").name("depth", "$One.$B$1");
    CHECK(audit::Formulas(own.made()).groups().size() == 1);
    own.name("depth", "$Two.$B$1", 1);
    CHECK(audit::Formulas(own.made()).groups().size() == 2);
    const auto is_link = [](const std::string& formula) {
        BookMaker one;
        one.formula("A1", formula);
        return audit::Formulas(one.made()).groups()[0].is_link();
    };
    CHECK(is_link("=B1"));
    CHECK(is_link("=Other.B1"));
    CHECK(is_link("=bed"));
    for (const char* formula : {"=B1:B2", "=B1+0", "=SUM(B1)", "=5", "=("}) CHECK_FALSE(is_link(formula));
}

TEST_CASE("a hundred formulas of 900 operators take under a second more than a hundred short ones",
          "[timing]") {
    CHECK(seconds_to_audit(hundred_formulas(900)) < seconds_to_audit(hundred_formulas(2)) + 1);
}

}  // namespace undercroft::tests
