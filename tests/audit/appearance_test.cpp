// What a sheet shows otherwise than it is, hides, or calls by a wrong name.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

TEST_CASE("format codes: what they leave of a number") {
    const auto read = [](const char* code) {
        audit::NumberFormat format;
        audit::read_format_code(code, format);
        return format;
    };
    CHECK(read(";;;").hides);
    CHECK_FALSE(read("0.00;-0.00;").hides);
    CHECK_FALSE(read("\"-\";;").hides);
    CHECK(read("0,").thousands == 1);
    CHECK(read("0.0,,").thousands == 2);
    CHECK(read("#,##0").thousands == 0);
    CHECK(read("0.00").decimals == 2);
    CHECK(read("[RED]0\" mm\"").decimals == 0);
    CHECK(read("0.00E+00").decimals == -1);
    CHECK(read("# ?/?").decimals == -1);
    CHECK(read("@").decimals == -1);
}

TEST_CASE("a nothing in a format code, as Calc leaves it, is no unit and no word") {
    using namespace std::string_literals;
    CHECK(audit::text_behind("#\\ ##0.000\"\0\""s).empty());
    CHECK(audit::text_behind("#\\ ##0.000\0"s).empty());
    CHECK(audit::words_of_format("#\\ ##0.000\"\0\""s).empty());
    CHECK(audit::text_behind("0.00\" mm\"") == "mm");
}

TEST_CASE("numbers that look other than they are") {
    const auto otherwise = [](double number, const audit::NumberFormat& format) {
        BookMaker maker = pit();
        maker.put("C2", number).shown_as("C2", format);
        return count_of(audited(maker), FindingKind::shown_otherwise) > 0;
    };
    CHECK(otherwise(0.717, {.decimals = 0}));
    CHECK(otherwise(4000, {.thousands = 1}));
    CHECK(otherwise(40, {.unit = "ft"}));
    CHECK_FALSE(otherwise(40, {.unit = "m"}));
    CHECK_FALSE(otherwise(40.4, {.decimals = 0}));
    CHECK_FALSE(otherwise(0.717, {.decimals = 2}));
    CHECK_FALSE(otherwise(0, {.decimals = 0}));
    CHECK_FALSE(otherwise(0.717, {}));
}

TEST_CASE("what is covered: white on white, rows of no height, merged cells; texts may be") {
    BookMaker maker = pit();
    maker.formula("C6", "=C2*C3", 480.0);
    CHECK(count_of(audited(maker), FindingKind::hidden) == 0);
    maker.raw().flat_rows = {1};
    CHECK((found(audited(maker), FindingKind::hidden, "C2") != nullptr));
    maker.raw().flat_rows = {0};  // the heads
    CHECK(count_of(audited(maker), FindingKind::hidden) == 0);
    maker.raw().merged = {{0, 2, 1, 2, 2}};
    CHECK((found(audited(maker), FindingKind::hidden, "C3") != nullptr));
    maker.raw().merged = {{0, 2, 2, 2, 3}};  // its first cell is seen
    CHECK(count_of(audited(maker), FindingKind::hidden) == 0);
}

TEST_CASE("comments that doubt are told, others are not") {
    const auto told = [](const std::string& comment) {
        BookMaker maker = pit();
        maker.raw().comments = {{1, 2, comment}};
        return found(audited(maker), FindingKind::comment, "C2") != nullptr;
    };
    CHECK(told("only a guess"));
    CHECK(told("TBC with the client"));
    CHECK(told("from where?"));
    CHECK_FALSE(told("drawing 12, revision B"));
}

TEST_CASE("formulas that can be typed over on a protected sheet") {
    BookMaker maker = pit();
    maker.formula("C6", "=C2*C3", 480.0).formula("C7", "=C6*2", 960.0).style("C6", "Result", false);
    CHECK(count_of(audited(maker), FindingKind::unlocked) == 0);
    maker.protect();
    CHECK((found(audited(maker), FindingKind::unlocked, "C6") != nullptr));
    CHECK((found(audited(maker), FindingKind::unlocked, "C7") == nullptr));
}

TEST_CASE("names that shadow, stand for a label or for nothing") {
    const auto names = [](const std::string& content, std::int32_t sheet = -1) {
        BookMaker maker = pit();
        maker.formula("C6", "=C2*C3", 480.0).name("depth", "$Pit.$C$4").name("depth", content, sheet);
        if (sheet < 0) maker.book().names.erase(maker.book().names.begin());
        return count_of(audited(maker), FindingKind::names);
    };
    CHECK(names("$Pit.$C$4") == 0);
    CHECK(names("$Pit.$C$3", 0) >= 1);
    CHECK(names("$Pit.$C$4", 0) == 0);  // the same cell by two ways
    CHECK(names("#REF!") == 1);
}

TEST_CASE("errors made numbers, digits rounded away, cells named by texts") {
    const auto kinds = [](const std::string& formula, double shows) {
        BookMaker maker = pit();
        maker.formula("C9", formula, shows);
        std::string told;
        for (const audit::ReportFinding& finding : audited(maker).findings)
            if (finding.kind == FindingKind::swallowed || finding.kind == FindingKind::text_address)
                told += std::string(audit::word_of(finding.kind)) + " ";
        return told;
    };
    CHECK(kinds("=IFERROR(C2/C3;0)", 3) == "swallowed ");
    CHECK(kinds("=2*IFERROR(C2/C3;1)", 3) == "swallowed ");
    CHECK(kinds("=IFERROR(C2/C3;\"-\")", 3).empty());
    CHECK(kinds("=ROUND(C2/C3;0)*2", 6) == "swallowed ");
    CHECK(kinds("=ROUND(C2/C3;3)", 3.333).empty());
    CHECK(kinds("=ROUND(C2*1000;0)", 40000).empty());
    CHECK(kinds("=ROUNDUP(C2/C3;0)", 4).empty());  // pieces to order
    CHECK(kinds("=INDIRECT(\"C2\")", 40) == "text_address ");
    CHECK(kinds("=OFFSET(C1;1;0)", 40) == "text_address ");
    CHECK(kinds("=OFFSET(C1;C3;0)", 40).empty());
}

TEST_CASE("lookups of the nearest below want a sorted column, and ranges the same rows") {
    const auto told = [](const std::string& formula, double third) {
        BookMaker maker;
        maker.sheet("S").put("A1", "Duration").put("B1", "Rain");
        const double keys[] = {5, 10, third, 30, 60};
        for (int i = 0; i < 5; ++i)
            maker.put("A" + std::to_string(i + 2), keys[i]).put("B" + std::to_string(i + 2), 100.0 - 3 * i);
        maker.put("D1", 12.0).formula("D2", formula, 1.0);
        const Report report = audited(maker);
        return count_of(report, FindingKind::lookup) + count_of(report, FindingKind::ranges);
    };
    CHECK(told("=VLOOKUP(D1;A2:B6;2)", 15) == 0);
    CHECK(told("=VLOOKUP(D1;A2:B6;2)", 45) == 1);
    CHECK(told("=VLOOKUP(D1;A2:B6;2;0)", 45) == 0);
    CHECK(told("=MATCH(D1;A2:A6;0)", 45) == 0);
    CHECK(told("=MATCH(D1;A2:A6)", 45) == 1);
    CHECK(told("=VLOOKUP(D1;A2:B5;2)", 15) == 1);  // a row short
    CHECK(told("=SUMPRODUCT(A2:A6;B2:B6)", 15) == 0);
    CHECK(told("=SUMPRODUCT(A2:A6;B1:B5)", 15) == 1);
    CHECK(told("=INDEX(B2:B6;MATCH(D1;A2:A6;0))", 15) == 0);
    CHECK(told("=INDEX(B3:B6;MATCH(D1;A2:A6;0))", 15) == 1);
}

TEST_CASE("a format in the signs of another country is read by the decimals that the office counts") {
    const auto seen = [](const std::string& code, int decimals) {
        audit::NumberFormat format;
        audit::read_format_code(code, format, decimals);
        return std::pair(format.decimals, format.thousands);
    };
    CHECK(seen("0,000", 3) == std::pair(3, 0));
    CHECK(seen("#.##0,00", 2) == std::pair(2, 0));
    CHECK(seen("#.##0", 0) == std::pair(0, 0));
    CHECK(seen("#.##0.", 0) == std::pair(0, 1));
    CHECK(seen("#.##0,00..", 2) == std::pair(2, 2));
    CHECK(seen("0.000", 3) == std::pair(3, 0));
    CHECK(seen("#,##0.0,", 1) == std::pair(1, 1));
    CHECK(seen("Standard", 0) == std::pair(-1, 0));
}

}  // namespace undercroft::tests
