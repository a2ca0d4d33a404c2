// Formulas from the sheet's spelling to that of files.
#include "sheets/builder/formula_text.hpp"

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Words = std::vector<std::string>;

namespace {

/// With `@` for the cell H12, and keys that stand for themselves.
std::string stored(const std::string& formula) {
    return stored_formula(formula, [](const std::string& word) -> std::string {
        if (word == "@") return "[.H12]";
        if (word == "@net.unit") return "[.F9]";
        if (word == "bed_length" || word == "e_1") return word;
        if (word == "bed_length.value") return "[.G9]";
        return {};
    });
}

}  // namespace

TEST_CASE("names of functions are written as files hold them, keys and @ as what they stand for") {
    CHECK(stored("UC.PIT.VOLUME(bed_length; @)") == "UNDERCROFT.UC.PITVOLUME(bed_length; [.H12])");
    CHECK(stored("UC.SUM (bed_length)") == "UNDERCROFT.UC.SUM (bed_length)");
    CHECK(stored("IF(bed_length.value>=1; @net.unit; NA())") == "IF([.G9]>=1; [.F9]; NA())");
    CHECK(stored("UC.VERSION()&\" of @ and bed_height\"") ==
          "UNDERCROFT.UC.VERSION()&\" of @ and bed_height\"");
    CHECK(stored("SUM(1;2)") == "SUM(1;2)");
    CHECK(stored("").empty());
}

TEST_CASE(
    "functions of Calc that OpenFormula does not have are written with the prefix that files give them") {
    CHECK(stored("WORKDAY.INTL(1; 2; \"0000011\")") == "COM.MICROSOFT.WORKDAY.INTL(1; 2; \"0000011\")");
    CHECK(stored("NETWORKDAYS.INTL(1; 2)+NETWORKDAYS(1; 2)") ==
          "COM.MICROSOFT.NETWORKDAYS.INTL(1; 2)+NETWORKDAYS(1; 2)");
    CHECK(stored("CONCAT(1; 2)&CONCATENATE(1; 2)") == "COM.MICROSOFT.CONCAT(1; 2)&CONCATENATE(1; 2)");
}

TEST_CASE("a number with an exponent is no key, a key that begins like one is") {
    CHECK(stored("4.1e-5*2E3+1e+2") == "4.1e-5*2E3+1e+2");
    CHECK(stored("2*e_1") == "2*e_1");
    CHECK_THROWS_WITH(stored("2e"), "'e' is no key of this workbook, in: 2e");
    CHECK_THROWS_WITH(stored("2e-"), "'e' is no key of this workbook, in: 2e-");
    CHECK(stored("12") == "12");
    CHECK(stored("1.5e3") == "1.5e3");
}

TEST_CASE("a word that means nothing and a text that is not closed are refused") {
    CHECK_THROWS_WITH(stored("UC.SUM(bed_height)"),
                      "'bed_height' is no key of this workbook, in: UC.SUM(bed_height)");
    CHECK_THROWS_WITH(stored("@net"), "'@net' is no key of this workbook, in: @net");
    CHECK_THROWS_WITH(stored("\"open"), "a text is not closed in: \"open");
}

TEST_CASE("the keys of a formula are what it is computed from") {
    CHECK(keys_in("UC.A(bed_length; e_1.value; \"no_key\"; @; @net.unit; 2e5)") ==
          Words{"bed_length", "e_1"});
    CHECK(keys_in("NA()").empty());
    CHECK_THROWS_WITH(keys_in("\"open"), Catch::StartsWith("a text is not closed"));
}

TEST_CASE("a text in a formula has its quotes doubled") {
    CHECK(quoted("plain") == "\"plain\"");
    CHECK(quoted("12\" pipe") == "\"12\"\" pipe\"");
}

}  // namespace undercroft::tests
