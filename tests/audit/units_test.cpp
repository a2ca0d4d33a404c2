// Units of one formula: four answers, each with its reason; slips that a checker must see.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

UnitVerdict verdict(const BookMaker& maker, const std::string& cell) {
    const Report report = audited(maker);
    const audit::MapLine* line = line_at(report, cell);
    REQUIRE(line != nullptr);
    CAPTURE(line->formula, line->reason);
    CHECK_FALSE(line->reason.empty());
    return line->verdict;
}

BookMaker with(const std::string& formula, const std::string& unit, double shown = 1) {
    BookMaker maker = pit();
    maker.row(6, "Result", formula, shown, unit);
    return maker;
}

}  // namespace

TEST_CASE("units that agree are consistent") {
    CHECK(verdict(with("=C2*C3", "m2"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=C2+C3", "m"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=C2*C3*C4/1000", "m3"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=UC.PRODUCT(C2:D2;UC.PRODUCT(C3:D3;C4:D4;\"m2\");D6)", "m3"), "C6") ==
          UnitVerdict::consistent);
    CHECK(verdict(with("=SQRT(C2^2+C3^2)", "m"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=C2/C3", ""), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=MAX(C2;C3)", "m"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=ROUND(C2;1)", "m"), "C6") == UnitVerdict::consistent);
    CHECK(verdict(with("=UC.DIFFERENCE(C2:D2;C4:D4;\"m\")", ""), "C6") == UnitVerdict::consistent);
}

TEST_CASE("units that do not fit are inconsistent, and an error") {
    for (const auto& [formula, unit] : std::vector<std::pair<std::string, std::string>>{
             {"=C2+C4", "m"},         // m and mm
             {"=C2*C3", "m"},         // an area, called a length
             {"=C2*C3*C4", "m3"},     // mm left as they are
             {"=C5-C2", "m3"},        // a volume and a length
             {"=SUM(C2:C5)", "m"},    // everything
             {"=IF(C2>C5;1;0)", ""},  // compares a length and a volume
             {"=UC.PIT.AREA(C2:D2;C3:D3;C4:D4;\"1H:1V\";\"m2\")", "m3"},
             {"=UC.TOTAL(C2:D2;C5:D5;\"m\")", "m"},
             {"=UC.PIT.VOLUME(C2:D2;C5:D5;C4:D4;\"1H:1V\";D6)", "m3"},
             {"=C2", "ft"}}) {
        CAPTURE(formula, unit);
        const Report report = audited(with(formula, unit));
        INFO(audit::console_text(report));
        CHECK((found(report, FindingKind::unit_clash, "C6") != nullptr));
        CHECK(report.counts.units_that_are(UnitVerdict::inconsistent) == 1);
        CHECK(report.counts.errors >= 1);
    }
}

TEST_CASE("a number that is written with its unit has that unit, and no other than it is in") {
    const auto volume = [](const std::string& depth) {
        return "=UC.PIT.VOLUME(C2:D2;C3:D3;" + depth + ";\"1H:1V\";D6)";
    };
    for (const std::string depth : {"UC.QUANTITY(UC.PRODUCT(C4:D4;2;\"mm\");\"mm\")", "UC.QUANTITY(C4;\"mm\")",
                                    "UC.QUANTITY(C4;D4)", "UC.QUANTITY(300;\"mm\")"}) {
        CAPTURE(depth);
        const Report report = audited(with(volume(depth), "m3"));
        CHECK(verdict(with(volume(depth), "m3"), "C6") == UnitVerdict::consistent);
        CHECK(found(report, FindingKind::passed_bare, "C6") == nullptr);
    }
    for (const std::string depth : {"UC.QUANTITY(UC.PRODUCT(C4:D4;2;\"mm\");\"m\")", "UC.QUANTITY(C4;\"m\")",
                                    "UC.QUANTITY(C4;D2)"}) {
        CAPTURE(depth);
        CHECK(found(audited(with(volume(depth), "m3")), FindingKind::passed_bare, "C6") != nullptr);
    }
    CHECK(found(audited(with(volume("UC.QUANTITY(C4;\"kg\")"), "m3")), FindingKind::unit_clash, "C6") != nullptr);
}

TEST_CASE("what cannot be followed is not guessed") {
    const auto answer = [](const std::string& formula, const std::string& unit) {
        return verdict(with(formula, unit), "C6");
    };
    CHECK(answer("=OFFSET(C2;1;0)", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("=INDIRECT(\"C2\")", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("=NO.SUCH.FUNCTION(C2)", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("=C2^C3", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("=not_defined*2", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("='file:///a.ods'#$S.A1", "m") == UnitVerdict::cannot_tell);
    CHECK(answer("=INDEX(C2:C5;2)", "m") == UnitVerdict::cannot_tell);  // m or mm or m3
    CHECK(count_of(audited(with("=OFFSET(C2;1;0)", "m")), FindingKind::unit_clash) == 0);
}

TEST_CASE("numbers without a unit are told as such") {
    BookMaker maker = pit();
    maker.put("A6", "Rows").put("C6", 8.0);
    maker.row(7, "Total", "=C6*C2", 320, "m");
    maker.row(8, "Twice", "=2*C6", 16, "");
    const Report report = audited(maker);
    const audit::MapLine* line = line_at(report, "C7");
    REQUIRE(line != nullptr);
    CHECK(line->verdict == UnitVerdict::not_given);
    CHECK(line->reason == "no unit stands beside C6");
    CHECK((line->reason_cell == spot_of("C6")));
    CHECK((line_at(report, "C8")->verdict == UnitVerdict::not_given));
    CHECK(report.counts.errors == 0);
}

TEST_CASE("a bare number read in another unit than the one beside it is found") {
    for (const std::string formula :
         {"=UC.PIT.VOLUME(C2:D2;C3:D3;C4;\"1H:1V\";D6)",                          // 305 mm read as 305 m
          "=UC.PIT.VOLUME(C2:D2;C3:D3;UC.PRODUCT(C4:D4;2;\"mm\");\"1H:1V\";D6)",  // asked in mm, read in m
          "=UC.PIT.VOLUME(C2:D2;C3:D3;UC.CONVERT(C4:D4;\"ft\");\"1H:1V\";D6)"}) {
        CAPTURE(formula);
        const Report report = audited(with(formula, "m3"));
        INFO(audit::console_text(report));
        CHECK((found(report, FindingKind::passed_bare, "C6") != nullptr));
    }
    for (const std::string formula : {"=UC.PIT.VOLUME(C2:D2;C3:D3;C4:D4;\"1H:1V\";D6)",
                                      "=UC.PIT.VOLUME(C2:D2;C3:D3;UC.PRODUCT(C4:D4;2;\"m\");\"1H:1V\";D6)",
                                      "=UC.PIT.VOLUME(C2:D2;C3:D3;UC.PRODUCT(C4:D4;2);\"1H:1V\";D6)"}) {
        CAPTURE(formula);
        CHECK(count_of(audited(with(formula, "m3")), FindingKind::passed_bare) == 0);
    }
}

TEST_CASE(
    "a nested call hands its number over bare: asked for in another unit than the default it is misread") {
    BookMaker maker = pit();
    maker.row(6, "Step", 10, "min").row(7, "Inflow", 20, "L/s").row(8, "Volume", "=C7*C6*0.06", 12, "m3");
    maker.row(9, "Pump", 30, "L/s")
        .row(10, "Hours", "=UC.PUMP.TIME(C5:D5;C9:D9;UC.QUOTIENT(C7:D7;2;\"m3/s\");D10)", 1, "h");
    const Report wrong = audited(maker);
    INFO(audit::console_text(wrong));
    CHECK((found(wrong, FindingKind::passed_bare, "C10") != nullptr));  // 0.01 m3/s read as 0.01 L/s
    maker.formula("C10", "=UC.PUMP.TIME(C5:D5;C9:D9;UC.QUOTIENT(C7:D7;2;\"L/s\");D10)", 1.0);
    CHECK(count_of(audited(maker), FindingKind::passed_bare) == 0);
}

TEST_CASE("a unit that a formula leaves out is decoration") {
    BookMaker maker = with("=UC.PIT.VOLUME(C2:D2;C3:D3;C4:D4;\"1H:1V\")", "m3");
    CHECK((found(audited(maker), FindingKind::unit_left_out, "C6") != nullptr));
    maker.formula("C6", "=UC.PIT.VOLUME(C2:D2;C3:D3;C4:D4;\"1H:1V\";D6)", 1.0);
    CHECK(count_of(audited(maker), FindingKind::unit_left_out) == 0);
    maker.formula("C6", "=UC.PIT.VOLUME(C2;C3:D3;C4:D4;\"1H:1V\";D6)", 1.0);  // 40 m, read in m
    CHECK((found(audited(maker), FindingKind::unit_left_out, "C6") != nullptr));
    maker.formula("C6", "=C5", 146.4);  // a link, whose unit is typed
    CHECK((found(audited(maker), FindingKind::unit_left_out, "C6") != nullptr));
    maker.formula("D6", "=D5", "m3");
    CHECK(count_of(audited(maker), FindingKind::unit_left_out) == 0);
    maker.formula("D6", "=D2", "m3");  // the unit of another row
    CHECK((found(audited(maker), FindingKind::unit_left_out, "C6") != nullptr));
}

TEST_CASE("a link takes its unit from where its number comes from") {
    const auto slip = [](const std::string& number, const std::string& unit) {
        BookMaker maker = pit();
        maker.sheet("Other")
            .put("A1", 7.0)
            .put("B1", "m")
            .formula("A2", "=Pit.C2", 40.0)
            .formula("B2", "=Pit.D2", "m");
        maker.sheet("Pit")
            .put("A8", "Linked")
            .formula("C8", number, 40.0)
            .put("F1", "Head")
            .put("F2", "m")
            .put("F3", 2.0);
        if (unit.starts_with("="))
            maker.formula("D8", unit, "m");
        else
            maker.put("D8", unit);
        const Report report = audited(maker);
        const audit::ReportFinding* finding = found(report, FindingKind::unit_left_out, "C8");
        return finding == nullptr ? std::string() : finding->says;
    };
    CHECK(slip("=C2", "m") == "D8 is typed, while the number comes from C2: link D8 to D2.");
    CHECK(slip("=C2", "=D2").empty());
    CHECK(slip("=C2", "=D3") == "the number comes from C2, its unit from D3: link D8 to D2.");
    CHECK(slip("=Other.A1", "=Other.B1").empty());
    CHECK(slip("=Other.A1", "=D2") ==
          "the number comes from Other.A1, its unit from D2: link D8 to Other.B1.");
    CHECK(slip("=Other.A2", "=Other.B2").empty());
    CHECK(slip("=Other.A2", "=D2").empty());  // Other.B2 repeats D2 itself
    CHECK(slip("=Other.A2", "=D3") ==
          "the number comes from Other.A2, its unit from D3: link D8 to Other.B2.");
    CHECK(slip("=C2", "=\"m\"").empty());  // computed: no other cell's unit
    CHECK(slip("=F3", "m").empty());       // its unit stands at the head of a table
    CHECK(slip("=C2+C3", "m").empty());
    CHECK(slip("=C99", "m").empty());
    BookMaker locked = pit();
    locked.put("A8", "Linked").formula("C8", "=C2", 40.0).put("D8", "m").protect();
    CHECK(count_of(audited(locked), FindingKind::unit_left_out) == 0);
    locked.style("D2", "UnitEntry", false);  // somebody may change that one
    CHECK(count_of(audited(locked), FindingKind::unit_left_out) == 1);
}

TEST_CASE("a cell that shows an error: of units, or of something else") {
    const auto answer = [](const std::string& formula) {
        BookMaker maker = pit();
        maker.formula("C8", formula, Error{519}).put("D8", "m");
        const Report report = audited(maker);
        const audit::MapLine* line = line_at(report, "C8");
        REQUIRE(line != nullptr);
        CHECK(count_of(report, FindingKind::unit_clash) == 0);  // the error is told, and that is enough
        return audit::text_of(line->verdict) + ": " + line->reason;
    };
    CHECK(answer("=C2+C3") == "cannot tell: it shows #VALUE!");
    CHECK(answer("=SUM(C2)") == "cannot tell: it shows #VALUE!");
    CHECK(answer("=UC.CONVERT(C4:D4;\"kg\")").starts_with("inconsistent: it shows #VALUE!: in UC.CONVERT: "));
    CHECK(answer("=UC.CONVERT(C4:D4;\"no unit\")")
              .starts_with("cannot tell: it shows #VALUE!: in UC.CONVERT: "));
    CHECK(answer("=UC.CONVERT(C4:D4;\"m\")") == "cannot tell: it shows #VALUE!");  // it computes here
    BookMaker many = pit();
    for (int row = 10; row < 515; ++row)
        many.formula("C" + std::to_string(row), "=UC.CONVERT(C4:D4;\"kg\")+0*" + std::to_string(row),
                     Error{519});
    for (int row = 520; row < 1025; ++row)
        many.formula("C" + std::to_string(row), "=UC.CONVERT(C$4:D$4;\"kg\")", Error{519});
    CHECK(audited(many).counts.units_that_are(UnitVerdict::inconsistent) ==
          500);  // then the rest is not computed again
}

TEST_CASE("a unit that cannot be changed is no decoration") {
    BookMaker maker = with("=UC.PIT.VOLUME(C2:D2;C3:D3;C4:D4;\"1H:1V\")", "m3");
    maker.protect();
    CHECK(count_of(audited(maker), FindingKind::unit_left_out) == 0);
}

TEST_CASE("tables with a unit beside each number are held column by column") {
    BookMaker maker;
    maker.sheet("Ground").put("A1", "Layer").put("C1", "Thickness").put("E1", "Unit weight");
    maker.put("A2", "Stone").put("C2", 300.0).put("D2", "mm").put("E2", 16.0).put("F2", "kN/m3");
    maker.put("A3", "Fill").put("C3", 0.5).put("D3", "m").put("E3", 19.0).put("F3", "kN/m3");
    maker.put("A5", "Pressure").formula("C5", "=UC.LOAD.FILL(C2:F3;D5)", 14.3).put("D5", "kPa");
    CHECK(audited(maker).findings.empty());
    maker.put("F3", "kg/m3");
    CHECK((found(audited(maker), FindingKind::unit_clash, "C5") != nullptr));
    maker.put("F3", "kN/m3").put("D2", "kN");
    CHECK((found(audited(maker), FindingKind::unit_clash, "C5") != nullptr));
}

TEST_CASE("a text in the place of a unit that is none is found, another text is not") {
    BookMaker maker = pit();
    maker.put("D3", "metre-ish");
    maker.put("E2", "from the survey").put("E3", "ditto");
    const Report report = audited(maker);
    CHECK((found(report, FindingKind::unit_text, "D3") != nullptr));
    CHECK(count_of(report, FindingKind::unit_text) == 1);
    BookMaker styled;
    styled.put("A1", 5.0).put("B1", "gal").style("B1", "UnitEntry");  // which gallon?
    CHECK((found(audited(styled), FindingKind::unit_text, "B1") != nullptr));
}

}  // namespace undercroft::tests
